using Analytics.Metrics.Catalogue;
using Analytics.Statistics.Change;
using Analytics.Statistics.Distributions;

namespace Analytics.Metrics.Profile;

/// <summary>One athlete against the middle of the position group.</summary>
/// <param name="AthleteId">Identifier of the athlete.</param>
/// <param name="Group">Position group.</param>
/// <param name="Value">Day value.</param>
/// <param name="Middle">Middle of the group, in the metric's unit.</param>
/// <param name="Score">
/// Standardised score: distance from the middle in SDs between athletes of a group as observed, positive when better (or higher, without a better direction);
/// null when it cannot be stated.
/// </param>
/// <param name="ScoreError">Standard error of the score from test error alone, the equation's included where the value was estimated; null when no error is known.</param>
/// <param name="Likely">Best guess of the true distance from the middle in the metric's unit, positive when better: the observed one times <paramref name="Weight"/>; null when it cannot be stated.</param>
/// <param name="LikelyError">Standard deviation of that guess.</param>
/// <param name="Weight">Weight of the athlete's own distance, true variance/(true variance + error variance); null when it cannot be stated.</param>
/// <param name="ProbabilityBehind">Probability that the true value is worse than the middle by more than the margin; null when it cannot be stated.</param>
/// <param name="Reason">Why something above is missing, in plain words; null when nothing is.</param>
public sealed record AthleteStanding(
    string AthleteId, string Group, DayValue Value, double Middle, double? Score, double? ScoreError,
    double? Likely, double? LikelyError, double? Weight, double? ProbabilityBehind, string? Reason)
{
    /// <summary>Value minus middle, in the metric's unit, not turned by direction.</summary>
    public double Difference => Value.Value - Middle;

    /// <summary>Best guess of the true value in the metric's unit: the middle and <see cref="Likely"/>; null when it cannot be stated.</summary>
    public double? LikelyValue { get; private init; }

    /// <summary>
    /// Standard deviation of that guess, √(w e² + (1 − w)² v) with e the error of the value, w its weight and v the variance of the middle. Not that of the
    /// distance from the middle, which holds w² v: a middle that is known badly hardly blurs a value that was measured well.
    /// </summary>
    public double? LikelyValueError { get; private init; }

    /// <summary>Degrees of freedom of the probabilities: the fewer of spread and test error; infinity when both are taken as known.</summary>
    public double DegreesOfFreedom { get; private init; }

    private bool LowerIsBetter { get; init; }

    /// <summary>
    /// Probability that the true value is worse than a target that is fixed, as a coach sets one; null when it cannot be stated. With the middle less the margin as
    /// target it differs from <see cref="ProbabilityBehind"/>, which asks for the distance to a middle that is itself only estimated.
    /// </summary>
    /// <param name="target">The target, in the metric's unit.</param>
    /// <exception cref="ArgumentOutOfRangeException">The target is not a finite number.</exception>
    public double? ProbabilityWorseThan(double target)
    {
        if (!double.IsFinite(target)) throw new ArgumentOutOfRangeException(nameof(target), target, "A target must be a finite number.");
        if (LikelyValue is not { } likely || LikelyValueError is not > 0) return null;
        var missing = LowerIsBetter ? likely - target : target - likely;
        return StudentLaw.Cdf(missing / LikelyValueError.Value, DegreesOfFreedom);
    }

    internal static AthleteStanding Of(
        SquadProfile profile, Metric metric, DayValue value, GroupSummary group, WithinGroupSpread? spread,
        MetricReliability reliability, SmallestWorthwhileChange margin)
    {
        var bare = new AthleteStanding(value.AthleteId, group.Group, value, group.Middle, null, null, null, null, null, null, null);
        if (group.Values.N < profile.MinimumGroup)
            return bare with { Reason = $"only {group.Values.N} of the group did this test, {profile.MinimumGroup} are needed" };
        if (spread is not { StandardDeviation: > 0 })
            return bare with { Reason = spread is null ? "too few athletes did this test to say how much they differ" : "everybody scored the same" };

        var better = metric.Better == Direction.Lower ? -bare.Difference : bare.Difference;
        var error = ErrorOf(value, reliability);
        var scored = bare with { Score = better / spread.StandardDeviation, ScoreError = error / spread.StandardDeviation };
        if (error is null) return scored with { Reason = reliability.Basis };
        if (spread.TrueVariance is not > 0)
            return scored with { Reason = "athletes of a group differ no more than test error explains" };
        if (metric.Better == Direction.Neither) return scored with { Reason = "no direction is better" };
        if (!reliability.HoldsDayToDayVariation)
            return scored with { Reason = "only same-day attempts tell of error here; they leave out day-to-day variation" };

        // Given the middle, the true distance is normal with mean w·d and variance w·e², e² = TE² and the equation's; the middle's own error adds w² times its variance.
        var variance = spread.TrueVariance.Value;
        var weight = variance / (variance + error.Value * error.Value);
        var likely = weight * better;
        var deviation = Math.Sqrt(weight * error.Value * error.Value + Math.Pow(weight * (group.MiddleError ?? 0), 2));
        // Spread and error are estimates: Student's law with the fewer degrees of freedom keeps small squads from sounding too sure.
        var degrees = Math.Min(spread.DegreesOfFreedom, reliability.DegreesOfFreedom);
        return scored with
        {
            Likely = likely,
            LikelyError = deviation,
            LikelyValue = group.Middle + (metric.Better == Direction.Lower ? -likely : likely),
            LikelyValueError = Math.Sqrt(weight * error.Value * error.Value + Math.Pow((1 - weight) * (group.MiddleError ?? 0), 2)),
            DegreesOfFreedom = degrees,
            LowerIsBetter = metric.Better == Direction.Lower,
            Weight = weight,
            ProbabilityBehind = deviation > 0 ? StudentLaw.Cdf((-(margin.Value ?? 0) - likely) / deviation, degrees) : null,
        };
    }

    private static double? ErrorOf(DayValue value, MetricReliability reliability)
        => reliability.ErrorAt(value.Value) is { } error ? Math.Sqrt(error * error + DayValueInterval.EquationVariance(value, reliability)) : null;
}
