using Analytics.Acceptance.Programs;

namespace Analytics.Acceptance.Recipes;

/// <summary>A worked example of docs/recipes: what it adds, what it edits and how it is tested, in reading order.</summary>
internal sealed record Recipe(string Kind, IReadOnlyList<RecipePart> Parts)
{
    /// <summary>The kinds of change that have a recipe.</summary>
    public static readonly string[] Kinds = ["formula", "metric", "model", "notebook", "quantity"];

    public static Recipe Named(string kind)
        => RecipeReader.Read(kind, File.ReadAllText(Path.Combine(Repository.Root, "docs", "recipes", kind + ".md")));

    public string Page => $"docs/recipes/{Kind}.md";

    public IEnumerable<NewFile> Files => Parts.OfType<NewFile>();

    public IEnumerable<Edit> Edits => Parts.OfType<Edit>();

    public IEnumerable<RecipeCommand> Commands => Parts.OfType<RecipeCommand>();

    /// <summary>Projects its commands test or run, as folders.</summary>
    public IEnumerable<string> Projects => Commands.Select(c => c.Project).Distinct();
}

/// <summary>A block of a recipe.</summary>
/// <param name="Line">Line of the page it begins at, from 1.</param>
internal abstract record RecipePart(int Line);

/// <summary>A file to write.</summary>
internal sealed record NewFile(int Line, string Path, string Text) : RecipePart(Line);

/// <summary>A unified diff of files that are there.</summary>
internal sealed record Edit(int Line, string Diff) : RecipePart(Line)
{
    public IEnumerable<string> Paths => Diff.Split('\n').Where(l => l.StartsWith("+++ b/", StringComparison.Ordinal)).Select(l => l[6..].Trim());
}
