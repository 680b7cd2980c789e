using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Seasons;

/// <summary>
/// A metric over all testing days of a season, or of several, on one scale: the one most athlete-days share. What was measured otherwise is in
/// <see cref="NotCompared"/>, never mixed in. The trials of an athlete's day are read once, so the cost is linear in trials.
/// </summary>
/// <example>
/// <code>
/// var values = SeasonValues.Of(MetricCatalogue.Get("back_squat_1rm"), season.Days.Select(d => d.Athletes).ToList());
/// SeasonTrend trend = SeasonTrend.Of(profile, values);
/// </code>
/// </example>
public sealed class SeasonValues
{
    private readonly Dictionary<string, IReadOnlyList<DayValue>> _byAthlete;
    private (SquadProfile Profile, MetricReliability Reliability)? _known;

    private SeasonValues(Metric metric, string? series, List<DayValue> values, List<NotCompared> others, List<string> without)
    {
        (Metric, Series, Values, NotCompared, WithoutValue) = (metric, series, values, others, without);
        Dates = [.. values.Select(v => v.Date).Distinct().Order()];
        _byAthlete = values.GroupBy(v => v.AthleteId, StringComparer.Ordinal).ToDictionary(g => g.Key, g => (IReadOnlyList<DayValue>)[.. g], StringComparer.Ordinal);
    }

    /// <summary>The metric.</summary>
    public Metric Metric { get; }

    /// <summary>The scale compared; null when there is no value at all, empty when the metric has one scale only.</summary>
    public string? Series { get; }

    /// <summary>Values on that scale, one an athlete and date, by date and then in the order the athletes were given.</summary>
    public IReadOnlyList<DayValue> Values { get; }

    /// <summary>Dates with a value, rising.</summary>
    public IReadOnlyList<DateOnly> Dates { get; }

    /// <summary>Athletes with a value, in the order of their first one.</summary>
    public IEnumerable<string> Athletes => _byAthlete.Keys;

    /// <summary>Values on other scales and values that are no numbers.</summary>
    public IReadOnlyList<NotCompared> NotCompared { get; }

    /// <summary>Athletes given who have no value on the scale compared on any day.</summary>
    public IReadOnlyList<string> WithoutValue { get; }

    /// <summary>The values of one athlete by date; empty when there are none.</summary>
    /// <param name="athleteId">Identifier of the athlete.</param>
    public IReadOnlyList<DayValue> Of(string athleteId) => _byAthlete.GetValueOrDefault(athleteId, []);

    /// <summary>What is known of the error of the day's value, found once a profile.</summary>
    /// <param name="profile">The squad with its retest days.</param>
    public MetricReliability Reliability(SquadProfile profile)
    {
        ArgumentNullException.ThrowIfNull(profile);
        if (_known is not { } known || !ReferenceEquals(known.Profile, profile)) _known = known = (profile, MetricReliability.Of(profile, Metric, Series, Values));
        return known.Reliability;
    }

    /// <summary>Reads the metric off all days.</summary>
    /// <param name="metric">The metric.</param>
    /// <param name="days">Testing days in any order, one entry an athlete and day; a second entry of one athlete and date adds its attempts.</param>
    public static SeasonValues Of(Metric metric, IReadOnlyList<IReadOnlyList<AthleteDay>> days)
    {
        ArgumentNullException.ThrowIfNull(metric);
        ArgumentNullException.ThrowIfNull(days);
        var read = new Dictionary<(DateOnly Date, string Id), List<TrialValue>>();
        foreach (var athlete in days.SelectMany(d => d))
        {
            if (!read.TryGetValue((athlete.Date, athlete.AthleteId), out var attempts)) read[(athlete.Date, athlete.AthleteId)] = attempts = [];
            attempts.AddRange(metric.FromTrials(athlete));
        }

        var series = MetricDay.Commonest(read.Values);
        var (values, others) = (new List<DayValue>(read.Count), new List<NotCompared>());
        foreach (var ((date, id), attempts) in read.OrderBy(r => r.Key.Date))
        {
            if (attempts.Count == 0) continue;
            if (attempts.TrueForAll(a => a.Series == series && double.IsFinite(a.Value)))
            {
                values.Add(MetricDay.DayValueOf(metric, id, date, attempts));
                continue;
            }

            others.AddRange(attempts.Where(a => !double.IsFinite(a.Value)).Select(a => new NotCompared(id, date, a.Value, a.Series, "not a number")));
            foreach (var scale in attempts.Where(a => double.IsFinite(a.Value)).GroupBy(a => a.Series, StringComparer.Ordinal))
            {
                var value = MetricDay.DayValueOf(metric, id, date, [.. scale]);
                if (scale.Key == series) values.Add(value);
                else others.Add(new(id, date, value.Value, scale.Key, $"measured by {MetricDay.Name(scale.Key)}; most of the season by {MetricDay.Name(series!)}"));
            }
        }

        var have = values.Select(v => v.AthleteId).ToHashSet(StringComparer.Ordinal);
        return new(metric, series, values, others, [.. read.Keys.Select(k => k.Id).Distinct().Where(id => !have.Contains(id))]);
    }
}
