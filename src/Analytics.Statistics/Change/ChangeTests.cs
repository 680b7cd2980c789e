using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Change;

/// <summary>P values of the plain tests one may put to a change.</summary>
/// <param name="NoChange">Two-sided, of "no true change".</param>
/// <param name="NotAbove">One-sided, of "true change at most the threshold" (minimal-effects test upward).</param>
/// <param name="NotBelow">One-sided, of "true change at least minus the threshold" (minimal-effects test downward).</param>
/// <param name="NotWithin">Of "true change beyond the threshold on one side": the larger of two one-sided tests (equivalence).</param>
public sealed record ChangeTests(double NoChange, double NotAbove, double NotBelow, double NotWithin)
{
    /// <summary>Tests a change against a threshold.</summary>
    /// <param name="change">The change.</param>
    /// <param name="threshold">Smallest worthwhile change, 0 or more.</param>
    public static ChangeTests Of(IndividualChange change, double threshold)
    {
        ArgumentNullException.ThrowIfNull(change);
        Require.NotNegative(threshold, nameof(threshold));
        double P(double t) => StudentLaw.Cdf(t / change.StandardError, change.DegreesOfFreedom);
        return new(
            2 * P(-Math.Abs(change.Difference)),
            P(threshold - change.Difference),
            P(threshold + change.Difference),
            Math.Max(P(change.Difference - threshold), P(-threshold - change.Difference)));
    }
}
