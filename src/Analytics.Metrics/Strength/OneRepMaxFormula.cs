using System.Globalization;
using Analytics.Quantities;

namespace Analytics.Metrics.Strength;

/// <summary>One published equation that turns a set to failure into a one-repetition maximum (1RM), as data.</summary>
/// <remarks>See docs/methods/strength.md. The whole family is in <see cref="OneRepMaxFormulas"/>.</remarks>
public sealed record OneRepMaxFormula
{
    /// <summary>Name by which the trade knows it.</summary>
    public required string Name { get; init; }

    /// <summary>The equation in one line; w is the load, r the repetitions.</summary>
    public required string Expression { get; init; }

    /// <summary>Key into docs/references.md.</summary>
    public required string SourceKey { get; init; }

    /// <summary>Who it was made from.</summary>
    public required string Population { get; init; }

    /// <summary>Repetitions it is stated or usually used for; outside of it the result is an extrapolation.</summary>
    public required RepetitionRange ValidRange { get; init; }

    /// <summary>How well equation and coefficients are documented, spellings included.</summary>
    public required string Evidence { get; init; }

    /// <summary>The only lift it may be used for (<see cref="Lifts"/>); null when it is used for any.</summary>
    public string? OnlyLift { get; init; }

    /// <summary>The only load it may be used for; null when it is used for any.</summary>
    public Mass? OnlyLoad { get; init; }

    /// <summary>Whether it says nothing at all outside <see cref="ValidRange"/>, rather than extrapolating.</summary>
    public bool RangeIsStrict { get; init; }

    /// <summary>Repetitions at which the equation breaks down (a zero denominator); infinite when it never does.</summary>
    public double BreaksDownAt { get; init; } = double.PositiveInfinity;

    /// <summary>The equation itself, without checks: load in kg and repetitions to 1RM in kg. Call <see cref="Estimate"/> instead.</summary>
    public required Func<double, double, double> Equation { get; init; }

    /// <summary>Whether the equation has a value for this lift, load and number of repetitions, in range or extrapolated.</summary>
    /// <param name="lift">Lift identifier.</param>
    /// <param name="load">Load lifted.</param>
    /// <param name="repetitions">Repetitions to failure, 1 or more; fractions allowed.</param>
    public bool AppliesTo(string lift, Mass load, double repetitions)
        => (OnlyLift is null || OnlyLift == lift) && Matches(load) && IsDefinedAt(repetitions);

    /// <summary>The 1RM.</summary>
    /// <param name="load">Load lifted, above 0.</param>
    /// <param name="repetitions">Repetitions to failure, 1 or more; fractions allowed. Beyond <see cref="ValidRange"/> the result is an extrapolation.</param>
    /// <exception cref="ArgumentOutOfRangeException">Load or repetitions for which the equation has no meaning.</exception>
    public Mass Estimate(Mass load, double repetitions)
    {
        Require.Positive(load, "The load");
        if (!Matches(load))
            throw new ArgumentOutOfRangeException(nameof(load), load, $"{Name} is made for a load of {OnlyLoad!.Value.ToString("lb|0.#", null)} only; got {load.ToString("lb|0.#", null)}.");
        if (!IsDefinedAt(repetitions))
            throw new ArgumentOutOfRangeException(nameof(repetitions), repetitions, string.Create(CultureInfo.InvariantCulture, $"{Name} is defined for {DefinedFor()}; got {repetitions}."));
        return Mass.FromKilograms(Equation(load.Kilograms, repetitions));
    }

    // Half a pound covers papers and sheets that print 225 lb as 102 or 102.1 kg.
    private bool Matches(Mass load) => OnlyLoad is not { } only || Math.Abs(load.Pounds - only.Pounds) <= 0.5;

    private bool IsDefinedAt(double repetitions)
        => double.IsFinite(repetitions) && repetitions >= 1 && repetitions < BreaksDownAt && (!RangeIsStrict || ValidRange.Contains(repetitions));

    private string DefinedFor() => RangeIsStrict
        ? string.Create(CultureInfo.InvariantCulture, $"sets of {ValidRange.Lowest} to {ValidRange.Highest} repetitions")
        : double.IsFinite(BreaksDownAt)
            ? string.Create(CultureInfo.InvariantCulture, $"1 repetition or more and fewer than {BreaksDownAt:0.###}")
            : "1 repetition or more";
}
