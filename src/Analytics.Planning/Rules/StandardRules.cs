using Analytics.Planning.Schemes;

namespace Analytics.Planning.Rules;

/// <summary>The rules that come with the library. A coach changes figures and handling in <c>rules.csv</c>.</summary>
internal static class StandardRules
{
    private const string Practice = SetScheme.CommonPractice;
    private const string Textbook = "baechle2008";

    public static IReadOnlyList<PlanRule> All { get; } =
    [
        new(RuleIds.HeavyPercent, "a set is heavy from this share of the 1RM", 80, "%", RuleHandling.Refuse, Practice),
        new(RuleIds.HeavyLowerGap, "hours between two sessions with heavy lower-body work", 48, "h", RuleHandling.Refuse, Textbook),
        new(RuleIds.GameGap, "hours before and after a game without heavy work", 48, "h", RuleHandling.Refuse, Textbook),
        new(RuleIds.HighImpactGap, "hours between two sessions with jumps of high impact", 48, "h", RuleHandling.Refuse, Textbook),
        new(RuleIds.ZoneRepetitions, "repetitions of a weightlifting movement in a session, by zone of intensity", null, "", RuleHandling.Refuse, "hristov2005"),
        new(RuleIds.JumpContacts, "ground contacts of a session, share of the guide for the player's experience", 100, "%", RuleHandling.Refuse, Textbook),
        new(RuleIds.HeavyPlayer, "body mass above which a player counts as heavy in jumps", 100, "kg", RuleHandling.Refuse, Textbook),
        new(RuleIds.HeavyPlayerContacts, "share of the ground contacts a heavy player does", 75, "%", RuleHandling.Refuse, Practice),
        new(RuleIds.HardSets, "hard sets of one pattern in a week", 12, "sets", RuleHandling.Refuse, Practice),
        new(RuleIds.SessionMinutes, "the session ends in the minutes of the calendar", null, "", RuleHandling.Refuse, Practice),
        new(RuleIds.WarmUpMinutes, "minutes of warm-up inside the session", 10, "min", RuleHandling.Refuse, Practice),
        new(RuleIds.ChangeMinutes, "minutes to change from one exercise to the next", 2, "min", RuleHandling.Refuse, Practice),
        new(RuleIds.PlayersPerPlace, "players who share one place of a station", 3, "players", RuleHandling.Refuse, Practice),
        new(RuleIds.StationPlaces, "no more players at a station at once than it has places for", null, "", RuleHandling.Refuse, Practice),
        new(RuleIds.DayDemands, "a training day holds what its kind asks for", null, "", RuleHandling.Refuse, Practice),
        new(RuleIds.Restrictions, "nobody is given what he may not do", null, "", RuleHandling.Refuse, "local rules and licensed staff"),
        new(RuleIds.Prerequisites, "nobody is given an exercise whose prerequisites he lacks", null, "", RuleHandling.Refuse, Textbook),
        new(RuleIds.Kept, "choices of the coach stay", null, "", RuleHandling.Refuse, "the coach"),
        new(RuleIds.ExerciseTimes, "times one exercise comes in a week", 2, "times", RuleHandling.Refuse, Practice),
        new(RuleIds.PatternTimes, "exercises of one pattern in a session", 2, "exercises", RuleHandling.Refuse, Practice),
        new(RuleIds.SessionOrder, "jumps and sprints, then power, then strength, then the rest", null, "", RuleHandling.Refuse, Textbook),
        new(RuleIds.NeedProbability, "probability of being behind from which a quality counts as a need", 80, "%", RuleHandling.Refuse, "our choice, no source"),
        new(RuleIds.TestOldAfter, "days after which a test counts as old and the lower side of its range is used", 42, "days", RuleHandling.Refuse, "our choice, no source"),
        new(RuleIds.TestExpiresAfter, "days after which a test says nothing about today", 182, "days", RuleHandling.Refuse, "our choice, no source"),
        new(RuleIds.ProgressStep, "a load goes up by this share when all that was planned was done", 2.5, "%", RuleHandling.Refuse, Practice),
        new(RuleIds.BackOffStep, "a load goes down by this share when less than planned was done", 5, "%", RuleHandling.Refuse, Practice),
        new(RuleIds.ProgressRating, "no load goes up after a session rated above this", 8, "of 10", RuleHandling.Refuse, Practice),
        new(RuleIds.ReadingsNeeded, "logged readings of an exercise that must agree before its load moves, 2 or more", 2, "readings", RuleHandling.Refuse, Practice),
        new(RuleIds.FeedbackDays, "days a logged reading counts for the next load", 28, "days", RuleHandling.Refuse, Practice),
    ];
}
