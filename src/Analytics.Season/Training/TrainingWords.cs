using Analytics.Planning.Exercises;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Schemes;
using Analytics.Planning.Weeks;
using Analytics.Season.Cells;

namespace Analytics.Season.Training;

/// <summary>Words of the folder <c>training</c> and what they mean.</summary>
internal static class TrainingWords
{
    /// <summary>What stands for all exercises in a restriction.</summary>
    public const string Everything = "everything";

    public static readonly WordSet<MovementPattern> Patterns = new("pattern", [.. MovementPatterns.All.Select(p => (p.Id(), p))]);

    public static readonly WordSet<TrainedQuality> Qualities = new("quality", [.. TrainedQualities.All.Select(q => (q.Id(), q))]);

    public static readonly WordSet<BodyHalf> Halves = new("half", ("lower", BodyHalf.Lower), ("upper", BodyHalf.Upper), ("any", BodyHalf.Any));

    public static readonly WordSet<Impact> Impacts = new("impact", ("none", Impact.None), ("low", Impact.Low), ("middle", Impact.Middle), ("high", Impact.High));

    public static readonly WordSet<SchemeKind> Schemes = new("kind",
        ("straight", SchemeKind.Straight), ("cluster", SchemeKind.Cluster), ("on_the_minute", SchemeKind.OnTheMinute), ("ramp", SchemeKind.Ramp), ("contrast", SchemeKind.Contrast));

    public static readonly WordSet<SeasonPhase> Phases = new("phase",
        ("off_season", SeasonPhase.OffSeason), ("pre_season", SeasonPhase.PreSeason), ("in_season", SeasonPhase.InSeason));

    public static readonly WordSet<DayOfWeek> Weekdays = new("weekday", [.. Enumerable.Range(1, 7).Select(d => (DayOfWeek)(d % 7)).Select(d => (d.ToString().ToLowerInvariant(), d))]);

    public static readonly WordSet<RuleHandling> Handlings = new("handling", ("refuse", RuleHandling.Refuse), ("flag", RuleHandling.Flag), ("off", RuleHandling.Off));

    /// <summary>Whether it is own work.</summary>
    public static readonly WordSet<bool> Parts = new("part", ("shared", false), ("own", true));

    public static readonly WordSet<ChoiceForce> Forces = new("keep", ("planned", ChoiceForce.Planned), ("keep", ChoiceForce.Keep), ("never", ChoiceForce.Never));
}
