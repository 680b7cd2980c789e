using Analytics.Quantities;
using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Intake;

namespace Analytics.Season.Checks;

/// <summary>Asks whether another unit explains why a value is far from a level.</summary>
internal static class UnitGuess
{
    /// <summary>The unit that brings the value near the level; null when the value is not far from it, or no unit does.</summary>
    public static Unit? Of(QuantityColumn column, ReadTable table, double value, double level, Ratios ratios)
    {
        if (Distance(value, level) <= Math.Log(ratios.Far)) return null;
        return column.Units.Where(u => u != Written(column, table))
            .Select(u => (Unit: u, Left: Distance(value * Factor(column, table, u), level)))
            .Where(u => u.Left < Math.Log(ratios.Near)).OrderBy(u => u.Left).Select(u => u.Unit).FirstOrDefault();
    }

    /// <summary>How far apart two values are, as the logarithm of their ratio.</summary>
    public static double Distance(double value, double level) => Math.Abs(Math.Log(value / level));

    /// <summary>What a value grows by if it was typed in another unit than the head says.</summary>
    public static double Factor(QuantityColumn column, ReadTable table, Unit meant) => meant.ToSi / Written(column, table).ToSi;

    /// <summary>The fault of one value.</summary>
    /// <param name="column">Column of the value.</param>
    /// <param name="table">Table of the row.</param>
    /// <param name="si">Value as typed, SI.</param>
    /// <param name="compared">What it is compared with, in words: "2.2 times what ...".</param>
    /// <param name="meant">Unit it looks like.</param>
    public static CellFault Fault(QuantityColumn column, ReadTable table, double si, string compared, Unit meant)
    {
        var unit = Written(column, table);
        string value = CellText.Number(si / unit.ToSi), converted = CellText.Number(si / unit.ToSi * Factor(column, table, meant));
        return new CellFault(table.Head.HeadOf(column), value, $"{value} {unit.Symbol} is {compared}; it looks like {meant.Symbol}",
            $"If it is {meant.Symbol}, write {converted} ({value} {meant.Symbol} in {unit.Symbol}). If it is right, write yes in a column 'checked'.");
    }

    private static Unit Written(QuantityColumn column, ReadTable table) => table.Head[column][0].Unit!;
}
