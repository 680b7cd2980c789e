namespace Analytics.Cli.Promoting;

/// <summary>What the command line of <c>promote</c> asks for; null for what the sketch says itself.</summary>
/// <param name="File">The file with the sketch, with <c>#ID</c> behind it where there are several.</param>
/// <param name="Name">Identifier of the metric.</param>
internal sealed record PromoteOptions(string File, string Name)
{
    public string? Folder { get; init; }

    public string? Label { get; init; }

    public string? Meaning { get; init; }

    public string? Formula { get; init; }

    /// <summary>Why no figure from outside can be held against it.</summary>
    public string? Waive { get; init; }

    /// <summary>The clone of the repository, or a folder in it.</summary>
    public string Repository { get; init; } = ".";

    public bool WithTests { get; init; } = true;
}
