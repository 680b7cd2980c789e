namespace Analytics.Metrics.Strength;

/// <summary>Repetitions a formula was made or is usually used for, both ends included.</summary>
/// <param name="Lowest">Fewest repetitions.</param>
/// <param name="Highest">Most repetitions.</param>
public readonly record struct RepetitionRange(double Lowest, double Highest)
{
    /// <summary>Whether the repetitions lie inside, ends included.</summary>
    /// <param name="repetitions">Repetitions, fractions allowed.</param>
    public bool Contains(double repetitions) => repetitions >= Lowest && repetitions <= Highest;
}
