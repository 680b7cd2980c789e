namespace Analytics.Cli.Promoting;

/// <summary>A file to be written.</summary>
/// <param name="Path">Path inside the clone, forward slashes.</param>
/// <param name="Text">What it will hold.</param>
/// <param name="IsNew">Whether it must not be there yet; else it must be there as committed.</param>
internal sealed record PlannedFile(string Path, string Text, bool IsNew);

/// <summary>Everything a promotion will write, all of it checked.</summary>
internal sealed record PromotionPlan(Clone Home, IReadOnlyList<PlannedFile> Files)
{
    public required PromotedName Name { get; init; }

    public required string Folder { get; init; }

    /// <summary>Athlete-days with a value on the frozen season, and how many of them are rows of the test.</summary>
    public required (int All, int Rows, int Outside) Values { get; init; }

    /// <summary>Whether the formula in words was left to be the line of C#.</summary>
    public required bool IsFormulaCode { get; init; }

    /// <summary>The one line that takes everything back.</summary>
    public string Undo
    {
        get
        {
            var here = Path.GetFullPath(Home.Root) == Path.GetFullPath(Environment.CurrentDirectory);
            return $"git {(here ? "" : $"-C {Quoted(Home.Root)} ")}checkout --no-overlay HEAD -- {string.Join(' ', Files.Select(f => f.Path))}";
        }
    }

    private static string Quoted(string path) => path.All(c => char.IsAsciiLetterOrDigit(c) || c is '/' or '.' or '-' or '_') ? path : $"'{path.Replace("'", "'\\''", StringComparison.Ordinal)}'";
}
