using Analytics.Quantities;
using Analytics.Statistics.Results;

namespace Analytics.Metrics.Load;

/// <summary>Volume-load of all lifts written down, and of each. Lifts of the own body count with their added load only.</summary>
public sealed record VolumeLoad : Result
{
    private VolumeLoad()
    {
    }

    /// <summary>Each lift, by identifier.</summary>
    public required IReadOnlyList<LiftVolume> Lifts { get; init; }

    /// <summary>Sum over the lifts. A kilogram squatted and a kilogram pressed are added as they are.</summary>
    public Mass Total => Mass.FromKilograms(Lifts.Sum(l => l.VolumeLoad.Kilograms));

    /// <summary>Sets of all lifts.</summary>
    public int Sets => Lifts.Sum(l => l.Sets);

    /// <summary>Repetitions of all lifts.</summary>
    public int Repetitions => Lifts.Sum(l => l.Repetitions);

    /// <summary>The lift; null when nothing of it was written down.</summary>
    /// <param name="lift">Identifier of the lift.</param>
    public LiftVolume? Of(string lift) => Lifts.FirstOrDefault(l => l.Lift == lift);

    /// <summary>Sums sets up.</summary>
    /// <param name="exercises">The sets, in any order.</param>
    public static VolumeLoad Of(IEnumerable<ExerciseSets> exercises)
    {
        ArgumentNullException.ThrowIfNull(exercises);
        return new()
        {
            Lifts = [.. exercises.GroupBy(e => e.Lift, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal).Select(g => new LiftVolume(
                g.Key, g.Sum(e => e.Sets), g.Sum(e => e.Sets * e.Repetitions), Mass.FromKilograms(g.Sum(e => e.Sets * e.Repetitions * e.Load.Kilograms))))],
        };
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Volume-load", "Σ sets × repetitions × load",
        [new("all lifts", Total.Kilograms, "kg"), .. Lifts.Select(l => new ResultLine(l.Lift, l.VolumeLoad.Kilograms, "kg") { Note = $"{l.Sets} sets, {l.Repetitions} repetitions" })])
    {
        Basis = $"{Sets} sets, {Repetitions} repetitions as written down, no error known",
        Remarks = Lifts.Any(l => l.VolumeLoad.Kilograms == 0) ? ["Lifts of the own body without added load count 0 kg here."] : [],
    };
}
