using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Files;

namespace Analytics.Season.Intake;

/// <summary>Counts what happens to the rows of one file or sheet.</summary>
internal sealed class FileTally(string path, string sha256)
{
    private readonly List<HeldBackRow> heldBack = [];

    public string Path { get; } = path;

    /// <summary>Data rows read.</summary>
    public int Rows { get; private set; }

    /// <summary>Data rows delivered in the result; counted where they are delivered, not worked out.</summary>
    public int Kept { get; private set; }

    /// <summary>What was held back, by line.</summary>
    public IEnumerable<HeldBackRow> HeldBack => heldBack.OrderBy(h => h.Line);

    public void CountRow(int rows = 1) => Rows += rows;

    public void CountKept(int rows = 1) => Kept += rows;

    /// <summary>Holds a row back; faults after the first are told in the same reason.</summary>
    public void HoldBack(int line, IReadOnlyList<CellFault> faults, string? athleteId, int rows = 1)
    {
        var first = faults[0];
        var more = string.Concat(faults.Skip(1).Take(3).Select(f => f.Column.Length is 0 ? $"; also: {f.Reason}" : $"; also {f.Column}: {f.Reason}"));
        var rest = faults.Count > 4 ? $"; and {faults.Count - 4} more" : "";
        heldBack.Add(new HeldBackRow(Path, line, first.Column, first.Value, Sentence(first.Reason + more + rest), first.Remedy, athleteId, rows));
    }

    /// <summary>Holds the whole table back.</summary>
    public void HoldBack(InputFault fault, int line)
        => heldBack.Add(new HeldBackRow(Path, line, CellText.Show(fault.Value), "", Sentence(fault.Reason), fault.Remedy, null, Rows));

    /// <summary>Holds many rows back for one reason.</summary>
    public void HoldBackRows(CellFault fault, int rows, string? athleteId = null)
        => heldBack.Add(new HeldBackRow(Path, 1, fault.Column, fault.Value, Sentence(fault.Reason), fault.Remedy, athleteId, rows));

    public InputFile ToInputFile() => new(Path, sha256, Rows, Kept, heldBack.Sum(h => h.Rows));

    private static string Sentence(string reason) => char.ToUpperInvariant(reason[0]) + (reason.EndsWith('?') ? reason[1..] : reason[1..].TrimEnd('.') + ".");
}
