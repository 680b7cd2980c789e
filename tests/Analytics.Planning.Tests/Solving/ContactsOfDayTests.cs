using Analytics.Planning.Dose;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Solving;
using Analytics.Planning.Weeks;

namespace Analytics.Planning.Tests.Solving;

/// <summary>Two sessions of a day share the guide for the ground contacts of one.</summary>
public class ContactsOfDayTests
{
    // A player of 85 kg with 2 years of training: up to 120 contacts [baechle2008].
    private const int Most = 120;
    private static readonly SessionSlot Morning = SampleSquad.Slot(0, "speed", 75, new TimeOnly(7, 0)), Evening = SampleSquad.Slot(0, "reactive", 75, new TimeOnly(16, 0));

    // One exercise for reactive ability in each session, the same for lack of others.
    private static PlanProblem Week(int sets, params SessionSlot[] slots) => SampleSquad.Problem([SampleSquad.Player("P00", "Linemen", 0)], slots) with
    {
        Exercises = new(SampleTraining.Exercises.All.Where(e => e.Id is "pogo" or "sprint_10yd" or "roll_out")),
        Kinds = [.. SampleTraining.Kinds.Select(k => k with { Demands = [.. k.Demands.Select(d => d with { IsOwnWork = false, Least = Math.Min(d.Least, 1) })] })],
        Schemes = [.. SampleTraining.Schemes.Select(s => s.Id == "3x5_jumps" ? s with { Sets = sets } : s)],
    };

    [Fact]
    public void Plan_TwoSessionsOverTheGuideTogether_ClashOnTheDay()
    {
        // 13 sets of 5: 65 contacts a session, 130 in the day.
        Assert.NotNull(WeekPlanner.Plan(Week(13, Morning)).Plan);
        Assert.NotNull(WeekPlanner.Plan(Week(13, Evening)).Plan);
        var answer = WeekPlanner.Plan(Week(13, Morning, Evening));
        Assert.Null(answer.Plan);
        Assert.Contains(Assert.Single(answer.Clashes).Rules, r => r is { RuleId: RuleIds.JumpContacts, Text: "at most 120 ground contacts for Linemen in all sessions of Mon 15 Jun" });
        // 12 sets are 60 and 120; on two days each stands for itself.
        Assert.NotNull(WeekPlanner.Plan(Week(12, Morning, Evening)).Plan);
        Assert.NotNull(WeekPlanner.Plan(Week(13, Morning, Evening with { Date = SampleSquad.Monday.AddDays(1) })).Plan);
    }

    [Fact]
    public void Plan_RuleOnlyFlagged_SaysSoOfTheDay()
    {
        var soft = Week(13, Morning, Evening) with { Rules = PlanRules.With([PlanRules.Standard[RuleIds.JumpContacts] with { Handling = RuleHandling.Flag }]) };
        var flag = Assert.Single(WeekPlanner.Plan(soft).Plan!.Flags, f => f.RuleId == RuleIds.JumpContacts);
        Assert.Equal(("Player P00, Mon 15 Jun", "130 ground contacts in 2 sessions of the day, at most 120"), (flag.Subject, flag.Text));
    }

    [Theory]
    [InlineData(12, true)]
    [InlineData(13, false)]
    public void Dose_DayOfTwoSessions_HasALineOfItsOwn(int sets, bool within)
    {
        var problem = Week(sets, Morning, Evening);
        var item = new PlannedItem(problem.Exercises.Find("pogo")!, problem.Schemes.First(s => s.Id == "3x5_jumps"), null, default, false);
        var sheet = DoseSheet.Of(problem.Players[0], [new PlayerSession(Morning, [item]), new PlayerSession(Evening, [item])], problem.Rules);
        var line = Assert.Single(sheet.Lines, l => l.Day == SampleSquad.Monday);
        Assert.Equal((sets * 10.0, Most, within), (line.Amount, line.Limit, line.IsWithin));
        Assert.EndsWith("our choice, no source", line.Note, StringComparison.Ordinal);
        Assert.Equal(within ? 0 : 1, sheet.NotKept.Count());
        Assert.DoesNotContain(DoseSheet.Of(problem.Players[0], [new PlayerSession(Morning, [item])], problem.Rules).Lines, l => l.Day is not null);
    }
}
