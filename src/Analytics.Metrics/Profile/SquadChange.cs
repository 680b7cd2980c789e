using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Statistics.Change;
using Analytics.Statistics.Multiplicity;

namespace Analytics.Metrics.Profile;

/// <summary>
/// How a squad changed in one metric between two days, athlete by athlete and on average. Every athlete with a value on either day is in
/// exactly one of <see cref="Athletes"/>, <see cref="OneDayOnly"/> or, when on other scales, only in <see cref="NotCompared"/>.
/// </summary>
public sealed record SquadChange
{
    /// <summary>The metric.</summary>
    public required Metric Metric { get; init; }

    /// <summary>The scale compared; null when no athlete was measured on one scale on both days.</summary>
    public required string? Series { get; init; }

    /// <summary>The earlier day.</summary>
    public required DateOnly? From { get; init; }

    /// <summary>The later day.</summary>
    public required DateOnly? To { get; init; }

    /// <summary>Changes of those with a value on both days, largest improvement first (largest rise when no direction is better).</summary>
    public required IReadOnlyList<AthleteChange> Athletes { get; init; }

    /// <summary>Mean change with Student's t interval over athletes; null without athletes, no interval for one.</summary>
    public required MeanChange? Mean { get; init; }

    /// <summary>The rule applied to the mean; its error is the athletes' own scatter.</summary>
    public required Verdict MeanVerdict { get; init; }

    /// <summary>The typical error the athletes were judged by.</summary>
    public required MetricReliability Reliability { get; init; }

    /// <summary>The smallest worthwhile change and how it was chosen.</summary>
    public required SmallestWorthwhileChange Worthwhile { get; init; }

    /// <summary>The rule.</summary>
    public required VerdictRule Rule { get; init; }

    /// <summary>Athletes with a value on the scale compared on one of the two days only.</summary>
    public required IReadOnlyList<string> OneDayOnly { get; init; }

    /// <summary>Values on other scales.</summary>
    public required IReadOnlyList<NotCompared> NotCompared { get; init; }

    /// <summary>Number of clear gains. For a metric without a better direction a gain is a rise.</summary>
    public int Gains => Athletes.Count(a => a.Verdict == Verdict.ClearGain);

    /// <summary>Number of clear losses.</summary>
    public int Losses => Athletes.Count(a => a.Verdict == Verdict.ClearLoss);

    /// <summary>Clear verdicts, gains and losses together, that chance alone would give if nobody had changed: at most this many.</summary>
    public ChanceFlags ByChance => FlagRates.ByChance(
        Athletes.Count(a => a.Reason is null), Athletes.Count == 0 ? 0 : Rule.LargestFalseFlagRate);

    /// <summary>What to bear in mind when reading the table, in words a report can print.</summary>
    public IReadOnlyList<string> Cautions =>
    [
        .. Reliability.Cautions,
        .. EquationCaution,
        "Athletes singled out for a low first score tend to score higher next time without any training, and the other way round.",
    ];

    private IEnumerable<string> EquationCaution
    {
        get
        {
            var unlike = Athletes.Count(a => a.SharedError != 0);
            if (unlike > 0)
                yield return $"{unlike} of {Athletes.Count} changes compare values that were not made the same way (measured or estimated, or from other repetitions); the equation's error is added, so they are known less well, and so is the mean.";
        }
    }

    internal static SquadChange Of(SquadProfile profile, Metric metric, IReadOnlyList<AthleteDay> before, IReadOnlyList<AthleteDay> after)
    {
        ArgumentNullException.ThrowIfNull(metric);
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        var series = CommonSeries(metric, before, after);
        var first = MetricDay.Of(metric, before, series);
        var second = MetricDay.Of(metric, after, series);
        var reliability = MetricReliability.Of(metric, series, profile.Retests, [before, after], profile.MinimumRetested);
        var spread = WithinGroupSpread.Of(profile, first, reliability);
        var worthwhile = WithinGroupSpread.Worthwhile(profile, first, spread);

        var athletes = first.Values
            .Select(b => (Before: b, After: second.For(b.AthleteId))).Where(p => p.After is not null)
            .Select(p => Judge(profile, metric, p.Before, p.After!, reliability, worthwhile))
            .OrderByDescending(a => metric.Better == Direction.Lower ? -a.Difference : a.Difference)
            .ThenBy(a => a.AthleteId, StringComparer.Ordinal).ToList();
        var mean = athletes.Count > 0
            ? MeanChange.Of([.. athletes.Select(a => a.Difference)], profile.Rule.Level).WithSharedError(athletes.Average(a => a.SharedError))
            : null;
        var both = athletes.Select(a => a.AthleteId).ToHashSet();
        return new()
        {
            Metric = metric,
            Series = series,
            From = before.Count > 0 ? before.Max(d => d.Date) : null,
            To = after.Count > 0 ? after.Max(d => d.Date) : null,
            Athletes = athletes,
            Mean = mean,
            MeanVerdict = JudgeMean(profile, metric, mean, worthwhile),
            Reliability = reliability,
            Worthwhile = worthwhile,
            Rule = profile.Rule,
            OneDayOnly = [.. first.Values.Concat(second.Values).Select(v => v.AthleteId).Where(id => !both.Contains(id)).Distinct()],
            NotCompared = [.. first.NotCompared, .. second.NotCompared],
        };
    }

    /// <summary>The scale most athletes were measured on on both days; else the commonest of the later day.</summary>
    private static string? CommonSeries(Metric metric, IReadOnlyList<AthleteDay> before, IReadOnlyList<AthleteDay> after)
    {
        var earlier = before.GroupBy(d => d.AthleteId).ToDictionary(g => g.Key, g => g.SelectMany(metric.FromTrials).Select(a => a.Series).ToHashSet());
        var later = after.GroupBy(d => d.AthleteId).Select(g => (Id: g.Key, Attempts: g.SelectMany(metric.FromTrials).ToList())).ToList();
        return MetricDay.Commonest(later.Select(a => (IReadOnlyList<TrialValue>)
                [.. a.Attempts.Where(t => earlier.TryGetValue(a.Id, out var had) && had.Contains(t.Series))]))
            ?? MetricDay.Commonest(later.Select(a => a.Attempts))
            ?? MetricDay.Commonest(before.Select(d => (IReadOnlyList<TrialValue>)[.. metric.FromTrials(d)]));
    }

    private static AthleteChange Judge(
        SquadProfile profile, Metric metric, DayValue before, DayValue after, MetricReliability reliability, SmallestWorthwhileChange worthwhile)
    {
        // A proportional error is taken at the middle of the two values, which is independent of their difference.
        var error = reliability.ErrorAt((before.Value + after.Value) / 2) ?? 0;
        if (error <= 0)
        {
            var reason = reliability.Error is null ? reliability.Basis : "a percentage error says nothing about values that average 0";
            return new(before.AthleteId, before, after, null, null, Verdict.CannotTellYet, reason);
        }

        var equation = EquationInChange.Of(before, after, reliability);
        var change = IndividualChange.Between(before.Value, after.Value, error, reliability.DegreesOfFreedom).WithKnownError(Math.Sqrt(equation.Variance));
        var interval = change.Interval(profile.Rule.Level);
        var judged = new AthleteChange(before.AthleteId, before, after, change, interval, Verdict.CannotTellYet, null)
        {
            Remark = equation.Remark,
            SharedError = equation.Shared,
        };
        return reliability.HoldsDayToDayVariation
            ? judged with { Verdict = profile.Rule.Judge(change, worthwhile.Value, metric.Better == Direction.Lower) }
            : judged with { Reason = "only same-day attempts tell of error here; they leave out day-to-day variation, so the interval is too narrow for a verdict" };
    }

    private static Verdict JudgeMean(SquadProfile profile, Metric metric, MeanChange? mean, SmallestWorthwhileChange worthwhile)
        // Equal differences of everybody would give an interval without width; that is no evidence of precision.
        => mean is { StandardDeviation: > 0, AsChange: { } change }
            ? profile.Rule.Judge(change, worthwhile.Value, metric.Better == Direction.Lower)
            : Verdict.CannotTellYet;
}
