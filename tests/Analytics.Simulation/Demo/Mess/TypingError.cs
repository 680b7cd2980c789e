namespace Analytics.Simulation.Demo.Mess;

/// <summary>A slip of the keyboard put into a file on purpose.</summary>
/// <param name="Kind">What sort of slip.</param>
/// <param name="File">Path inside the season folder; the sheet of a workbook after '#'.</param>
/// <param name="Line">Line or sheet row, from 1, the head included.</param>
/// <param name="Column">Column head.</param>
/// <param name="AthleteId">The athlete it was meant for.</param>
/// <param name="Written">The cell as it stands in the file.</param>
/// <param name="Meant">The cell as it should be.</param>
public sealed record TypingError(string Kind, string File, int Line, string Column, string AthleteId, string Written, string Meant);
