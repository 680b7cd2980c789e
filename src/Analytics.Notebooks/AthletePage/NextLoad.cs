using Analytics.Statistics;

namespace Analytics.Notebooks.AthletePage;

/// <summary>What is known of a player's 1RM in one lift.</summary>
/// <param name="Lift">Identifier of the lift.</param>
/// <param name="Kilograms">Measured or estimated 1RM.</param>
/// <param name="Range">Where the usual 1RM lies, 95 %, in kg; null when no error is known.</param>
/// <param name="Date">Day of the test.</param>
/// <param name="HowMade">"measured" or "estimated from 5 repetitions".</param>
/// <param name="Doubt">Why it is doubtful; null when it is not.</param>
/// <param name="HeaviestKilograms">Heaviest load of the lift in any test read, up to the day of the page.</param>
/// <param name="HurtSince">First day of an injury after the test that is over; null when there was none.</param>
internal sealed record LiftTest(
    string Lift, double Kilograms, Interval? Range, DateOnly Date, string HowMade, string? Doubt, double HeaviestKilograms, DateOnly? HurtSince);

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
    LiftTest Test, IReadOnlyList<PlannedSet> Sets, double BaseKilograms, bool IsLowerSide, IReadOnlyList<string> Reasons, string? TestFirst);
