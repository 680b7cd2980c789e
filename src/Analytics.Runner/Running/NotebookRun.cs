using Analytics.Runner.Files;
using Analytics.Runner.Outputs;

namespace Analytics.Runner.Running;

/// <summary>How a run ended and what came of it; nothing of it is written yet.</summary>
/// <param name="Ending">How it ended.</param>
/// <param name="Content">The bytes of its report and of its executed notebook.</param>
/// <param name="Took">How long it took.</param>
/// <param name="FailedCell">The cell that ended the run early, for example <c>cell 3</c>; null when none did.</param>
/// <param name="Failure">Why it did.</param>
public sealed record NotebookRun(RunEnding Ending, ResultContent Content, TimeSpan Took, string? FailedCell, CellFailure? Failure);
