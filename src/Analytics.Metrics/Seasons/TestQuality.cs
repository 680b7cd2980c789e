using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Statistics;
using Analytics.Statistics.Change;
using Analytics.Statistics.Distributions;
using Analytics.Statistics.Reliability;

namespace Analytics.Metrics.Seasons;

/// <summary>Whether a test is worth its time, judged by this squad: what it can tell, what it costs, and whether to keep, mend or drop it.</summary>
public sealed record TestQuality
{
    /// <summary>The metric.</summary>
    public required Metric Metric { get; init; }

    /// <summary>What is known of its error.</summary>
    public required MetricReliability Reliability { get; init; }

    /// <summary>Level of the metric the errors below are stated at: mean of the squad's first values; null without values.</summary>
    public required double? Level { get; init; }

    /// <summary>Typical error of a day's value at that level, in the metric's unit; null when none is known.</summary>
    public required double? TypicalError { get; init; }

    /// <summary>Its interval; without width for a published error whose number of athletes is not known.</summary>
    public required Interval? TypicalErrorInterval { get; init; }

    /// <summary>ICC(3,1) with its interval when the season has a retest of its own; else null.</summary>
    public IntraclassCorrelation? Icc => Reliability.Consistency;

    /// <summary>True SD between athletes of a group over the typical error; 0 when athletes differ no more than error explains; null when it cannot be told.</summary>
    public required double? SignalToNoise { get; init; }

    /// <summary>Its interval by the F law.</summary>
    public required Interval? SignalToNoiseInterval { get; init; }

    /// <summary>The smallest worthwhile change; with the interval of the spread it is a share of, where it is one.</summary>
    public required SmallestWorthwhileChange Worthwhile { get; init; }

    /// <summary>Smallest worthwhile change over the typical error; null when either is not known.</summary>
    public double? WorthwhileToNoise => TypicalError > 0 ? Worthwhile.Value / TypicalError : null;

    /// <summary>Smallest change of one athlete between two single test days whose interval leaves out 0, in the metric's unit.</summary>
    public required double? DetectableChange { get; init; }

    /// <summary>Its interval, in proportion to the typical error it is made of; null without one, and for a published error whose doubt is not known.</summary>
    public Interval? DetectableInterval
        => this is { DetectableChange: { } change, TypicalError: > 0 and var error, TypicalErrorInterval: { } i } && i.High > i.Low ? i.Times(change / error) : null;

    /// <summary>Test days to average on each of two occasions so that a worthwhile change of one athlete is seen with the rule's power.</summary>
    public required int? DaysForAthlete { get; init; }

    /// <summary>The same for the mean change of a group of <see cref="GroupSize"/>.</summary>
    public required int? DaysForGroup { get; init; }

    /// <summary>Size of the group asked about.</summary>
    public required int GroupSize { get; init; }

    /// <summary>Athletes of the squad.</summary>
    public required int SquadSize { get; init; }

    /// <summary>Share of the squad with a usable value on a usual day of this test, 0 to 1.</summary>
    public required double UsableShare { get; init; }

    /// <summary>Values measured another way, which are not compared (another box, hand times); they may be so on purpose.</summary>
    public required int ValuesElsewhere { get; init; }

    /// <summary>What it costs; null when no minutes are known.</summary>
    public required TestCost? Cost { get; init; }

    /// <summary>Minutes of one station a test day of the whole squad takes; null when not known.</summary>
    public double? SquadMinutes => Cost?.MinutesFor(SquadSize);

    /// <summary>Keep, mend or drop.</summary>
    public required TestAdvice Advice { get; init; }

    /// <summary>Why, without the advice itself: begins with a small letter, ends with a full stop.</summary>
    public required string Why { get; init; }

    /// <summary>The advice and why, in one plain sentence.</summary>
    public string Reason => $"{char.ToUpperInvariant(Advice.Words()[0])}{Advice.Words()[1..]}: {Why}";

    /// <summary>The thresholds used.</summary>
    public required TestQualityRule Rule { get; init; }

    /// <summary>Judges a test.</summary>
    /// <param name="profile">The squad with its groups, retest days and choices.</param>
    /// <param name="values">The metric over the season.</param>
    /// <param name="minutes">Minutes per athlete the season sets, by metric; null for none.</param>
    /// <param name="groupSize">Athletes of a group whose mean change is asked for, at least 1.</param>
    /// <param name="rule">The thresholds; null for <see cref="TestQualityRule.Standard"/>.</param>
    public static TestQuality Of(
        SquadProfile profile, SeasonValues values, IReadOnlyDictionary<string, double>? minutes = null, int groupSize = 8, TestQualityRule? rule = null)
    {
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(values);
        ArgumentOutOfRangeException.ThrowIfLessThan(groupSize, 1);
        rule ??= TestQualityRule.Standard;
        var reliability = values.Reliability(profile);
        var periods = SeasonPeriods.Of(values.Dates, profile.Retests);
        var first = FirstValues.Of(values, periods);
        var spread = FirstValues.Spread(profile, values, periods, reliability);
        double? level = first.Count > 0 ? first.Average(v => v.Value) : null;
        var error = level is { } l && reliability.ErrorAt(l) is > 0 and var e ? e : (double?)null;
        var worthwhile = FirstValues.Worthwhile(profile, values, periods, reliability);
        // A spread pooled over groups has its own degrees of freedom in the place of athletes − 1.
        if (spread is not null) worthwhile = worthwhile.WithDoubt(spread.DegreesOfFreedom + 1, spread.ErrorVariance is null ? double.PositiveInfinity : reliability.DegreesOfFreedom, rule.Level);
        var signal = SignalToNoiseOf(spread, reliability, rule.Level);
        var squad = profile.Squad.DistinctBy(m => m.Id).ToList();
        var bare = new TestQuality
        {
            Metric = values.Metric,
            Reliability = reliability,
            Level = level,
            TypicalError = error,
            TypicalErrorInterval = error is { } known ? reliability.Error!.Interval(rule.Level).Times(known / reliability.Error.Value) : null,
            SignalToNoise = signal?.Value,
            SignalToNoiseInterval = signal?.Interval,
            Worthwhile = worthwhile,
            DetectableChange = error is { } te ? Math.Sqrt(2) * te * StudentLaw.TwoSided(rule.Level, reliability.DegreesOfFreedom) : null,
            DaysForAthlete = DaysFor(1, error, worthwhile, reliability, rule),
            DaysForGroup = DaysFor(groupSize, error, worthwhile, reliability, rule),
            GroupSize = groupSize,
            SquadSize = squad.Count,
            UsableShare = Usable(values, squad),
            ValuesElsewhere = values.NotCompared.Count,
            Cost = TestMinutes.Of(values.Metric.Id, minutes ?? new Dictionary<string, double>()),
            Advice = TestAdvice.CannotTellYet,
            Why = "",
            Rule = rule,
        };
        var (advice, why) = QualityAdvice.Of(bare, profile);
        return bare with { Advice = advice, Why = why };
    }

    /// <summary>√(s²/e² − 1) with the limits that the F law gives the ratio of the variances.</summary>
    private static (double Value, Interval Interval)? SignalToNoiseOf(WithinGroupSpread? spread, MetricReliability reliability, double level)
    {
        if (spread is not { ErrorVariance: > 0 and var error } || !reliability.HoldsDayToDayVariation) return null;
        var ratio = spread.StandardDeviation * spread.StandardDeviation / error;
        // The squad's own error is of the same athletes on the same days; that the two variances are not quite independent is neglected.
        double At(double p) => double.IsPositiveInfinity(reliability.DegreesOfFreedom)
            ? ChiSquareLaw.Quantile(p, spread.DegreesOfFreedom) / spread.DegreesOfFreedom
            : FisherLaw.Quantile(p, spread.DegreesOfFreedom, reliability.DegreesOfFreedom);
        double Signal(double r) => Math.Sqrt(Math.Max(0, r - 1));
        return (Signal(ratio), new(Signal(ratio / At((1 + level) / 2)), Signal(ratio / At((1 - level) / 2)), level));
    }

    /// <summary>n = 2 ((t + z) TE/(S √g))², at least 1: the mean of n days before against the mean of n days after.</summary>
    private static int? DaysFor(int athletes, double? error, SmallestWorthwhileChange worthwhile, MetricReliability reliability, TestQualityRule rule)
    {
        if (error is not { } te || worthwhile.Value is not { } s || !reliability.HoldsDayToDayVariation) return null;
        var reach = (StudentLaw.TwoSided(rule.Level, reliability.DegreesOfFreedom) + NormalLaw.Quantile(rule.Power)) * te / s;
        return (int)Math.Min(int.MaxValue, Math.Ceiling(Math.Max(1, 2 * reach * reach / athletes)));
    }

    private static double Usable(SeasonValues values, List<SquadMember> squad)
    {
        if (squad.Count == 0 || values.Dates.Count == 0) return 0;
        var known = squad.Select(m => m.Id).ToHashSet(StringComparer.Ordinal);
        List<int> counts = [.. values.Values.GroupBy(v => v.Date).Select(g => g.Count(v => known.Contains(v.AthleteId))).Order()];
        return (counts[(counts.Count - 1) / 2] + counts[counts.Count / 2]) / 2.0 / squad.Count;
    }
}
