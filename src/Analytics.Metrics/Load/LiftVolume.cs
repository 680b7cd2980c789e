using Analytics.Quantities;

namespace Analytics.Metrics.Load;

/// <summary>Volume-load of one lift: Σ sets × repetitions × load.</summary>
/// <param name="Lift">Identifier of the lift.</param>
/// <param name="Sets">Sets.</param>
/// <param name="Repetitions">Repetitions over all sets.</param>
/// <param name="VolumeLoad">The sum, as a mass lifted over and over.</param>
public sealed record LiftVolume(string Lift, int Sets, int Repetitions, Mass VolumeLoad)
{
    /// <summary>Mean load of a repetition.</summary>
    public Mass MeanLoad => VolumeLoad / Repetitions;

    /// <summary>Volume-load over the one-repetition maximum: how many maxima were lifted in sum. Comparable between strong and less strong athletes.</summary>
    /// <param name="oneRepMax">One-repetition maximum of this lift, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A maximum of 0.</exception>
    public double RelativeTo(Mass oneRepMax) => VolumeLoad / Require.Positive(oneRepMax, "The one-repetition maximum");

    /// <summary>Average intensity in %: mean load of a repetition over the one-repetition maximum.</summary>
    /// <param name="oneRepMax">One-repetition maximum of this lift, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A maximum of 0.</exception>
    public double AverageIntensityPercent(Mass oneRepMax) => 100 * RelativeTo(oneRepMax) / Repetitions;
}
