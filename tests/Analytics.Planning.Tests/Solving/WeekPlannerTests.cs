using Analytics.Planning.Plans;
using Analytics.Planning.Solving;
using Xunit.Abstractions;

namespace Analytics.Planning.Tests.Solving;

/// <summary>Plans of small weeks.</summary>
public class WeekPlannerTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData(8, 2)]
    [InlineData(24, 6)]
    [InlineData(60, 8)]
    [InlineData(6, 1)]
    public void Plan_UsualWeek_IsFound(int players, int groups)
    {
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var answer = WeekPlanner.Plan(SampleSquad.Problem(SampleSquad.Players(players, groups), SampleSquad.FourDays));
        output.WriteLine($"{players}: {clock.ElapsedMilliseconds} ms {answer.Plan?.Quality} {answer.Undecided} {string.Join(" / ", answer.Clashes.SelectMany(c => c.Rules).Select(r => r.Text))}");
        Assert.NotNull(answer.Plan);
        if (players == 8) Show(answer.Plan);
    }

    [Fact]
    public void Plan_TwentyMinutes_NamesTheClash()
    {
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var answer = WeekPlanner.Plan(SampleSquad.Problem(SampleSquad.Players(8, 2), SampleSquad.Slot(0, "max_strength", 20), SampleSquad.Slot(3, "power")));
        output.WriteLine($"{clock.ElapsedMilliseconds} ms");
        foreach (var c in answer.Clashes) foreach (var r in c.Relaxations) output.WriteLine($"{r.Rule} -> {r.GivesPlan} {r.Text}");
        Assert.Null(answer.Plan);
    }

    private void Show(WeekPlan plan)
    {
        foreach (var s in plan.Sessions)
        {
            output.WriteLine($"{s.Slot.Date} {s.Kind.Id} {s.Group} {s.Minutes:0.0}");
            foreach (var i in s.Shared) output.WriteLine($"    {i.Exercise.Id} {i.Scheme.Id} {i.Partner?.Id} {i.Time.Minutes:0.0}");
            foreach (var o in s.Own) output.WriteLine($"    own {o.Quality} {o.Item.Exercise.Id} {o.Item.Scheme.Id} need {string.Join(",", o.ForNeed)} default {string.Join(",", o.ByDefault)}");
        }

        foreach (var n in plan.Needs) output.WriteLine(n.ToString());
        foreach (var n in plan.LeftOut) output.WriteLine(n.ToString());
    }
}
