using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Season;

namespace Analytics.Metrics.Tests.Promoted;

/// <summary>The small season in tests/oracles/frozen-season, read once. Values of a metric on it must stay as they were when the metric was promoted.</summary>
internal static class FrozenSeason
{
    private static readonly Lazy<SeasonData> Read = new(() => SeasonReader.Read(Repository.Path("tests", "oracles", "frozen-season", "season")));

    public static SeasonData Data => Read.Value;

    /// <summary>
    /// Holds the value of an athlete's day against the one written down. Ten digits are written, so they agree to half a unit in the tenth, at most 5e-10 of
    /// the value; doubled for sums that another processor rounds otherwise.
    /// </summary>
    public static void Holds(Metric metric, string athlete, string date, double expected, string series)
    {
        var on = DateOnly.ParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture);
        var day = Assert.Single(Data.Days.Single(d => d.Date == on).Athletes, a => a.AthleteId == athlete);
        var value = Assert.Single(MetricDay.Of(metric, [day], series).Values).Value;
        Assert.True(Math.Abs(value - expected) <= 1e-9 * Math.Abs(expected),
            string.Create(CultureInfo.InvariantCulture, $"{metric.Id} of {athlete} on {date}: {expected:G10} {metric.Unit} when promoted, now {value:G10}. If the change is meant, say why beside the new number."));
    }
}
