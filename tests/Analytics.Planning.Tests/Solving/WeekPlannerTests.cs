using Analytics.Planning.Exercises;
using Analytics.Planning.Loads;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Solving;
using Analytics.Planning.Weeks;

namespace Analytics.Planning.Tests.Solving;

/// <summary>Plans of usual weeks.</summary>
public class WeekPlannerTests
{
    private static readonly PlanProblem Week = SampleSquad.Problem(SampleSquad.Players(24, 3), SampleSquad.FourDays);
    private static readonly WeekPlan Plan = WeekPlanner.Plan(Week).Plan!;

    [Fact]
    public void Plan_UsualWeek_HasEveryGroupInEverySession()
        => Assert.Equal(Week.Sessions.SelectMany(s => new[] { "Linemen", "Linebackers", "Backs" }.Select(g => (s.Date, g))), Plan.Sessions.Select(s => (s.Slot.Date, s.Group)));

    [Fact]
    public void Plan_UsualWeek_IsNearlyTheBest()
    {
        // The search ends at 1 %; the limit of work may end it a little before.
        Assert.InRange(Plan.Quality.Gap, 0, 0.02);
        Assert.False(Plan.Quality.HitClock);
        Assert.True(Plan.Quality.Bound >= Plan.Quality.Objective);
    }

    [Fact]
    public void Plan_ProbableNeed_GetsOwnWorkWhereTheDayHasIt()
        => Assert.All(Plan.Needs, n => Assert.True(n.OwnSets > 0, n.ToString()));

    [Fact]
    public void Plan_PlayersWithoutNeed_ShareTheirGroupsDefault()
    {
        var without = Week.Players.Where(p => p.Needs.Count == 0).Select(p => p.Id).ToHashSet();
        foreach (var session in Plan.Sessions)
            Assert.InRange(session.Own.Count(o => o.ByDefault.Any(without.Contains)), 0, 1);
    }

    [Fact]
    public void Plan_DefaultOfAGroup_IsBalancedOverTheWeek()
    {
        // Nobody needs anything: four days, four qualities.
        var plan = WeekPlanner.Plan(Week with { Players = [.. Week.Players.Select(p => p with { Needs = [] })] }).Plan!;
        foreach (var group in plan.Sessions.GroupBy(s => s.Group))
            Assert.Equal(4, group.SelectMany(s => s.Own).Where(o => o.ByDefault.Count > 0).Select(o => o.Quality).Distinct().Count());
    }

    // One of six needs reactive work: were it the default of the others, they would do as much of it as he.
    [Fact]
    public void Plan_DefaultOfAGroup_KeepsOffWhatSomebodyNeeds()
    {
        IReadOnlyList<PlanPlayer> players = [.. SampleSquad.Players(6, 1).Select((p, i) => p with { Needs = i > 0 ? [] : [new(TrainedQuality.ReactiveAbility, 0.9, "test", true)] })];
        var own = WeekPlanner.Plan(SampleSquad.Problem(players, SampleSquad.Slot(1, "speed"))).Plan!.Sessions[0].Own;
        Assert.Equal([players[0].Id], own.Single(o => o.Quality == TrainedQuality.ReactiveAbility).ForNeed);
        Assert.DoesNotContain(own, o => o.Quality == TrainedQuality.ReactiveAbility && o.ByDefault.Count > 0);
        Assert.Equal(5, own.Sum(o => o.ByDefault.Count));
    }

    [Fact]
    public void Plan_TwoNeedsOnOneDay_TheMoreProbableIsServed()
    {
        var player = SampleSquad.Player("P1", "Linemen", 1) with
        {
            Needs = [new(TrainedQuality.Acceleration, 0.81, "test", true), new(TrainedQuality.ReactiveAbility, 0.99, "test", true)],
        };
        var plan = WeekPlanner.Plan(SampleSquad.Problem([player], SampleSquad.Slot(1, "speed"))).Plan!;
        Assert.Equal(TrainedQuality.ReactiveAbility, Assert.Single(plan.Sessions[0].Own).Quality);
        Assert.Null(plan.Needs.Single(n => n.Quality == TrainedQuality.ReactiveAbility).Reason);
        Assert.Equal("time, places or a more probable need left no room", plan.Needs.Single(n => n.Quality == TrainedQuality.Acceleration).Reason);
    }

    [Theory]
    [InlineData(BodyHalf.Lower)]
    [InlineData(BodyHalf.Upper)]
    public void Plan_NeedOfOneHalfOfTheBody_IsServedByAnExerciseForIt(BodyHalf half)
    {
        var need = new QualityNeed(TrainedQuality.MaximalStrength, 0.9, "test", true) { Half = half };
        var plan = WeekPlanner.Plan(SampleSquad.Problem([SampleSquad.Player("P1", "Linemen", 1) with { Needs = [need] }], SampleSquad.Slot(0, "max_strength", 90))).Plan!;
        var own = Assert.Single(plan.Sessions[0].Own);
        Assert.Equal(["P1"], own.ForNeed);
        Assert.Equal(half == BodyHalf.Lower, own.Item.Exercise.Pattern.IsLowerBody());
        Assert.True(Assert.Single(plan.Needs).OwnSets > 0);
    }

    [Fact]
    public void Plan_NeedNoDayHas_SaysSo()
    {
        var plan = WeekPlanner.Plan(SampleSquad.Problem([SampleSquad.Player("P1", "Linemen", 1, TrainedQuality.Acceleration)], SampleSquad.Slot(0, "max_strength"))).Plan!;
        Assert.Equal("no session of his this week has own work for it", Assert.Single(plan.Needs).Reason);
    }

    [Fact]
    public void Plan_StationsTooFewForAllAtOnce_SpreadsTheGroups()
    {
        // Racks for two groups of eight, platforms for one: alone, all three would squat.
        var problem = Week with { Rooms = [SampleTraining.Room with { Stations = new Dictionary<string, int>(SampleTraining.Room.Stations) { ["platform"] = 3, ["rack"] = 6 } }] };
        var plan = WeekPlanner.Plan(problem).Plan!;
        Assert.DoesNotContain(PlanCheck.Of(problem, plan.Sessions), f => f.RuleId == Rules.RuleIds.StationPlaces);
        // Not all can clean, and the bound takes it that they can.
        Assert.InRange(plan.Quality.Gap, 0, 0.1);
    }

    [Fact]
    public void Plan_PlacesAtOwnTimes_LetEveryGroupClean()
    {
        SessionSlot At(int hour, string group) => SampleSquad.Slot(3, "power", 75, new TimeOnly(hour, 0), group);
        var problem = Week with
        {
            Sessions = [At(14, "Linemen"), At(16, "Linebackers"), At(18, "Backs")],
            Rooms = [SampleTraining.Room with { Stations = new Dictionary<string, int>(SampleTraining.Room.Stations) { ["platform"] = 3 } }],
        };
        Assert.All(WeekPlanner.Plan(problem).Plan!.Sessions, s => Assert.Contains(s.Shared, i => i.Exercise.Stations.Contains("platform")));
    }

    [Fact]
    public void Plan_ExerciseNobodyIsReadyFor_IsLeftOutWithTheReason()
    {
        var weak = SampleSquad.Players(6, 1).Select(p => p with { Maxima = new Dictionary<string, KnownMaximum> { ["back_squat"] = SampleSquad.Known("back_squat", 100) } });
        var plan = WeekPlanner.Plan(SampleSquad.Problem([.. weak], SampleSquad.Slot(1, "reactive"))).Plan!;
        Assert.DoesNotContain(plan.Sessions.SelectMany(s => s.Players.SelectMany(s.For)), i => i.Exercise.Id == "depth_jump");
        Assert.StartsWith("6 of 6 lack what it asks (", Assert.Single(plan.LeftOut, l => l.What == "depth_jump").Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_DayOfAnIntensity_TakesNothingLighter()
        => Assert.All(Plan.Sessions.Where(s => s.Kind.Id == "max_strength").SelectMany(s => s.Shared).Where(i => i.Exercise.Quality == TrainedQuality.MaximalStrength),
            i => Assert.True(i.Scheme.MostPercent >= 75, $"{i.Exercise.Id} {i.Scheme.Id}"));

    [Fact]
    public void Plan_WeekAfter_KeepsTheExercisesOfTheWeekBefore()
    {
        // Among exercises that are as good, the one of last week's same day.
        var squats = SampleTraining.Exercises.All.Where(e => e.Id is "deadlift" or "romanian_deadlift" or "bench_press" or "side_plank").ToList();
        PlanProblem week = SampleSquad.Problem(SampleSquad.Players(3, 1), SampleSquad.Slot(0, "max_strength", 55)) with { Exercises = new(squats) };
        foreach (var last in new[] { "deadlift", "romanian_deadlift" })
        {
            var plan = WeekPlanner.Plan(week with { Earlier = [new() { Date = SampleSquad.Monday.AddDays(-7), Group = "Linemen", ExerciseId = last }] }).Plan!;
            Assert.Contains(plan.Sessions[0].Shared, i => i.Exercise.Id == last);
        }
    }

    [Fact]
    public void Plan_UnknownKind_IsRefusedWithTheKnownOnes()
        => Assert.Contains("max_strength, power", Assert.Throws<ArgumentException>(() => WeekPlanner.Plan(SampleSquad.Problem(Week.Players, SampleSquad.Slot(0, "legs")))).Message, StringComparison.Ordinal);
}
