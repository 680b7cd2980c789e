namespace Analytics.Statistics;

/// <summary>An interval with its nominal coverage.</summary>
/// <param name="Low">Lower limit.</param>
/// <param name="High">Upper limit.</param>
/// <param name="Level">Nominal coverage, between 0 and 1.</param>
public readonly record struct Interval(double Low, double High, double Level = 0.95)
{
    /// <summary>Whether the value lies inside, limits included.</summary>
    /// <param name="value">The value to place.</param>
    public bool Contains(double value) => value >= Low && value <= High;

    /// <summary>The interval multiplied by a positive factor (a change of unit).</summary>
    /// <param name="factor">A positive, finite factor.</param>
    public Interval Times(double factor) => this with { Low = Low * Require.AnyPositive(factor, nameof(factor)), High = High * factor };
}
