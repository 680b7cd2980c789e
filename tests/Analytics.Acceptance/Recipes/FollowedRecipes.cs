using System.Text.Json;
using Analytics.Acceptance.Programs;

namespace Analytics.Acceptance.Recipes;

/// <summary>All recipes followed to their commands in one copy of the repository, and built once for all of them.</summary>
public sealed class FollowedRecipes : IDisposable
{
    private readonly Lazy<RepositoryCopy> copy = new(Follow);
    private readonly Dictionary<string, IReadOnlyList<(RecipeCommand Command, int Code, string Said)>> ran = [];

    internal RepositoryCopy Copy => copy.Value;

    /// <summary>The commands of a recipe in their order, run once, with what came of them; the build is there already.</summary>
    internal IReadOnlyList<(RecipeCommand Command, int Code, string Said)> Run(Recipe recipe)
        => ran.TryGetValue(recipe.Kind, out var known) ? known : ran[recipe.Kind] = [.. recipe.Commands.Select(Run)];

    public void Dispose()
    {
        if (copy.IsValueCreated) copy.Value.Dispose();
    }

    private (RecipeCommand Command, int Code, string Said) Run(RecipeCommand command)
    {
        // The names of the tests that passed, not only their number; the program itself is what "dotnet run" starts.
        string[] arguments = command.IsTest
            ? [.. command.Words.Skip(1), "--no-build", "--nologo", "--logger", "console;verbosity=normal"]
            : [Copy.In($"{command.Project}/bin/Release/net10.0/analytics.dll"), .. command.ProgramArguments];
        var (code, said) = Copy.Dotnet(command.Variables, arguments);
        return (command, code, said);
    }

    private static RepositoryCopy Follow()
    {
        var made = RepositoryCopy.Make();
        try
        {
            Recipe[] recipes = [.. Recipe.Kinds.Select(Recipe.Named)];
            foreach (var recipe in recipes) Apply(recipe, made);
            Build(made, [.. recipes.SelectMany(r => r.Projects).Distinct()]);
            return made;
        }
        catch
        {
            made.Dispose();
            throw;
        }
    }

    private static void Apply(Recipe recipe, RepositoryCopy to)
    {
        foreach (var file in recipe.Files) to.Write(file.Path, file.Text);
        foreach (var edit in recipe.Edits)
        {
            if (to.Apply(edit.Diff) is { } why)
                throw new InvalidOperationException($"{recipe.Page} is stale, line {edit.Line}: the edit of {string.Join(" and ", edit.Paths)} does not apply with the other recipes before it.\n{why}");
        }
    }

    // A solution filter builds these projects and what they stand on, and nothing else.
    private static void Build(RepositoryCopy at, IEnumerable<string> projects)
    {
        var files = projects.Select(p => $"{p}/{Path.GetFileName(p)}.csproj");
        at.Write("recipes.slnf", JsonSerializer.Serialize(new { solution = new { path = "Analytics.sln", projects = files } }));
        // The style analyzers are half of the work; compiler warnings are errors with and without them. Where nothing may be skipped, they are not.
        string[] less = Environment.GetEnvironmentVariable("ANALYTICS_NO_SKIPS") == "1" ? [] : ["-p:RunAnalyzers=false"];
        var (code, said) = at.Dotnet(new Dictionary<string, string?>(), ["build", "recipes.slnf", "-c", "Release", "-v", "quiet", "-nologo", .. less]);
        if (code != 0)
            throw new InvalidOperationException($"With the recipes of docs/recipes followed, the build fails; the file of each error names the recipe.\n{said.Replace(at.Root + "/", "", StringComparison.Ordinal)}");
    }
}

/// <summary>Tests that build a whole copy: one after the other and alone, so that they take no processor from browser tests with time limits.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class CopyBuilds
{
    public const string Name = "copies of the repository";
}
