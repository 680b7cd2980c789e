using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Change;

/// <summary>
/// Probabilities of the true change lying above, within and below a worthwhile amount, under a flat prior: every change, however
/// large, was as likely as any other before the test. That is a strong assumption; with a prior that expects
/// small changes the same result moves toward "within" (see <see cref="ChangePosterior"/>). Not used for verdicts.
/// </summary>
/// <param name="Above">P(true change &gt; threshold).</param>
/// <param name="Within">P(−threshold ≤ true change ≤ threshold).</param>
/// <param name="Below">P(true change &lt; −threshold).</param>
public sealed record FlatPriorShares(double Above, double Within, double Below) : Result
{
    internal static FlatPriorShares Of(IndividualChange change, double threshold)
    {
        Require.NotNegative(threshold, nameof(threshold));
        var above = StudentLaw.Cdf((change.Difference - threshold) / change.PositiveError, change.DegreesOfFreedom);
        var below = StudentLaw.Cdf((-threshold - change.Difference) / change.PositiveError, change.DegreesOfFreedom);
        return new(above, 1 - above - below, below);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Chances of the true change under a flat prior", "Student's law about the observed change",
        [new("above", 100 * Above, "%"), new("within", 100 * Within, "%"), new("below", 100 * Below, "%")])
    {
        Basis = "one change and its error; prior: flat, every change as likely as any other",
        Remarks = ["Without the flat prior these are one minus one-sided p values and no chances of the true change."],
    };
}
