using Analytics.Runner.Outputs;
using Analytics.Runner.Settings;
using Analytics.Runner.Sources;

namespace Analytics.Runner.Pages;

/// <summary>Everything a report page is made of.</summary>
public sealed record PageModel
{
    /// <summary>File name of the notebook.</summary>
    public required string Notebook { get; init; }

    /// <summary>The cells, in order.</summary>
    public required IReadOnlyList<PageCell> Cells { get; init; }

    /// <summary>How the page came to be.</summary>
    public required Provenance Provenance { get; init; }

    /// <summary>The chart library; null leaves every chart as its still picture.</summary>
    public ChartScript? Charts { get; init; }

    /// <summary>The cell that ended the run early, if one did.</summary>
    public PageCell? FailedCell => Cells.FirstOrDefault(c => c.Failure is not null);
}

/// <summary>One cell of the page.</summary>
public sealed record PageCell
{
    /// <summary>Code or prose.</summary>
    public required bool IsCode { get; init; }

    /// <summary>What the cell is called, for example <c>cell 3</c>; empty for prose.</summary>
    public string Label { get; init; } = "";

    /// <summary>Whether its code is of another file and was put in for this run.</summary>
    public bool IsOfOtherFile { get; init; }

    /// <summary>Name of the cell in links.</summary>
    public required string Anchor { get; init; }

    /// <summary>Its text.</summary>
    public required string Source { get; init; }

    /// <summary>What it put out.</summary>
    public IReadOnlyList<CellOutput> Outputs { get; init; } = [];

    /// <summary>Whether its prose and outputs stay out of the report.</summary>
    public bool LeaveOut { get; init; }

    /// <summary>Whether the run came to this cell.</summary>
    public bool WasRun { get; init; } = true;

    /// <summary>Why the cell ended early, if it did.</summary>
    public CellFailure? Failure => Outputs.OfType<ErrorOutput>().FirstOrDefault()?.Failure;
}

/// <summary>How a run came to be; goes to the foot of the page and into the notebook's metadata.</summary>
public sealed record Provenance
{
    /// <summary>SHA-256 of the notebook file as it was run, lower-case hex.</summary>
    public required string NotebookSha256 { get; init; }

    /// <summary>Every setting with the value used.</summary>
    public required IReadOnlyList<Setting> Settings { get; init; }

    /// <summary>Names of the settings that were given for this run.</summary>
    public IReadOnlyCollection<string> Given { get; init; } = [];

    /// <summary>Files whose code was put into the notebook for this run.</summary>
    public IReadOnlyList<CodeFile> Inserted { get; init; } = [];

    /// <summary>Name and version of the library.</summary>
    public required string Library { get; init; }

    /// <summary>How the run ended, in one word: complete, failed, stopped.</summary>
    public required string Ending { get; init; }

    /// <summary>When the run started.</summary>
    public required DateTimeOffset Started { get; init; }

    /// <summary>How long it took.</summary>
    public required TimeSpan Took { get; init; }
}
