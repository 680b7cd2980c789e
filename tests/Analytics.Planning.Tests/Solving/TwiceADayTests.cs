using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Solving;
using Analytics.Planning.Weeks;

namespace Analytics.Planning.Tests.Solving;

/// <summary>A group that trains twice on a day: rows of an earlier plan are for one of its sessions.</summary>
public class TwiceADayTests
{
    private static readonly TimeOnly Morning = new(7, 0), Evening = new(16, 0);
    private static readonly PlanProblem Week = SampleSquad.Problem(SampleSquad.Players(6, 2),
        SampleSquad.Slot(0, "max_strength", 70, Morning), SampleSquad.Slot(0, "speed", 60, Evening), SampleSquad.Slot(3, "power", 75, Evening));
    private static readonly WeekPlan First = WeekPlanner.Plan(Week).Plan!;

    // Two short sessions for the trunk, nothing else to choose.
    private static readonly PlanProblem Trunk = SampleSquad.Problem(SampleSquad.Players(3, 1), SampleSquad.Slot(0, "recovery", 60, Morning), SampleSquad.Slot(0, "recovery", 60, Evening)) with
    {
        Exercises = new(SampleTraining.Exercises.All.Where(e => e.Id is "side_plank" or "roll_out" or "neck_hold")),
    };

    [Fact]
    public void Replan_OwnPlanPutBack_IsTheSamePlanWithoutAChange()
    {
        var again = WeekPlanner.Plan(Week with { Earlier = Rows(First, withStart: true) }).Plan!;
        Assert.Empty(again.Changes);
        Assert.Equal(Lines(First), Lines(again));
    }

    // As files were written before they had starts: an exercise of both sessions stood in them once.
    [Fact]
    public void Replan_RowsWithoutStart_TakesNothingOut()
    {
        var again = WeekPlanner.Plan(Week with { Earlier = Rows(First, withStart: false) }).Plan!;
        Assert.DoesNotContain(again.Changes, c => c.Contains("taken out", StringComparison.Ordinal));
    }

    [Fact]
    public void Planned_WithoutStart_ComesOnce()
    {
        var plan = WeekPlanner.Plan(Trunk with { Earlier = [Row("roll_out"), Row("side_plank")] }).Plan!;
        Assert.Equal(["roll_out", "side_plank"], plan.Sessions.SelectMany(s => s.Shared).Select(i => i.Exercise.Id).Order(StringComparer.Ordinal));
        Assert.Empty(plan.Changes);
    }

    [Fact]
    public void Planned_WithStarts_ComesInEach()
    {
        var plan = WeekPlanner.Plan(Trunk with { Earlier = [Row("roll_out", Morning), Row("roll_out", Evening), Row("neck_hold", Evening)] }).Plan!;
        Assert.Equal(["roll_out"], Ids(plan, Morning));
        Assert.Equal(["neck_hold", "roll_out"], Ids(plan, Evening).Order(StringComparer.Ordinal));
        Assert.Empty(plan.Changes);
    }

    [Fact]
    public void Changes_ComeOnceInAPlanThatHasItTwice_NameTheSecond()
    {
        var both = WeekPlanner.Plan(Trunk with { Earlier = [Row("roll_out", Morning), Row("roll_out", Evening)] }).Plan!.Sessions;
        Assert.Equal(["Linemen, Mon 15 Jun, 16:00: roll_out (3x8) put in"], PlanChanges.Of(Trunk with { Earlier = [Row("roll_out")] }, both));
        Assert.Equal(["Linemen, Mon 15 Jun, 16:00: side_plank taken out", "Linemen, Mon 15 Jun, 16:00: roll_out (3x8) put in"],
            PlanChanges.Of(Trunk with { Earlier = [Row("roll_out", Morning), Row("side_plank", Evening)] }, both));
    }

    [Fact]
    public void Keep_WithoutStart_IsMetByTheSessionThatCan()
    {
        var plan = WeekPlanner.Plan(Week with { Earlier = [Row("front_squat", force: ChoiceForce.Keep)] }).Plan!;
        var session = Assert.Single(plan.Sessions, s => s.Group == "Linemen" && s.Slot.Date == SampleSquad.Monday && s.Shared.Any(i => i.Exercise.Id == "front_squat"));
        Assert.Equal(Morning, session.Slot.Start);
        Assert.True(session.Shared.First(i => i.Exercise.Id == "front_squat").IsKept);
    }

    [Fact]
    public void Keep_OfASessionThatCannot_NamesTheSession()
    {
        var answer = WeekPlanner.Plan(Week with { Earlier = [Row("back_squat", Evening, ChoiceForce.Keep)] });
        Assert.Null(answer.Plan);
        Assert.Contains(Assert.Single(answer.Clashes).Rules, r => r.RuleId == RuleIds.Kept && r.Subject == "Linemen, Mon 15 Jun, 16:00, back_squat, kept");
    }

    [Theory]
    [InlineData(7)]
    [InlineData(16)]
    public void Keep_WithStart_IsForThatSession(int hour)
    {
        var start = new TimeOnly(hour, 0);
        var other = start == Morning ? Evening : Morning;
        var plan = WeekPlanner.Plan(Trunk with { Earlier = [Row("neck_hold", start, ChoiceForce.Keep), Row("neck_hold", other, ChoiceForce.Never)] }).Plan!;
        Assert.Contains("neck_hold", Ids(plan, start));
        Assert.DoesNotContain("neck_hold", Ids(plan, other));
    }

    [Fact]
    public void Never_WithoutStart_IsForAllSessionsOfTheDay()
    {
        var plan = WeekPlanner.Plan(Trunk with { Earlier = [Row("roll_out", force: ChoiceForce.Never)] }).Plan!;
        Assert.DoesNotContain(plan.Sessions.SelectMany(s => s.Shared), i => i.Exercise.Id == "roll_out");
        Assert.Null(WeekPlanner.Plan(Trunk with { Earlier = [Row("roll_out", force: ChoiceForce.Never), Row("roll_out", Evening, ChoiceForce.Keep)] }).Plan);
    }

    // Or the next file would fix both.
    [Fact]
    public void Keep_WithoutStart_FixesOneOfTwo()
    {
        var plan = WeekPlanner.Plan(Trunk with { Earlier = [Row("roll_out", force: ChoiceForce.Keep), Row("roll_out", Morning), Row("roll_out", Evening)] }).Plan!;
        Assert.Equal([true, false], plan.Sessions.Select(s => s.Shared.Single(i => i.Exercise.Id == "roll_out").IsKept));
    }

    [Fact]
    public void Keep_OwnWorkWithoutStart_IsHisInOneSession()
    {
        var week = Week with { Sessions = [SampleSquad.Slot(0, "speed", 60, Morning), SampleSquad.Slot(0, "speed", 60, Evening)] };
        var player = week.Players.First(p => p.Needs.Count == 0);
        EarlierChoice own = new() { Date = SampleSquad.Monday, AthleteId = player.Id, ExerciseId = "roll_out", IsOwnWork = true, Force = ChoiceForce.Keep };
        List<TimeOnly?> Starts(EarlierChoice row) => [.. WeekPlanner.Plan(week with { Earlier = [row] }).Plan!.Sessions.Where(s => s.Own.Any(o => o.Item.Exercise.Id == "roll_out" && o.ForNeed.Concat(o.ByDefault).Contains(player.Id))).Select(s => s.Slot.Start)];
        Assert.NotEmpty(Starts(own));
        Assert.Contains(Evening, Starts(own with { Start = Evening }));
        Assert.Contains(Morning, Starts(own with { Start = Morning }));
    }

    // The calendar moved it: what was chosen for it goes along.
    [Fact]
    public void Keep_StartThatNoSessionHasAnyMore_IsForTheDay()
    {
        var plan = WeekPlanner.Plan(Week with { Earlier = [Row("front_squat", new TimeOnly(6, 30), ChoiceForce.Keep)] }).Plan!;
        Assert.Contains("front_squat", Ids(plan, Morning));
    }

    private static EarlierChoice Row(string exercise, TimeOnly? start = null, ChoiceForce force = ChoiceForce.Planned)
        => new() { Date = SampleSquad.Monday, Start = start, Group = "Linemen", ExerciseId = exercise, Force = force };

    private static IEnumerable<string> Ids(WeekPlan plan, TimeOnly start)
        => plan.Sessions.Single(s => s.Group == "Linemen" && s.Slot.Date == SampleSquad.Monday && s.Slot.Start == start).Shared.Select(i => i.Exercise.Id);

    private static IReadOnlyList<EarlierChoice> Rows(WeekPlan plan, bool withStart) =>
    [
        .. plan.Sessions.SelectMany(s => s.Shared.Select(i => new EarlierChoice { Date = s.Slot.Date, Start = withStart ? s.Slot.Start : null, Group = s.Group, ExerciseId = i.Exercise.Id, SchemeId = i.Scheme.Id }))
            .Concat(plan.Sessions.SelectMany(s => s.Own.SelectMany(o => o.ForNeed.Concat(o.ByDefault).Select(p => new EarlierChoice { Date = s.Slot.Date, Start = withStart ? s.Slot.Start : null, AthleteId = p, ExerciseId = o.Item.Exercise.Id, SchemeId = o.Item.Scheme.Id, IsOwnWork = true }))))
            .Distinct(),
    ];

    private static IEnumerable<string> Lines(WeekPlan plan) => plan.Sessions.SelectMany(s => s.Shared.Select(i => $"{s.Slot.Start} {s.Group} {i.Exercise.Id} {i.Scheme.Id}")
        .Concat(s.Own.SelectMany(o => o.ForNeed.Concat(o.ByDefault).Order(StringComparer.Ordinal).Select(p => $"{p} {o.Item.Exercise.Id}"))));
}
