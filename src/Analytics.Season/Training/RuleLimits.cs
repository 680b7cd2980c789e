using Analytics.Planning.Rules;

namespace Analytics.Season.Training;

/// <summary>How far the figure of a rule may be changed, and whether planning can do without the rule. Limits are meant to catch slips; common practice, no source.</summary>
/// <param name="Low">Lowest figure.</param>
/// <param name="High">Highest figure.</param>
/// <param name="Fixed">Why it must be refused where it is not kept, and what to do instead; empty where it may be flagged or switched off.</param>
/// <param name="NeverOff">Why it cannot be switched off, though it may be flagged; empty where it can.</param>
internal sealed record RuleLimits(double Low, double High, string Fixed = "", string NeverOff = "")
{
    private const string Figure = "it is a figure that other rules and the times of a session are worked out with, so there is nothing to flag or to switch off|Change its value instead.";

    private static readonly Dictionary<string, RuleLimits> ById = new(StringComparer.Ordinal)
    {
        [RuleIds.HeavyPercent] = new(50, 100, Figure),
        [RuleIds.HeavyLowerGap] = new(1, 168),
        [RuleIds.GameGap] = new(1, 168),
        [RuleIds.HighImpactGap] = new(1, 168),
        [RuleIds.ZoneRepetitions] = new(0, 0),
        [RuleIds.JumpContacts] = new(1, 200),
        [RuleIds.HeavyPlayer] = new(50, 250, Figure),
        [RuleIds.HeavyPlayerContacts] = new(1, 100, "it is a figure that jump_contacts is worked out with, so there is nothing to flag or to switch off|Write 100 as its value where heavy players jump as much as others."),
        [RuleIds.HardSets] = new(1, 100),
        [RuleIds.SessionMinutes] = new(0, 0, NeverOff: "a session without an end would hold everything|Write flag where it may run over, or change the minutes of the calendar."),
        [RuleIds.WarmUpMinutes] = new(1, 60, Figure),
        [RuleIds.ChangeMinutes] = new(0.1, 15, Figure),
        [RuleIds.PlayersPerPlace] = new(1, 10, Figure),
        [RuleIds.StationPlaces] = new(0, 0),
        [RuleIds.DayDemands] = new(0, 0, NeverOff: "without it no day asks for anything|Write flag where a day may fall short, or change day-kinds.csv."),
        [RuleIds.Restrictions] = new(0, 0, "what players may not do is said by medical staff, and no plan may break it|Change restrictions.csv, with those who said it."),
        [RuleIds.Prerequisites] = new(0, 0),
        [RuleIds.Kept] = new(0, 0),
        [RuleIds.ExerciseTimes] = new(1, 14),
        [RuleIds.PatternTimes] = new(1, 10),
        [RuleIds.SessionOrder] = new(0, 0),
        [RuleIds.NeedProbability] = new(50, 99.9, Figure),
        [RuleIds.TestOldAfter] = new(1, 730, Figure),
        [RuleIds.TestExpiresAfter] = new(1, 1095, Figure),
        [RuleIds.ProgressStep] = new(0.1, 10),
        [RuleIds.BackOffStep] = new(0.1, 50),
        [RuleIds.ProgressRating] = new(0, 10),
        [RuleIds.ReadingsNeeded] = new(2, 10, Figure),
        [RuleIds.FeedbackDays] = new(1, 365, Figure),
    };

    /// <summary>The limits of a rule; a test asks that every rule has some.</summary>
    public static RuleLimits Of(string id) => ById[id];
}
