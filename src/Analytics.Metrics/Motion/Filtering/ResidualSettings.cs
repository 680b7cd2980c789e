using System.Globalization;
using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>Cut-offs a residual analysis tries, and where the straight tail is taken to begin.</summary>
public sealed record ResidualSettings
{
    /// <summary>Makes settings.</summary>
    /// <param name="lowest">Lowest cut-off, above 0.</param>
    /// <param name="step">Step between cut-offs, above 0.</param>
    /// <param name="count">Cut-offs, 5 or more.</param>
    /// <param name="tailFrom">The tail is all cut-offs from here; at least 3.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges.</exception>
    public ResidualSettings(Frequency lowest, Frequency step, int count, Frequency tailFrom)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 5);
        (double from, double by) = (Require.Positive(lowest, "lowest cut-off").Hertz, Require.Positive(step, "step").Hertz);
        Cutoffs = [.. Enumerable.Range(0, count).Select(i => Frequency.FromHertz(from + (i * by)))];
        TailFrom = tailFrom;
        TailStart = Cutoffs.Count(c => c < tailFrom);
        if (count - TailStart < 3 || TailStart == 0)
            throw new ArgumentOutOfRangeException(nameof(tailFrom), tailFrom, string.Create(CultureInfo.InvariantCulture,
                $"the tail must leave out at least the lowest cut-off and hold at least 3; cut-offs run from {Cutoffs[0]} to {Cutoffs[^1]}, got a tail from {tailFrom}."));
    }

    /// <summary>1 to 20 Hz by 1 Hz, tail from 12 Hz: for walking and for the trunk.</summary>
    public static ResidualSettings Slow { get; } = new(Frequency.FromHertz(1), Frequency.FromHertz(1), 20, Frequency.FromHertz(12));

    /// <summary>2 to 40 Hz by 2 Hz, tail from 24 Hz: for sprinting limbs, whose movement reaches higher. Our choice, no source.</summary>
    public static ResidualSettings Sprint { get; } = new(Frequency.FromHertz(2), Frequency.FromHertz(2), 20, Frequency.FromHertz(24));

    /// <summary>Cut-offs tried, rising.</summary>
    public IReadOnlyList<Frequency> Cutoffs { get; }

    /// <summary>Where the tail begins.</summary>
    public Frequency TailFrom { get; }

    internal int TailStart { get; }
}
