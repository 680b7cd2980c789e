using Analytics.Quantities;

namespace Analytics.Planning.Loads;

/// <summary>A set of the warm-up ramp.</summary>
/// <param name="Repetitions">Repetitions.</param>
/// <param name="Load">Load, bar included.</param>
public sealed record RampSet(int Repetitions, Mass Load);

/// <summary>What one player puts on for one exercise.</summary>
public sealed record Prescription
{
    /// <summary>Load of each working set, in order, bar included; empty where there is none to give.</summary>
    public IReadOnlyList<Mass> Working { get; init; } = [];

    /// <summary>Warm-up sets before them, lightest first.</summary>
    public IReadOnlyList<RampSet> WarmUp { get; init; } = [];

    /// <summary>Height of hurdle or box; null where none is meant.</summary>
    public Length? Height { get; init; }

    /// <summary>What is said instead of a load: "test first: ..."; null where there is a load, or none is needed.</summary>
    public string? Instead { get; init; }

    /// <summary>1RM the per cent are of, kg; null where they are of body mass or of nothing.</summary>
    public double? BaseKilograms { get; init; }

    /// <summary>Whether that is the lower side of the range.</summary>
    public bool IsLowerSide { get; init; }

    /// <summary>Whether a load is more than was ever lifted in a test.</summary>
    public bool IsAboveTested { get; init; }

    /// <summary>Notes that travel with it, in words.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];
}
