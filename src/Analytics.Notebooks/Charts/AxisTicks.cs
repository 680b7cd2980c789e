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
        foreach (var day in all)
        {
            var text = day.ToString("d MMM", CultureInfo.InvariantCulture);
            var (at, half) = (scale.Percent(day.DayNumber) / 100 * narrowest, (TextWidth.Of(text, LabelPixels) / 2) + 4);
            if (at - half < free) continue;
            labels.Add((day.DayNumber, text));
            free = at + half;
        }
        return new AxisTicks(scale, labels);
    }
}
