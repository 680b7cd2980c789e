using Analytics.Planning.Feedback;
using Analytics.Planning.Plans;
using static Analytics.Planning.Tests.Feedback.Log;

namespace Analytics.Planning.Tests.Feedback;

/// <summary>Which logged lift belongs to which row of the plan.</summary>
public class PlanReadingsTests
{
    private static int?[] LoggedDays(IEnumerable<EarlierChoice> plan, params LoggedSession[] log)
        => [.. PlanReadings.Of(plan, log, Groups).Readings.Select(r => r.LoggedOn?.Day)];

    [Fact]
    public void Of_SameDayFirst_ThenOneDayApart()
    {
        Assert.Equal([16, 17], LoggedDays([Plan(16), Plan(17)], All(17), All(16)));
        Assert.Equal([17], LoggedDays([Plan(16)], All(17)));
        Assert.Equal([15], LoggedDays([Plan(16)], All(15)));
        Assert.Equal([null], LoggedDays([Plan(16)], All(18)));
        // The 17th is the partner of the row of its own day; the 16th stays without.
        Assert.Equal([null, 17], LoggedDays([Plan(16), Plan(17)], All(17)));
        // The day after goes before the day before.
        Assert.Equal([17], LoggedDays([Plan(16)], All(15), All(17)));
        // One log between two rows belongs to one of them, the one that was due.
        Assert.Equal([17, null], LoggedDays([Plan(16), Plan(18)], All(17)));
    }

    [Fact]
    public void Of_OtherPlayerOrLift_IsNoPartnerAndIsKept()
    {
        var readings = PlanReadings.Of([Plan(16)], [Did(16, 7, "b", (5, 5, 100)), Did(16, 7, "a", "bench_press", (3, 5, 80), (2, 5, 70))], Groups);
        Assert.Null(Assert.Single(readings.Readings).LoggedOn);
        Assert.Equal([("a", "bench_press", 5), ("b", "back_squat", 5)], readings.Unplanned.Select(u => (u.AthleteId, u.Lift, u.Sets)));
    }

    [Fact]
    public void Of_RowOfAGroup_IsForEveryPlayerInItUnlessHeHasHisOwn()
    {
        var readings = PlanReadings.Of([Plan(16, athlete: null), Plan(16, 3, athlete: "b")], [], Groups).Readings;
        Assert.Equal([("a", 5), ("b", 3)], readings.Select(r => (r.AthleteId, r.PlannedSets!.Value)));
    }

    [Fact]
    public void Of_RowThatForbids_PlansNothing()
        => Assert.Empty(PlanReadings.Of([Plan(16) with { Force = ChoiceForce.Never }], [], Groups).Readings);

    [Fact]
    public void Of_TwoSessionsOfADay_AreOneWithTheHarderRating()
    {
        var reading = Assert.Single(PlanReadings.Of([Plan(16)], [Did(16, 5, "a", (3, 5, 100)), Did(16, 9, "a", (2, 5, 100)), Did(16, 10, "a", "bench_press", (1, 1, 100))], Groups).Readings);
        Assert.Equal((5, 9.0), (reading.LoggedSets, reading.Rating));
    }
}
