using Analytics.Runner.Outputs;

namespace Analytics.Runner.Running;

/// <summary>How a run ended and what it wrote.</summary>
/// <param name="Ending">How it ended.</param>
/// <param name="PageFile">Full path of the report.</param>
/// <param name="NotebookFile">Full path of the executed notebook.</param>
/// <param name="Took">How long it took.</param>
/// <param name="FailedCell">The cell that ended the run early, for example <c>cell 3</c>; null when none did.</param>
/// <param name="Failure">Why it did.</param>
public sealed record RunResult(
    RunEnding Ending, string PageFile, string NotebookFile, TimeSpan Took, string? FailedCell = null, CellFailure? Failure = null)
{
    /// <summary>Full paths of the tables that cells put out; mostly none.</summary>
    public IReadOnlyList<string> TableFiles { get; init; } = [];
}

/// <summary>How a run ended.</summary>
public enum RunEnding
{
    /// <summary>Every cell ran.</summary>
    Complete,

    /// <summary>A cell failed.</summary>
    Failed,

    /// <summary>The time was up. The cell that used it up is still busy: end the process.</summary>
    TimedOut,
}
