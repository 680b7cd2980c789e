using Analytics.Season.Columns;

namespace Analytics.Season.Trials;

/// <summary>Numbers the attempts of one table that carry no number, in the order they stand.</summary>
internal sealed class AttemptNumbers
{
    private readonly Dictionary<(string Athlete, string Test, int Variant), int> counts = [];

    /// <summary>The number in the row, or the next one of its series.</summary>
    /// <param name="row">The row.</param>
    /// <param name="column">Column with the number.</param>
    /// <param name="athlete">Athlete.</param>
    /// <param name="test">Test the attempts count for.</param>
    /// <param name="variant">What else tells series apart.</param>
    public int Of(RowCells row, NumberColumn column, string athlete, string test = "", int variant = 0)
    {
        var key = (athlete, test, variant);
        var next = counts.GetValueOrDefault(key) + 1;
        counts[key] = next;
        return row.Number(column) is { } number ? (int)number : next;
    }
}
