using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Change;

/// <summary>Clear only when the whole interval lies beyond the smallest worthwhile change: a minimal-effects test. Strict, and slow to speak.</summary>
public sealed record BeyondWorthwhileRule : VerdictRule
{
    /// <inheritdoc/>
    public override string Statement => FormattableString.Invariant(
        $"Clear gain or loss: the whole {100 * Level:0.#} % interval of the change lies beyond the smallest worthwhile change. Too small to matter: it lies inside. Else: cannot tell yet. An unchanged player gets a clear verdict at most {100 * LargestFalseFlagRate:0.#} % of the time, one who changed by just the smallest worthwhile amount at most {100 * (1 - Level) / 2:0.##} % of the time in that direction.");

    /// <inheritdoc/>
    public override double LargestFalseFlagRate => 1 - Level;

    /// <inheritdoc/>
    public override double ClearRate(double trueChange, double worthwhile, double degreesOfFreedom)
    {
        var t = StudentLaw.TwoSided(Level, degreesOfFreedom);
        return FlagRates.Beyond(trueChange, errorRatio => t * errorRatio + worthwhile / Math.Sqrt(2), degreesOfFreedom);
    }

    /// <inheritdoc/>
    protected override bool IsClear(IndividualChange change, Interval interval, double worthwhile)
        => interval.Low > worthwhile || interval.High < -worthwhile;
}
