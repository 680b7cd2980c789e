using Analytics.Planning.Exercises;
using Analytics.Planning.People;
using Analytics.Planning.Rooms;
using Analytics.Planning.Rules;
using Analytics.Planning.Schemes;
using Analytics.Planning.Weeks;

namespace Analytics.Planning.Plans;

/// <summary>Everything a week is planned from.</summary>
public sealed record PlanProblem
{
    /// <summary>First day, a Monday.</summary>
    public required DateOnly Monday { get; init; }

    /// <summary>Sessions of the week.</summary>
    public required IReadOnlyList<SessionSlot> Sessions { get; init; }

    /// <summary>Games of the week and of the days around it.</summary>
    public IReadOnlyList<Game> Games { get; init; } = [];

    /// <summary>Players who train; those who are out are left away.</summary>
    public required IReadOnlyList<PlanPlayer> Players { get; init; }

    /// <summary>Exercises.</summary>
    public required ExerciseCatalogue Exercises { get; init; }

    /// <summary>Set schemes.</summary>
    public required IReadOnlyList<SetScheme> Schemes { get; init; }

    /// <summary>Kinds of training day.</summary>
    public required IReadOnlyList<DayKind> Kinds { get; init; }

    /// <summary>Rooms.</summary>
    public IReadOnlyList<Room> Rooms { get; init; } = [];

    /// <summary>Rules.</summary>
    public PlanRules Rules { get; init; } = PlanRules.Standard;

    /// <summary>Sessions of the days around the week; they tell when what was planned for those days begins.</summary>
    public IReadOnlyList<SessionSlot> SessionsAround { get; init; } = [];

    /// <summary>
    /// Earlier plan and choices of the coach for this week, and what is planned for the weeks before and after: rest is counted from it, and the week before is not
    /// repeated for nothing.
    /// </summary>
    public IReadOnlyList<EarlierChoice> Earlier { get; init; } = [];
}
