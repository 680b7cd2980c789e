using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Change;

/// <summary>P values of the plain tests one may put to a change; "not decided" is an answer of each.</summary>
/// <param name="NoChange">Two-sided, of "no true change".</param>
/// <param name="NotAbove">One-sided, of "true change at most the threshold" (minimal-effects test upward).</param>
/// <param name="NotBelow">One-sided, of "true change at least minus the threshold" (minimal-effects test downward).</param>
/// <param name="NotWithin">Of "true change beyond the threshold on one side": the larger of two one-sided tests (equivalence, TOST [schuirmann1987]).</param>
public sealed record ChangeTests(double NoChange, double NotAbove, double NotBelow, double NotWithin) : Result
{
    /// <summary>One-sided, of "true change at most minus the threshold": rejected, the athlete has not fallen by a worthwhile amount (non-inferiority).</summary>
    public double Inferior => 1 - NotBelow;

    /// <summary>One-sided, of "true change at least the threshold": rejected, the athlete has not gained a worthwhile amount.</summary>
    public double Superior => 1 - NotAbove;

    /// <summary>Tests a change against a threshold.</summary>
    /// <param name="change">The change.</param>
    /// <param name="threshold">Smallest worthwhile change, 0 or more.</param>
    public static ChangeTests Of(IndividualChange change, double threshold)
    {
        ArgumentNullException.ThrowIfNull(change);
        Require.NotNegative(threshold, nameof(threshold));
        double P(double t) => StudentLaw.Cdf(t / change.PositiveError, change.DegreesOfFreedom);
        return new(
            2 * P(-Math.Abs(change.Difference)),
            P(threshold - change.Difference),
            P(threshold + change.Difference),
            Math.Max(P(change.Difference - threshold), P(-threshold - change.Difference)));
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Tests of one change", "Student's t against zero and against the smallest worthwhile change",
        [
            new("no change", NoChange) { Note = "small: the athlete changed" },
            new("at most +worthwhile", NotAbove) { Note = "small: gained more than the worthwhile amount" },
            new("at least −worthwhile", NotBelow) { Note = "small: lost more than the worthwhile amount" },
            new("lost the worthwhile amount", Inferior) { Note = "small: did not lose that much" },
            new("gained the worthwhile amount", Superior) { Note = "small: did not gain that much" },
            new("beyond ±worthwhile", NotWithin) { Note = "small: changed less than the worthwhile amount" },
        ])
    {
        Basis = "p values of one change and its error",
        Remarks = ["Choose the question before the test and one level for it; a large p decides nothing."],
    };
}
