using Analytics.Quantities;

namespace Analytics.Metrics.Contact;

/// <summary>
/// Body mass times mean speed over a split, as rugby league and union report it over 0–10 m or a flying 10 m. It is less than the momentum at the end of the split, which <see cref="ApproachModel"/> gives.
/// Sources: [baker2008]; initial and maximal sprint momentum [barr2014].
/// </summary>
public static class SprintMomentum
{
    /// <summary>m·d/t.</summary>
    /// <param name="bodyMass">m, above 0.</param>
    /// <param name="distance">d, length of the split, above 0.</param>
    /// <param name="time">t, time of the split, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure of 0 or less.</exception>
    public static Momentum Of(Mass bodyMass, Length distance, Duration time)
        => Require.Positive(bodyMass, "body mass") * (Require.Positive(distance, "length of the split") / Require.Positive(time, "time of the split"));
}
