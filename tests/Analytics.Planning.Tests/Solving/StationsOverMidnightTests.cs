using Analytics.Planning.Plans;
using Analytics.Planning.Rooms;
using Analytics.Planning.Rules;
using Analytics.Planning.Solving;
using Analytics.Planning.Weeks;

namespace Analytics.Planning.Tests.Solving;

/// <summary>A session that ends after midnight: its players are at their stations until it does.</summary>
public class StationsOverMidnightTests
{
    private static readonly Room TwoBenches = SampleTraining.Room with { Stations = new Dictionary<string, int>(SampleTraining.Room.Stations) { ["bench"] = 2 } };
    private static readonly SessionSlot Late = SampleSquad.Slot(0, "max_strength", 60, new TimeOnly(23, 30));

    // Times on the clock, read off by hand; 24:30 is 00:30 of Tuesday.
    [Theory]
    [InlineData(0, 23, 30, true)]
    [InlineData(1, 0, 15, true)]
    [InlineData(1, 0, 29, true)]
    [InlineData(1, 0, 30, false)]
    [InlineData(0, 22, 45, false)]
    [InlineData(0, 0, 15, false)]
    [InlineData(1, 23, 45, false)]
    public void Check_SessionBegunWhileAnotherRunsPastMidnight_CountsBoth(int day, int hour, int minute, bool together)
    {
        var second = SampleSquad.Slot(day, "max_strength", 45, new TimeOnly(hour, minute));
        var problem = SampleSquad.Problem(SampleSquad.Players(8, 2), Late, second) with { Rooms = [TwoBenches] };
        var flags = PlanCheck.Of(problem, [Bench(problem, Late, "Linemen"), Bench(problem, second, "Linebackers")]).Where(f => f.RuleId == RuleIds.StationPlaces).ToList();
        // Four of each group; two benches of three.
        Assert.Equal(together ? ["8 players at the bench, room for 6"] : [], flags.Select(f => f.Text).Distinct());
        Assert.Equal(together, StationConstraints.AtOnce(Late, second));
    }

    [Fact]
    public void Check_TwelvePlayersAtTwoBenchesOverMidnight_IsTold()
    {
        var problem = SampleSquad.Problem(SampleSquad.Players(12, 1), Late) with { Rooms = [TwoBenches] };
        Assert.Contains(PlanCheck.Of(problem, [Bench(problem, Late, "Linemen")]), f => f is { RuleId: RuleIds.StationPlaces, Text: "12 players at the bench, room for 6" });
    }

    [Fact]
    public void Plan_TwelvePlayersAtTwoBenchesOverMidnight_PressElsewhere()
    {
        var plan = WeekPlanner.Plan(SampleSquad.Problem(SampleSquad.Players(12, 1), Late with { Minutes = 75 }) with { Rooms = [TwoBenches] }).Plan!;
        Assert.DoesNotContain(plan.Sessions.SelectMany(s => s.Players.SelectMany(s.For)), i => i.Exercise.Stations.Contains("bench"));
    }

    // Nobody but the bench has work for the arms: two groups of four find no room together, one after the other they do.
    [Fact]
    public void Plan_GroupsThatMeetAfterMidnight_ClashAtTheBench()
    {
        PlanProblem At(int minute) => SampleSquad.Problem(SampleSquad.Players(8, 2), Late with { Groups = ["Linemen"] }, SampleSquad.Slot(1, "max_strength", 60, new TimeOnly(0, minute), "Linebackers")) with
        {
            Rooms = [TwoBenches],
            Exercises = new(SampleTraining.Exercises.All.Where(e => e.Id is "back_squat" or "bench_press" or "side_plank" or "roll_out")),
        };
        Assert.NotNull(WeekPlanner.Plan(At(30)).Plan);
        var met = WeekPlanner.Plan(At(15));
        Assert.Null(met.Plan);
        Assert.Contains(met.Clashes.SelectMany(c => c.Rules), r => r.RuleId == RuleIds.StationPlaces && r.Subject == "Tue 16 Jun, 00:15, bench");
    }

    private static UnitSession Bench(PlanProblem problem, SessionSlot slot, string group) => new()
    {
        Slot = slot,
        Kind = SampleTraining.Kinds.First(k => k.Id == slot.Kind),
        Group = group,
        Players = [.. problem.Players.Where(p => p.Group == group).Select(p => p.Id)],
        Shared = [new(SampleTraining.Exercises.Find("bench_press")!, SampleTraining.Schemes.First(s => s.Id == "5x5"), null, default, false)],
        Own = [],
        Minutes = 40,
    };
}
