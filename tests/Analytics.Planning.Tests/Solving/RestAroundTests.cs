using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Solving;

namespace Analytics.Planning.Tests.Solving;

/// <summary>Rest over the turn of the week: 48 hours from what an earlier plan has for the days before and after.</summary>
public class RestAroundTests
{
    private static readonly DateOnly s_monday = SampleSquad.Monday;

    // Heavy squats at 07:00 on Monday, kept by the coach.
    private static PlanProblem Week(params EarlierChoice[] around) => SampleSquad.Problem(SampleSquad.Players(6, 2), SampleSquad.Slot(0, "max_strength") with { Start = new(7, 0) }) with
    {
        Earlier = [Row(0) with { Force = ChoiceForce.Keep }, .. around],
        SessionsAround = [SampleSquad.Slot(-1, "max_strength") with { Start = new(17, 0) }, SampleSquad.Slot(-2, "max_strength") with { Start = new(7, 0) }],
    };

    private static EarlierChoice Row(int day, string exercise = "back_squat", string? scheme = "4x3")
        => new() { Date = s_monday.AddDays(day), Group = "Linemen", ExerciseId = exercise, SchemeId = scheme, Place = "training/plan.csv, line 7" };

    [Fact]
    public void HeavySquatOnSunday_KeepsHeavySquatsFromMonday()
    {
        var clash = Assert.Single(WeekPlanner.Plan(Week(Row(-1))).Clashes);
        Assert.Equal([RuleIds.HeavyLowerGap, RuleIds.Kept], clash.Rules.Select(r => r.RuleId).Order(StringComparer.Ordinal));
        Assert.Contains(clash.Rules, r => r.Text == "no heavy lower-body work on Mon 15 Jun, 07:00: 48 h from that planned on Sun 14 Jun (training/plan.csv, line 7)");
    }

    // Saturday 07:00 is 48 hours before; 75 % is not heavy, a bench press not for the legs; another group's squat and what was ruled out are nothing.
    [Fact]
    public void WorkThatIsFarLightOrOfOthers_ChangesNothing()
    {
        foreach (var row in new[] { Row(-2), Row(-1, scheme: "5x5"), Row(-1, "bench_press"), Row(-1) with { Group = "Backs" }, Row(-1) with { Force = ChoiceForce.Never } })
            Assert.NotNull(WeekPlanner.Plan(Week(row)).Plan);
    }

    [Fact]
    public void HeavySquatOnTheMondayAfter_KeepsHeavySquatsFromSunday()
    {
        var sunday = SampleSquad.Slot(6, "max_strength");
        var problem = Week(Row(7)) with { Sessions = [sunday], Earlier = [Row(6) with { Force = ChoiceForce.Keep }, Row(7)] };
        Assert.Contains(Assert.Single(WeekPlanner.Plan(problem).Clashes).Rules, r => r.RuleId == RuleIds.HeavyLowerGap);
        Assert.NotNull(WeekPlanner.Plan(problem with { Earlier = [Row(6) with { Force = ChoiceForce.Keep }, Row(8)] }).Plan);
    }

    [Fact]
    public void OwnRowOfAPlayer_CountsForHim()
    {
        var problem = Week(Row(-1) with { Group = null, AthleteId = SampleSquad.Players(6, 2)[0].Id, IsOwnWork = true });
        Assert.Contains(Assert.Single(WeekPlanner.Plan(problem).Clashes).Rules, r => r.RuleId == RuleIds.HeavyLowerGap);
    }

    [Fact]
    public void HighImpactOnSunday_KeepsLandingsOfHighImpactFromMonday()
    {
        var problem = SampleSquad.Problem(SampleSquad.Players(6, 2), SampleSquad.Slot(0, "reactive")) with { Earlier = [Row(-1, "bound", "3x5_jumps"), Row(0, "bound", null) with { Force = ChoiceForce.Keep }] };
        Assert.Contains(Assert.Single(WeekPlanner.Plan(problem).Clashes).Rules, r => r.RuleId == RuleIds.HighImpactGap);
    }

    // The check that knows nothing of the model sees it too.
    [Fact]
    public void Check_PlanMadeWithoutTheWeekBefore_FlagsWhatIsTooNear()
    {
        var plan = WeekPlanner.Plan(Week()).Plan!;
        Assert.Empty(PlanCheck.Of(Week(), plan.Sessions));
        var flags = PlanCheck.Of(Week(Row(-1)), plan.Sessions);
        Assert.Equal(3, flags.Count(f => f.RuleId == RuleIds.HeavyLowerGap && f.Text == "Mon 15 Jun, 07:00 and what was planned on Sun 14 Jun are 14 h apart, 48 h asked"));
    }
}
