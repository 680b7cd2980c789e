namespace Analytics.Runner.Outputs;

/// <summary>Why a cell ended early.</summary>
/// <param name="Kind">Short name of the failure: an exception type, <c>CompileError</c> or <c>TimeOut</c>.</param>
/// <param name="Message">What went wrong.</param>
/// <param name="Line">Line in the cell, from 1, where known.</param>
/// <param name="Trace">Places in the notebook's cells the failure passed through, innermost first.</param>
public sealed record CellFailure(string Kind, string Message, int? Line, IReadOnlyList<string> Trace);
