using Analytics.Planning.Exercises;
using Analytics.Planning.Needs;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rooms;
using Analytics.Planning.Rules;
using Analytics.Planning.Schemes;
using Analytics.Planning.Weeks;

namespace Analytics.Planning;

/// <summary>Everything the folder <c>training</c> of a season says; what it does not say comes from the shipped files.</summary>
public sealed record TrainingSettings
{
    /// <summary>Exercises.</summary>
    public required ExerciseCatalogue Exercises { get; init; }

    /// <summary>Set schemes, in file order.</summary>
    public required IReadOnlyList<SetScheme> Schemes { get; init; }

    /// <summary>Kinds of training day.</summary>
    public required IReadOnlyList<DayKind> Kinds { get; init; }

    /// <summary>Usual weeks, one a phase.</summary>
    public required IReadOnlyList<WeekShape> Shapes { get; init; }

    /// <summary>Rules.</summary>
    public PlanRules Rules { get; init; } = PlanRules.Standard;

    /// <summary>Sessions of the calendar, by date.</summary>
    public IReadOnlyList<SessionSlot> Sessions { get; init; } = [];

    /// <summary>Games of the calendar, by date.</summary>
    public IReadOnlyList<Game> Games { get; init; } = [];

    /// <summary>Rooms.</summary>
    public IReadOnlyList<Room> Rooms { get; init; } = [];

    /// <summary>Bars, plates and other weights.</summary>
    public WeightStock Weights { get; init; } = new();

    /// <summary>What players may not do.</summary>
    public IReadOnlyList<Restriction> Restrictions { get; init; } = [];

    /// <summary>Targets of the coach, one a group and metric, in file order.</summary>
    public IReadOnlyList<GroupTarget> Targets { get; init; } = [];

    /// <summary>Earlier plans and choices of the coach.</summary>
    public IReadOnlyList<EarlierChoice> Earlier { get; init; } = [];

    /// <summary>Whether each file came from the season's folder; the others are the shipped ones.</summary>
    public IReadOnlyList<string> OwnFiles { get; init; } = [];
}
