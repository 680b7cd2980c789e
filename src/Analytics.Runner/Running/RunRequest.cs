using Analytics.Runner.Pages;
using Analytics.Runner.Sources;

namespace Analytics.Runner.Running;

/// <summary>What to run, with what, and where the results go.</summary>
public sealed record RunRequest
{
    /// <summary>The notebook file.</summary>
    public required string Notebook { get; init; }

    /// <summary>Settings given for this run: name and value as text.</summary>
    public IReadOnlyList<KeyValuePair<string, string>> Settings { get; init; } = [];

    /// <summary>Code of other files to put in; null for none.</summary>
    public InsertedCode? Inserted { get; init; }

    /// <summary>The folder for the page and the executed notebook; made if missing.</summary>
    public required string OutFolder { get; init; }

    /// <summary>How long all cells together may take.</summary>
    public TimeSpan Timeout { get; init; } = TimeSpan.FromMinutes(10);

    /// <summary>Name and version of the library, for the foot of the page.</summary>
    public required string Library { get; init; }

    /// <summary>The chart library, if pages may carry one.</summary>
    public ChartScript? Charts { get; init; }
}
