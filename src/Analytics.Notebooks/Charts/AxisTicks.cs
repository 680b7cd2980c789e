using System.Globalization;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Charts;

/// <summary>A scale with the words at its ticks.</summary>
internal sealed record AxisTicks(LinearScale Scale, IReadOnlyList<(double Value, string Text)> Labels)
{
    private const double LabelPixels = 12;

    public static AxisTicks Of(LinearScale scale) => new(scale, [.. scale.Ticks.Select(t => (t, scale.Label(t)))]);

    /// <summary>Ticks at the testing days themselves; where they crowd, some go without words.</summary>
    /// <param name="days">The days; at least one.</param>
    /// <param name="narrowest">Narrowest drawing in pixels.</param>
    public static AxisTicks OfDays(IEnumerable<DateOnly> days, double narrowest)
    {
        var all = days.Distinct().Order().ToArray();
        var scale = LinearScale.Over(all.Select(d => (double)d.DayNumber), narrowest, air: 0.1);
        var labels = new List<(double, string)>();
        var free = double.NegativeInfinity;
        var year = all[0].Year == all[^1].Year ? 0 : -1;
        foreach (var day in all)
        {
            // Over more than one year the first label of each says which.
            var text = day.ToString(year == 0 || day.Year == year ? "d MMM" : "d MMM \u2019yy", CultureInfo.InvariantCulture);
            var (at, half) = (scale.Percent(day.DayNumber) / 100 * narrowest, (TextWidth.Of(text, LabelPixels) / 2) + 4);
            if (at - half < free) continue;
            labels.Add((day.DayNumber, text));
            free = at + half;
            if (year != 0) year = day.Year;
        }
        return new AxisTicks(scale, labels);
    }
}
