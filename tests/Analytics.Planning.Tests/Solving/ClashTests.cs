using Analytics.Planning.Exercises;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rooms;
using Analytics.Planning.Rules;
using Analytics.Planning.Solving;
using Analytics.Planning.Weeks;

namespace Analytics.Planning.Tests.Solving;

/// <summary>Weeks without a plan: the clash is named, and mending the input at any rule named gives a plan.</summary>
public class ClashTests
{
    private static readonly IReadOnlyList<PlanPlayer> Squad = SampleSquad.Players(6, 2);

    [Fact]
    public void NoPlatform_PowerDay_NamesThePlatformAndTheDay()
    {
        // Without jumps and throws only lifts at the platform are left for explosive power.
        var problem = SampleSquad.Problem(Squad, SampleSquad.Slot(0, "power")) with
        {
            Exercises = new(SampleTraining.Exercises.All.Where(e => e.Quality != TrainedQuality.ExplosivePower || e.Stations.Contains("platform"))),
            Rooms = [Without("platform")],
        };
        Clashes(problem, (RuleIds.DayDemands, "Mon 15 Jun, explosive power"), (RuleIds.StationPlaces, "Mon 15 Jun, platform"));
        HasPlan(problem with { Rooms = [SampleTraining.Room] });
        HasPlan(problem with { Rules = PlanRules.With([PlanRules.Standard[RuleIds.DayDemands] with { Handling = RuleHandling.Off }]) });
    }

    [Fact]
    public void ShortSession_MaxStrengthDay_NamesTheMinutesAndSaysHowManyWouldDo()
    {
        var problem = SampleSquad.Problem(Squad, SampleSquad.Slot(0, "max_strength", 32), SampleSquad.Slot(3, "power"));
        var clash = Clashes(problem, (RuleIds.DayDemands, "Mon 15 Jun, maximal strength for the legs"), (RuleIds.DayDemands, "Mon 15 Jun, maximal strength for the upper body"), (RuleIds.SessionMinutes, "Mon 15 Jun"));
        var minutes = int.Parse(clash.Relaxations.Single(r => r.Rule.RuleId == RuleIds.SessionMinutes).Text.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture);
        HasPlan(problem with { Sessions = [SampleSquad.Slot(0, "max_strength", minutes), SampleSquad.Slot(3, "power")] });
        Assert.Null(WeekPlanner.Plan(problem with { Sessions = [SampleSquad.Slot(0, "max_strength", minutes - 1), SampleSquad.Slot(3, "power")] }).Plan);
    }

    [Fact]
    public void TwentyMinutes_MaxStrengthDay_AreTooFewForEitherHalf()
    {
        var answer = WeekPlanner.Plan(SampleSquad.Problem(Squad, SampleSquad.Slot(0, "max_strength", 20)));
        Assert.All(answer.Clashes, c => Assert.Contains(c.Rules, r => r is { RuleId: RuleIds.SessionMinutes, Text: "the session on Mon 15 Jun has 20 minutes" }));
        Assert.All(answer.Clashes.SelectMany(c => c.Relaxations).Where(r => r.Rule.RuleId == RuleIds.SessionMinutes), r => Assert.True(r.GivesPlan));
    }

    [Fact]
    public void EveryoneRestricted_SpeedDay_NamesOneRestrictionAndTheDay()
    {
        IReadOnlyList<PlanPlayer> all = [.. Squad.Select(p => p with { Restrictions = [new() { AthleteId = p.Id, From = SampleSquad.Monday, Pattern = MovementPattern.Jump }] })];
        var problem = SampleSquad.Problem(all, SampleSquad.Slot(0, "speed"));
        var answer = WeekPlanner.Plan(problem);
        Assert.Null(answer.Plan);
        Assert.All(answer.Clashes, c => Assert.Equal([RuleIds.DayDemands, RuleIds.Restrictions], c.Rules.Select(r => r.RuleId).Order(StringComparer.Ordinal)));
        // One who may jump excuses those who may not.
        HasPlan(problem with { Players = [all[0] with { Restrictions = [] }, .. all.Skip(1)] });
        HasPlan(problem with { Rules = PlanRules.With([PlanRules.Standard[RuleIds.DayDemands] with { Handling = RuleHandling.Off }]) });
    }

    [Fact]
    public void ContradictoryChoices_KeptAndRuledOut_NamesBothRows()
    {
        EarlierChoice keep = new() { Date = SampleSquad.Monday, Group = "Linemen", ExerciseId = "back_squat", Force = ChoiceForce.Keep, Place = "training/plan.csv, line 2" };
        var never = keep with { Force = ChoiceForce.Never, Place = "training/plan.csv, line 3" };
        var problem = SampleSquad.Problem(Squad, SampleSquad.Slot(0, "max_strength")) with { Earlier = [keep, never] };
        var clash = Clashes(problem, (RuleIds.Kept, "Linemen, Mon 15 Jun, back_squat, kept"), (RuleIds.Kept, "Linemen, Mon 15 Jun, back_squat, never"));
        Assert.Contains("line 2", clash.Rules[0].Text + clash.Rules[1].Text, StringComparison.Ordinal);
        HasPlan(problem with { Earlier = [keep] });
        HasPlan(problem with { Earlier = [never] });
    }

    [Fact]
    public void KeptHeavySquat_DayBeforeTheGame_NamesTheGame()
    {
        var problem = SampleSquad.Problem(Squad, SampleSquad.Slot(4, "max_strength")) with
        {
            Games = [new Game(SampleSquad.Monday.AddDays(5))],
            Earlier = [new() { Date = SampleSquad.Monday.AddDays(4), Group = "Linemen", ExerciseId = "back_squat", SchemeId = "4x3", Force = ChoiceForce.Keep }],
        };
        Clashes(problem, (RuleIds.GameGap, "Fri 19 Jun"), (RuleIds.Kept, "Linemen, Fri 19 Jun, back_squat (4x3), kept"));
        // Two days away are 48 hours.
        HasPlan(problem with { Games = [new Game(SampleSquad.Monday.AddDays(6))] });
    }

    [Fact]
    public void KeptSquat_SpeedDay_SaysItIsNotPartOfThatDay()
    {
        var problem = SampleSquad.Problem(Squad, SampleSquad.Slot(0, "speed")) with { Earlier = [new() { Date = SampleSquad.Monday, Group = "Linemen", ExerciseId = "back_squat", Force = ChoiceForce.Keep }] };
        var clash = Clashes(problem, (RuleIds.DayDemands, "Mon 15 Jun, back_squat"), (RuleIds.Kept, "Linemen, Mon 15 Jun, back_squat, kept"));
        Assert.Contains("back_squat is not part of a Speed day (Mon 15 Jun)", clash.Rules.Select(r => r.Text));
        Assert.Contains("where that day need not keep to its kind there is a plan; another kind of day, or other numbers in day-kinds.csv, would do", clash.Relaxations.Select(r => r.Text));
    }

    [Theory]
    [InlineData("speed", "a speed day")]
    [InlineData("upper-body power", "an upper-body power day")]
    [InlineData("Easy day", "an Easy day")]
    public void Kind_InASentence_HasItsArticle(string name, string text) => Assert.Equal(text, new DayKind("made", name, [], "made").Described);

    [Fact]
    public void TwoClashes_OfDifferentDays_AreBothNamed()
    {
        var answer = WeekPlanner.Plan(SampleSquad.Problem(Squad, SampleSquad.Slot(0, "max_strength", 32), SampleSquad.Slot(3, "max_strength", 32)));
        Assert.Equal(2, answer.Clashes.Count);
        Assert.All(answer.Clashes.SelectMany(c => c.Relaxations), r => Assert.False(r.GivesPlan));
        Assert.Empty(answer.Clashes[0].Rules.Intersect(answer.Clashes[1].Rules));
        // Each says what would settle it, and with the minutes both ask for there is a plan.
        var minutes = answer.Clashes.SelectMany(c => c.Relaxations).Where(r => r.Rule.RuleId == RuleIds.SessionMinutes).Select(r => r.Text).ToList();
        Assert.All(minutes, t => Assert.EndsWith(" minutes instead of 32 this clash is settled, not the others", t, StringComparison.Ordinal));
        var needed = minutes.Select(t => int.Parse(t.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture)).ToList();
        Assert.Equal(2, needed.Count);
        HasPlan(SampleSquad.Problem(Squad, SampleSquad.Slot(0, "max_strength", needed.Max()), SampleSquad.Slot(3, "max_strength", needed.Max())));
    }

    // Whoever may not sprint is asked for no more than a room without a sled leaves him, and keeps nobody else from the day.
    [Fact]
    public void RestrictedPlayer_RoomWithoutWhatHeMayDo_DoesNotKeepTheSquadFromTheDay()
    {
        IReadOnlyList<PlanPlayer> players = [Squad[0] with { Restrictions = [new() { AthleteId = Squad[0].Id, From = SampleSquad.Monday, Pattern = MovementPattern.Sprint }] }, .. Squad.Skip(1)];
        HasPlan(SampleSquad.Problem(players, SampleSquad.Slot(0, "speed")) with { Rooms = [Without("sled")] });
    }

    private static Room Without(string station) => new(SampleTraining.Room.Id, SampleTraining.Room.Stations.Where(s => s.Key != station).ToDictionary());

    private static RuleClash Clashes(PlanProblem problem, params (string Rule, string Subject)[] expected)
    {
        var answer = WeekPlanner.Plan(problem);
        Assert.Null(answer.Plan);
        var clash = Assert.Single(answer.Clashes);
        Assert.Equal(expected, clash.Rules.Select(r => (r.RuleId, r.Subject)).OrderBy(r => r.RuleId, StringComparer.Ordinal).ThenBy(r => r.Subject, StringComparer.Ordinal));
        Assert.All(clash.Relaxations, r => Assert.True(r.GivesPlan, r.ToString()));
        return clash;
    }

    private static void HasPlan(PlanProblem problem)
    {
        var answer = WeekPlanner.Plan(problem);
        Assert.True(answer.Plan is not null, string.Join("; ", answer.Clashes.SelectMany(c => c.Rules).Select(r => r.Text)));
    }
}
