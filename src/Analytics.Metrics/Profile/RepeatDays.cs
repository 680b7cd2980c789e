using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Profile;

/// <summary>Testing days so close together that nobody truly changed between them. They give the between-day error of a test.</summary>
/// <remarks>Days that belong together go into one object; two objects must not share a day, since their errors would be counted twice.</remarks>
/// <param name="Occasions">Two or more testing days, in the order they were held.</param>
public sealed record RepeatDays(IReadOnlyList<IReadOnlyList<AthleteDay>> Occasions)
{
    /// <summary>A test day and its retest.</summary>
    /// <param name="first">The test.</param>
    /// <param name="second">The retest.</param>
    public static RepeatDays Pair(IReadOnlyList<AthleteDay> first, IReadOnlyList<AthleteDay> second) => new([first, second]);
}
