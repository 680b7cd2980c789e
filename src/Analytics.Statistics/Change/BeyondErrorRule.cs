using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Change;

/// <summary>
/// Clear when the interval of the change leaves out 0 and the change itself exceeds the smallest worthwhile change.
/// Both are asked: the first guards against test error, the second against a real change too small to care about.
/// </summary>
public sealed record BeyondErrorRule : VerdictRule
{
    /// <summary>The rule of the reports, at 95 %.</summary>
    public static BeyondErrorRule Standard { get; } = new() { Level = 0.95 };

    /// <inheritdoc/>
    public override string Statement => FormattableString.Invariant(
        $"Clear gain or loss: the {100 * Level:0.#} % interval of the change leaves out 0 and the change is larger than the smallest worthwhile change. Too small to matter: the whole interval lies inside it. Else: cannot tell yet. An unchanged player gets a clear verdict at most {100 * LargestFalseFlagRate:0.#} % of the time.");

    /// <inheritdoc/>
    public override double LargestFalseFlagRate => 1 - Level;

    /// <inheritdoc/>
    public override double ClearRate(double trueChange, double worthwhile, double degreesOfFreedom)
    {
        var t = StudentLaw.TwoSided(Level, degreesOfFreedom);
        return FlagRates.Beyond(trueChange, errorRatio => Math.Max(t * errorRatio, worthwhile / Math.Sqrt(2)), degreesOfFreedom);
    }

    /// <inheritdoc/>
    protected override bool IsClear(IndividualChange change, Interval interval, double worthwhile)
        => (interval.Low > 0 || interval.High < 0) && Math.Abs(change.Difference) > worthwhile;
}
