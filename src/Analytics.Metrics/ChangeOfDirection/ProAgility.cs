using Analytics.Quantities;

namespace Analytics.Metrics.ChangeOfDirection;

/// <summary>Pro-agility (5-10-5): 5 yd one way, 10 yd back past the middle, 5 yd to the finish, two half turns, one on each side. Say whether the clock starts at first movement or at a beam. Source of the test: [sierer2008].</summary>
public static class ProAgility
{
    /// <summary>20 yd.</summary>
    public static Length Distance { get; } = Length.FromYards(20);

    /// <summary>Distance over time.</summary>
    /// <param name="time">Time of the run, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A time of 0 or less.</exception>
    public static Speed MeanSpeed(Duration time) => Distance / Require.Positive(time, "time of the run");
}
