using Analytics.Season.Cells;
using Analytics.Season.Columns;

namespace Analytics.Season.Trials;

/// <summary>Whether a load is possible for its lift.</summary>
internal static class LoadLimits
{
    /// <summary>Says what is wrong with a load outside the limits of its lift.</summary>
    public static void Check(RowCells row, QuantityColumn column, KnownLift lift, double kilograms)
    {
        if (double.IsNaN(kilograms) || (kilograms >= lift.LowestKg && kilograms <= lift.HighestKg)) return;
        // The cell that is filled, where the load stands there in two units.
        var place = row.Head[column].First(p => row.TextAt(p).Length > 0);
        var unit = place.Unit!;
        NumberCell.Read(CellText.Exact(kilograms / unit.ToSi), lift.LowestKg / unit.ToSi, lift.HighestKg / unit.ToSi, out var problem, unit, column.Units);
        row.Fault(place.Head, row.TextAt(place), $"for {(lift.Id.Length is 0 ? "a lift" : lift.Id)}, {problem!.Reason}", problem.Remedy);
    }
}
