using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Change;

/// <summary>
/// Clear when the change exceeds a fixed multiple of the typical error, the rule of thumb "1.5 to 2 typical errors". Kept so that its price can be
/// printed: 29 % to 16 % of unchanged athletes are flagged even when the typical error is known.
/// </summary>
public sealed record ErrorMultipleRule : VerdictRule
{
    /// <summary>Typical errors a change must exceed, above 0.</summary>
    public required double Multiple
    {
        get;
        init => field = Require.Positive(value, nameof(Multiple));
    }

    /// <summary>Degrees of freedom of the typical error; infinity when known.</summary>
    public required double DegreesOfFreedom
    {
        get;
        init => field = Require.DegreesOfFreedom(value, nameof(DegreesOfFreedom));
    }

    /// <inheritdoc/>
    public override string Statement => FormattableString.Invariant(
        $"Clear gain or loss: the change exceeds {Multiple:0.##} typical errors. Too small to matter: the whole {100 * Level:0.#} % interval lies inside the smallest worthwhile change. Else: cannot tell yet. An unchanged player gets a clear verdict {100 * LargestFalseFlagRate:0.#} % of the time.");

    /// <inheritdoc/>
    public override double LargestFalseFlagRate => FlagRates.ErrorMultiple(Multiple, DegreesOfFreedom);

    /// <inheritdoc/>
    public override double ClearRate(double trueChange, double worthwhile, double degreesOfFreedom)
        => FlagRates.Beyond(trueChange, errorRatio => Multiple * errorRatio / Math.Sqrt(2), degreesOfFreedom);

    /// <inheritdoc/>
    protected override bool IsClear(IndividualChange change, Interval interval, double worthwhile)
    {
        ArgumentNullException.ThrowIfNull(change);
        return Math.Abs(change.Difference) > Multiple / Math.Sqrt(2) * change.StandardError;
    }
}
