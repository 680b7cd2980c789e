using Analytics.Planning.Exercises;
using Analytics.Planning.Schemes;
using Analytics.Quantities;

namespace Analytics.Planning.Plans;

/// <summary>An exercise with its set scheme, as planned.</summary>
/// <param name="Exercise">The exercise.</param>
/// <param name="Scheme">Sets, repetitions, load, rest.</param>
/// <param name="Partner">The reactive movement of a contrast pair; null otherwise.</param>
/// <param name="Time">Time it takes: warm-up sets, sets, rests; without changing to it.</param>
/// <param name="IsKept">Whether the coach had fixed it.</param>
public sealed record PlannedItem(Exercise Exercise, SetScheme Scheme, Exercise? Partner, Duration Time, bool IsKept)
{
    /// <summary>Ground contacts a player makes in it.</summary>
    public int Contacts => Dose.DoseCount.Contacts(Exercise, Scheme, Partner);
}

/// <summary>Own work: what players do instead of standing about while others do theirs.</summary>
/// <param name="Quality">Quality it serves.</param>
/// <param name="Item">Exercise and scheme.</param>
/// <param name="ForNeed">Players who do it because a need of theirs is served.</param>
/// <param name="ByDefault">Players who do it as their group's balanced default.</param>
public sealed record OwnWork(TrainedQuality Quality, PlannedItem Item, IReadOnlyList<string> ForNeed, IReadOnlyList<string> ByDefault);
