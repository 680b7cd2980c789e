using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Trials;

namespace Analytics.Cli.Promoting;

/// <summary>A value of a metric on the frozen season, a row of the regression test.</summary>
internal sealed record FrozenValue(string Athlete, DateOnly Date, double Value, string Series);

/// <summary>Values of a metric on the frozen season.</summary>
internal static class FrozenValues
{
    /// <summary>Rows of the regression test, at most.</summary>
    public const int Rows = 12;

    /// <summary>Every value: of each athlete's day, on each scale.</summary>
    public static IReadOnlyList<FrozenValue> Of(Metric metric, IEnumerable<AthleteDay> days)
        => [.. from day in days
               from series in metric.FromTrials(day).Where(v => double.IsFinite(v.Value)).Select(v => v.Series).Distinct().Order(StringComparer.Ordinal).ToList()
               from value in MetricDay.Of(metric, [day], series).Values
               select new FrozenValue(value.AthleteId, value.Date, value.Value, series)];

    /// <summary>Some of them, in their order: one of every scale first, then spread evenly over days and athletes.</summary>
    public static IReadOnlyList<FrozenValue> Spread(IReadOnlyList<FrozenValue> all)
    {
        if (all.Count <= Rows) return all;
        var chosen = all.GroupBy(v => v.Series).Select(g => g.First()).Take(Rows).ToHashSet();
        for (var i = 0; i < Rows && chosen.Count < Rows; i++) chosen.Add(all[i * (all.Count - 1) / (Rows - 1)]);
        for (var i = 0; i < all.Count && chosen.Count < Rows; i++) chosen.Add(all[i]);
        return [.. all.Where(chosen.Contains)];
    }
}
