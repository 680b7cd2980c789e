using Analytics.Metrics.Sketching;
using Analytics.Simulation.BenchStudy.Squads;

namespace Analytics.Simulation.BenchStudy.Cases;

/// <summary>What is true of a sketch.</summary>
public enum TruthKind
{
    /// <summary>Noise: nothing of a value returns.</summary>
    Noise,

    /// <summary>Noise times body mass: what returns is body mass.</summary>
    NoiseTimesMass,

    /// <summary>A library metric in another unit or on another scale.</summary>
    Copy,

    /// <summary>Made of two library metrics.</summary>
    Blend,

    /// <summary>Rests on a lasting trait of the player that no library metric holds, or not all of it.</summary>
    New,

    /// <summary>Tells linemen from the others and is noise within a group.</summary>
    BetweenGroups,
}

/// <summary>A sketch with known truth.</summary>
/// <param name="Name">In words.</param>
/// <param name="Kind">What is true of it.</param>
/// <param name="Sketch">The sketch in a generated squad.</param>
public sealed record BenchCase(string Name, TruthKind Kind, Func<BenchSeason, MetricSketch> Sketch)
{
    /// <summary>Whether it is one of those a rate is required of.</summary>
    public bool IsRequired { get; init; }

    /// <summary>Whether it is looked at in squads of every shape.</summary>
    public bool InEverySquad { get; init; }

    /// <summary>True share of its lasting differences within groups that is in no library metric; null where that is not known by algebra.</summary>
    public double? OwnShare { get; init; }

    /// <summary>True ICC in a squad, by the athletes who repeated it; null where that is not known by algebra.</summary>
    public Func<BenchSeason, IReadOnlyCollection<string>, double>? Icc { get; init; }
}
