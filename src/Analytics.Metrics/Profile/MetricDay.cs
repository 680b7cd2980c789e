using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Profile;

/// <summary>
/// A metric on one testing day, on one scale: hand and electronic times, mats and plates are never mixed. Every athlete given
/// is in exactly one of <see cref="Values"/> and <see cref="WithoutValue"/>; attempts on another scale are in <see cref="NotCompared"/>.
/// </summary>
/// <example>
/// <code>
/// var day = MetricDay.Of(MetricCatalogue.Get("cmj_height"), today);
/// foreach (var value in day.Values) ...   // value.Value in day.Metric.Unit
/// </code>
/// </example>
public sealed record MetricDay
{
    /// <summary>The metric.</summary>
    public required Metric Metric { get; init; }

    /// <summary>The scale compared; null when the day holds no value, empty when the metric has one scale only.</summary>
    public required string? Series { get; init; }

    /// <summary>Values on that scale, in the order of the athletes given.</summary>
    public required IReadOnlyList<DayValue> Values { get; init; }

    /// <summary>Values on other scales and values that are no numbers.</summary>
    public required IReadOnlyList<NotCompared> NotCompared { get; init; }

    /// <summary>Athletes given who have no value on the scale compared.</summary>
    public required IReadOnlyList<string> WithoutValue { get; init; }

    /// <summary>Evaluates the metric for everybody.</summary>
    /// <param name="metric">The metric.</param>
    /// <param name="days">One entry an athlete; a second entry of the same athlete adds its attempts to the first.</param>
    /// <param name="series">The scale to compare; null for the one most athletes were measured on (then most attempts, then by name).</param>
    public static MetricDay Of(Metric metric, IReadOnlyList<AthleteDay> days, string? series = null)
    {
        ArgumentNullException.ThrowIfNull(metric);
        ArgumentNullException.ThrowIfNull(days);
        var athletes = days.GroupBy(d => d.AthleteId)
            .Select(g => (Id: g.Key, Date: g.Max(d => d.Date), Attempts: g.SelectMany(metric.FromTrials).ToList())).ToList();
        var chosen = series ?? Commonest(athletes.Select(a => a.Attempts));

        var values = new List<DayValue>();
        var others = new List<NotCompared>();
        var without = new List<string>();
        foreach (var (id, date, attempts) in athletes)
        {
            others.AddRange(attempts.Where(a => !double.IsFinite(a.Value))
                .Select(a => new NotCompared(id, date, a.Value, a.Series, "not a number")));
            foreach (var scale in attempts.Where(a => double.IsFinite(a.Value)).GroupBy(a => a.Series, StringComparer.Ordinal))
            {
                var value = DayValueOf(metric, id, date, [.. scale]);
                if (scale.Key == chosen) values.Add(value);
                else others.Add(new(id, date, value.Value, scale.Key, $"measured by {Name(scale.Key)}; the squad by {Name(chosen!)}"));
            }

            if (values.Count == 0 || values[^1].AthleteId != id) without.Add(id);
        }

        return new() { Metric = metric, Series = chosen, Values = values, NotCompared = others, WithoutValue = without };
    }

    /// <summary>The value of one athlete; null when there is none on this scale.</summary>
    /// <param name="athleteId">Identifier of the athlete.</param>
    public DayValue? For(string athleteId) => Values.FirstOrDefault(v => v.AthleteId == athleteId);

    /// <summary>The scale most athletes share (over several days: most athlete-days), then most attempts, then by name; null without any finite attempt.</summary>
    internal static string? Commonest(IEnumerable<IReadOnlyList<TrialValue>> athletes)
    {
        var counts = new Dictionary<string, (int Athletes, int Attempts)>(StringComparer.Ordinal);
        foreach (var attempts in athletes)
        {
            for (var i = 0; i < attempts.Count; i++)
            {
                var series = attempts[i].Series;
                if (!double.IsFinite(attempts[i].Value)) continue;
                // The attempts of a day are few, so looking back beats a set.
                var isFirst = true;
                for (var j = 0; j < i && isFirst; j++) isFirst = attempts[j].Series != series || !double.IsFinite(attempts[j].Value);
                var (own, all) = counts.GetValueOrDefault(series);
                counts[series] = (own + (isFirst ? 1 : 0), all + 1);
            }
        }

        return counts.OrderByDescending(c => c.Value.Athletes).ThenByDescending(c => c.Value.Attempts).ThenBy(c => c.Key, StringComparer.Ordinal).Select(c => c.Key).FirstOrDefault();
    }

    internal static string Name(string series) => series.Length == 0 ? "an unnamed method" : series;

    internal static DayValue DayValueOf(Metric metric, string id, DateOnly date, IReadOnlyList<TrialValue> attempts)
    {
        if (metric.Rule == TrialRule.Mean)
        {
            double? error = attempts.All(a => a.StandardError.HasValue)
                ? Math.Sqrt(attempts.Sum(a => a.StandardError!.Value * a.StandardError.Value)) / attempts.Count
                : null;
            var mean = attempts.Average(a => a.Value);
            return new(id, date, mean, attempts, error, Doubts(metric, mean, attempts))
            {
                Equation = EquationError.OfMean(attempts),
                HowMade = string.Join(" and ", attempts.Select(a => a.HowMade).Where(h => h.Length > 0).Distinct()),
                // The smallest of them is on the safe side.
                ErrorDegreesOfFreedom = attempts.Min(a => a.ErrorDegreesOfFreedom),
            };
        }

        var best = metric.Better == Direction.Lower ? attempts.MinBy(a => a.Value)! : attempts.MaxBy(a => a.Value)!;
        return new(id, date, best.Value, attempts, best.StandardError, Doubts(metric, best.Value, [best]))
        {
            Equation = best.Equation,
            HowMade = best.HowMade,
            ErrorDegreesOfFreedom = best.ErrorDegreesOfFreedom,
        };
    }

    private static List<string> Doubts(Metric metric, double value, IReadOnlyList<TrialValue> counted)
    {
        var doubts = counted.Select(a => a.Doubt).OfType<string>().Distinct().ToList();
        if (value < metric.PlausibleLow || value > metric.PlausibleHigh)
        {
            doubts.Add(string.Create(CultureInfo.InvariantCulture,
                $"outside the plausible range {metric.PlausibleLow} to {metric.PlausibleHigh} {metric.Unit}"));
        }

        return doubts;
    }
}
