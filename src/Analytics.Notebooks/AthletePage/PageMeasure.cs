using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Notebooks.Units;
using Analytics.Statistics;
using Analytics.Statistics.Change;
using Analytics.Statistics.Distributions;

namespace Analytics.Notebooks.AthletePage;

/// <summary>One test of one player: the days, where it stands, how it changed.</summary>
internal sealed record PageMeasure
{
    public required Metric Metric { get; init; }

    public required ShownUnit Unit { get; init; }

    /// <summary>The player's days on the scale of the latest one, by date; at least one.</summary>
    public required IReadOnlyList<DayValue> History { get; init; }

    public required MetricReliability Reliability { get; init; }

    public required Comparison? Against { get; init; }

    /// <summary>Null when the group measured another way or is too small.</summary>
    public required AthleteStanding? Standing { get; init; }

    /// <summary>Degrees of freedom of what is known about spread and error.</summary>
    public required double Degrees { get; init; }

    /// <summary>How far from the middle counts, in the metric's unit; null when not known.</summary>
    public required double? Margin { get; init; }

    /// <summary>Value compared with; null when there is none.</summary>
    public required DayValue? Before { get; init; }

    /// <summary>Null when there is nothing to compare with, or it was measured another way.</summary>
    public required AthleteChange? Change { get; init; }

    public required VerdictRule Rule { get; init; }

    public DayValue Latest => History[^1];

    public bool LowerIsBetter => Metric.Better == Direction.Lower;

    public Interval? Range(DayValue value) => value.Interval(Reliability)?.Interval;

    public bool IsJudged => Change is { Reason: null };

    /// <summary>Probability that the true value is better than the group's middle by more than the margin; null when it cannot be stated.</summary>
    public double? ProbabilityAhead => Standing is { ProbabilityBehind: not null, Likely: { } likely, LikelyError: > 0 and var error }
        ? StudentLaw.Cdf((likely - (Margin ?? 0)) / error, Degrees) : null;
}
