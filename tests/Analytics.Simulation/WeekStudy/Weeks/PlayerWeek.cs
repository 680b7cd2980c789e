using Analytics.Simulation.WeekStudy.Squads;

namespace Analytics.Simulation.WeekStudy.Weeks;

/// <summary>What is true of a player in one quality, and what the week gives him of it.</summary>
/// <param name="Quality">The quality.</param>
/// <param name="Behind">How far he is truly worse than the median of his group, in SDs within groups.</param>
/// <param name="IsPlanted">Whether that was planted.</param>
/// <param name="Call">What the planner says of it.</param>
/// <param name="OwnSets">Sets of own work that trains it.</param>
/// <param name="AllSets">Sets that train it, shared part and own work.</param>
public sealed record QualityWeek(StudiedQuality Quality, double Behind, bool IsPlanted, Call Call, int OwnSets, int AllSets)
{
    /// <summary>Whether the planner called a need.</summary>
    public bool IsNeed => Call == Call.Need;

    /// <summary>A true deficit as drawn: worse than the median of the group by more than one SD.</summary>
    public bool IsDeficit => Behind > 1;

    /// <summary>Truly at the median of the group or better.</summary>
    public bool IsWithout => Behind <= 0;
}

/// <summary>One player's week.</summary>
/// <param name="Index">Index of the player.</param>
/// <param name="Group">Position group.</param>
/// <param name="IsApart">Whether he trains apart because of a restriction or a day he is out.</param>
/// <param name="Qualities">One for each of <see cref="StudiedQuality.All"/>.</param>
/// <param name="Work">All he does, item by item; the same text is the same week.</param>
/// <param name="HasCall">Whether any need of his was called, of a studied quality or not.</param>
/// <param name="HasOwnForNeed">Whether any own work of his is listed as for a need.</param>
/// <param name="IsUntestedOpen">Whether the planner says of each quality without a test that it cannot say, without a need.</param>
public sealed record PlayerWeek(
    int Index, string Group, bool IsApart, IReadOnlyList<QualityWeek> Qualities, string Work, bool HasCall, bool HasOwnForNeed, bool IsUntestedOpen);
