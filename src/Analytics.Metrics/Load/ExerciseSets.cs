using Analytics.Quantities;

namespace Analytics.Metrics.Load;

/// <summary>Sets of one lift at one load in a training session: 5 sets of 5 at 140 kg.</summary>
public sealed record ExerciseSets
{
    /// <summary>Sets of one lift at one load.</summary>
    /// <param name="lift">Identifier of the lift, not empty.</param>
    /// <param name="sets">Sets, 1 or more.</param>
    /// <param name="repetitions">Repetitions in each set, 1 or more.</param>
    /// <param name="load">Load, bar included; for lifts of the own body the added load, 0 for none.</param>
    /// <exception cref="ArgumentException">No lift, or sets or repetitions below 1.</exception>
    public ExerciseSets(string lift, int sets, int repetitions, Mass load)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(lift);
        ArgumentOutOfRangeException.ThrowIfLessThan(sets, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(repetitions, 1);
        (Lift, Sets, Repetitions, Load) = (lift, sets, repetitions, load);
    }

    /// <summary>Identifier of the lift.</summary>
    public string Lift { get; }

    /// <summary>Sets.</summary>
    public int Sets { get; }

    /// <summary>Repetitions in each set.</summary>
    public int Repetitions { get; }

    /// <summary>Load, bar included.</summary>
    public Mass Load { get; }
}
