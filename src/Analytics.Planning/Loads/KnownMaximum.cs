using Analytics.Statistics;

namespace Analytics.Planning.Loads;

/// <summary>What is known of a player's 1RM in one lift.</summary>
/// <param name="Lift">Identifier of the lift.</param>
/// <param name="Kilograms">Measured or estimated 1RM.</param>
/// <param name="Range">Where the usual 1RM lies, 95 %, in kg; null when no error is known.</param>
/// <param name="Date">Day of the test.</param>
/// <param name="HowMade">"measured" or "estimated from 5 repetitions".</param>
/// <param name="Doubt">Why it is doubtful; null when it is not.</param>
/// <param name="HeaviestKilograms">Heaviest load of the lift in any test read, up to today.</param>
/// <param name="HurtSince">First day of an injury after the test that is over; null when there was none.</param>
public sealed record KnownMaximum(
    string Lift, double Kilograms, Interval? Range, DateOnly Date, string HowMade, string? Doubt, double HeaviestKilograms, DateOnly? HurtSince);
