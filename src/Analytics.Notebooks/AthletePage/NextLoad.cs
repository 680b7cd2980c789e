using Analytics.Planning.Loads;

namespace Analytics.Notebooks.AthletePage;

/// <summary>A load of a scheme.</summary>
/// <param name="Scheme">Sets, repetitions, per cent.</param>
/// <param name="Load">In the unit of the bar, rounded down to its step; 0 when it is below one step.</param>
/// <param name="IsAboveTested">Whether it is more than was ever lifted in a test.</param>
/// <param name="IsCapped">Whether it was brought down to the heaviest load lifted.</param>
internal sealed record PlannedSet(LoadScheme Scheme, double Load, bool IsAboveTested, bool IsCapped);

/// <summary>The next loads of one lift, or why there are none.</summary>
/// <param name="Test">The test behind them.</param>
/// <param name="Sets">A lighter and a heavier scheme; none when <paramref name="TestFirst"/> speaks.</param>
/// <param name="BaseKilograms">What the per cent are of.</param>
/// <param name="IsLowerSide">Whether that is the lower side of the range.</param>
/// <param name="Reasons">Why the lower side; empty when it is not.</param>
/// <param name="TestFirst">Why there are no loads; null when there are.</param>
internal sealed record NextLoad(
    KnownMaximum Test, IReadOnlyList<PlannedSet> Sets, double BaseKilograms, bool IsLowerSide, IReadOnlyList<string> Reasons, string? TestFirst);
