using System.Text.RegularExpressions;

namespace Analytics.Acceptance.Recipes;

/// <summary>A line to type: <c>dotnet test PROJECT -c Release --filter ...</c> or <c>dotnet run -c Release --project PROJECT -- ...</c>, variables before it.</summary>
internal sealed partial record RecipeCommand(int Line, string Text, IReadOnlyDictionary<string, string?> Variables, IReadOnlyList<string> Words) : RecipePart(Line)
{
    public static RecipeCommand Parse(int line, string text)
    {
        List<string> words = [.. Word().Matches(text).Select(m => m.Value.Replace("\"", "", StringComparison.Ordinal))];
        var variables = words.TakeWhile(w => Variable().IsMatch(w)).Select(w => w.Split('=', 2)).ToDictionary(p => p[0], p => (string?)p[1]);
        var command = new RecipeCommand(line, text, variables, [.. words.Skip(variables.Count)]);
        // The build of the recipes is a Release build, and a test run without a filter would run more than the recipe's tests.
        var isTest = command.Words is ["dotnet", "test", _, "-c", "Release", "--filter", _];
        return isTest || command.Words is ["dotnet", "run", "-c", "Release", "--project", _, "--", _, ..] ? command
            : throw new FormatException($"Line {line}: '{text}' is neither 'dotnet test PROJECT -c Release --filter \"...\"' nor 'dotnet run -c Release --project PROJECT -- ...'.");
    }

    public bool IsTest => Words[1] == "test";

    public string Project => IsTest ? Words[2] : Words[5];

    /// <summary>What the program is given, for a command that runs it.</summary>
    public IEnumerable<string> ProgramArguments => Words.Skip(7);

    [GeneratedRegex("""(?:[^\s"]|"[^"]*")+""")]
    private static partial Regex Word();

    [GeneratedRegex("^[A-Z_]+=")]
    private static partial Regex Variable();
}
