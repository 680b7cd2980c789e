using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;

namespace Analytics.Metrics.Transfer;

/// <summary>An athlete's mean over a block of days.</summary>
/// <param name="Value">The mean.</param>
/// <param name="Precision">Sum of the precisions of its values: a mean of more days is known better.</param>
public readonly record struct BlockMean(double Value, double Precision);

/// <summary>A measure as a transfer study sees it: every value turned so that more is better.</summary>
public sealed record TransferMeasure
{
    /// <summary>The metric.</summary>
    public required Metric Metric { get; init; }

    /// <summary>What is known of the error of its day value.</summary>
    public required MetricReliability Reliability { get; init; }

    /// <summary>Typical error at the squad's mean, in the metric's unit; null when none is known.</summary>
    public required double? TypicalError { get; init; }

    /// <summary>Values used: one an athlete and testing day.</summary>
    public required int Values { get; init; }

    /// <summary>Of these, estimated by an equation from repetitions or the like.</summary>
    public required int Estimated { get; init; }

    /// <summary>Values on another scale, which take no part.</summary>
    public required int NotCompared { get; init; }

    /// <summary>
    /// What regression to the mean alone does: a player one SD above the squad at the start falls back by so much, in the metric's unit, without any true
    /// change: (1 − reliability of the start) SD. Null when no error is known.
    /// </summary>
    public required double? FallBack { get; init; }

    /// <summary>−1 where less is better, else 1: the sense in which gains are counted.</summary>
    public int Sense => Metric.Better == Direction.Lower ? -1 : 1;

    /// <summary>Whether the metric has a direction; without one "gain" means "more".</summary>
    public bool HasDirection => Metric.Better != Direction.Neither;

    /// <summary>The label with a small first letter where it is a word.</summary>
    internal string Name => Metric.Label.Length > 1 && char.IsUpper(Metric.Label[0]) && !char.IsUpper(Metric.Label[1]) ? char.ToLowerInvariant(Metric.Label[0]) + Metric.Label[1..] : Metric.Label;

    /// <summary>Values by athlete and number of the testing day (position in the study's dates), times <see cref="Sense"/>: more is better.</summary>
    public required IReadOnlyDictionary<(string Athlete, int Day), double> Turned { get; init; }

    /// <summary>How well each of them is known: usual error variance over its own, below 1 for a value estimated among measured ones.</summary>
    public required IReadOnlyDictionary<(string Athlete, int Day), double> Precision { get; init; }

    /// <summary>The same by athlete and block of days: what the correlations are made of. A block is a day unless there are too many of them.</summary>
    public required IReadOnlyDictionary<(string Athlete, int Block), BlockMean> Means { get; init; }

    internal static TransferMeasure Of(SquadProfile profile, SeasonValues values, TestingCalendar calendar)
    {
        var sense = values.Metric.Better == Direction.Lower ? -1 : 1;
        var members = profile.Squad.Select(m => m.Id).ToHashSet(StringComparer.Ordinal);
        var kept = values.Values.Where(v => members.Contains(v.AthleteId) && calendar.DayOf(v.Date) >= 0).ToList();
        // A test begun on one date and finished on another is one testing day.
        var turned = kept.GroupBy(v => (v.AthleteId, calendar.DayOf(v.Date))).ToDictionary(g => g.Key, g => sense * g.Average(v => v.Value));
        var reliability = values.Reliability(profile);
        var error = turned.Count == 0 ? null : reliability.ErrorAt(turned.Values.Average(Math.Abs));
        var precision = new Dictionary<(string, int), double>();
        foreach (var own in kept.GroupBy(v => v.AthleteId))
        {
            List<DayValue> list = [.. own];
            var known = ValuePrecision.Of(list, reliability.ErrorAt(list.Average(v => Math.Abs(v.Value))), reliability.HoldsFreshEquationError);
            for (var i = 0; i < list.Count; i++) precision[(own.Key, calendar.DayOf(list[i].Date))] = known[i];
        }

        return new()
        {
            Metric = values.Metric,
            Reliability = reliability,
            TypicalError = error > 0 ? error : null,
            Values = turned.Count,
            Estimated = kept.Count(v => v.Equation is not null),
            NotCompared = values.NotCompared.Count,
            FallBack = StartFallBack.Of(turned, calendar, error)?.Fall,
            Turned = turned,
            Precision = precision,
            Means = turned.GroupBy(v => (v.Key.Item1, calendar.BlockOf(v.Key.Item2)))
                .ToDictionary(g => g.Key, g => new BlockMean(g.Average(v => v.Value), g.Sum(v => precision.GetValueOrDefault(v.Key, 1)))),
        };
    }
}
