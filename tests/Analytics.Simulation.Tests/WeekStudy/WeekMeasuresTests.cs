using Analytics.Planning.People;
using Analytics.Simulation.WeekStudy.Squads;
using Analytics.Simulation.WeekStudy.Weeks;
using Trained = Analytics.Planning.Exercises.TrainedQuality;

namespace Analytics.Simulation.Tests.WeekStudy;

/// <summary>The figures of the study on weeks made by hand.</summary>
public class WeekMeasuresTests
{
    private static readonly StudiedQuality s_speed = StudiedQuality.All[0], s_jump = StudiedQuality.All[2];

    [Fact]
    public void SetsDifference_IsWithinGroupsAndLeavesOutWhoTrainsApart()
    {
        // Group A: 8 against the mean of 4 and 6. The one between and the one apart do not count; in B nobody is without.
        var squad = Squad(
            Player("A", s_speed, 1.4, 8), Player("A", s_speed, -0.1, 4), Player("A", s_speed, 0, 6), Player("A", s_speed, 0.5, 99),
            Player("A", s_speed, 1.2, 50) with { IsApart = true }, Player("B", s_speed, 2, 70));
        Assert.Equal(3, SetsDifference.Of(squad, s_speed, q => q.IsDeficit, q => q.AllSets));
        Assert.Equal(3, SetsDifference.Of(squad, null, q => q.IsDeficit, q => q.AllSets));
        Assert.Null(SetsDifference.Of(squad, s_jump, q => q.IsDeficit, q => q.AllSets));
    }

    [Fact]
    public void SetsDifference_OfAllQualities_HoldsEachAgainstItsOwn()
    {
        // +3 in one quality, -1 in the other: on average 1.
        var squad = Squad(Player("A", s_speed, 1.4, 8), Player("A", s_speed, -1, 5), Player("A", s_jump, 1.4, 19), Player("A", s_jump, -1, 20));
        Assert.Equal(1, SetsDifference.Of(squad, null, q => q.IsDeficit, q => q.AllSets));
    }

    [Fact]
    public void DefaultRule_IsKept_WhereAllWithoutACallDoTheSame()
        => Assert.True(DefaultRule.IsKept(Squad(Uncalled("A", "x"), Uncalled("A", "x"), Uncalled("B", "y"), Uncalled("A", "z") with { IsApart = true }, Uncalled("A", "z") with { HasCall = true })));

    [Fact]
    public void DefaultRule_IsBroken_ByOneWhoDoesSomethingElse()
    {
        Assert.False(DefaultRule.IsKept(Squad(Uncalled("A", "x"), Uncalled("A", "z"))));
        Assert.False(DefaultRule.IsKept(Squad(Uncalled("A", "x"), Uncalled("A", "x") with { HasOwnForNeed = true })));
        Assert.False(DefaultRule.IsKept(Squad(Uncalled("A", "x")) with { Defaults = [new("A", 4, 4, IsOneEach: false)] }));
    }

    [Fact]
    public void Calls_TellWhyNoNeedIsCalled()
    {
        static Call Of(double? probability, string reason, bool isNeed = false) => Calls.Of(new QualityNeed(Trained.ExplosivePower, probability, reason, isNeed));
        Assert.Equal(Call.Need, Of(0.9, "", isNeed: true));
        Assert.Equal(Call.NotSure, Of(0.7, ""));
        Assert.Equal(Call.TestsDisagree, Of(null, "cannot say: tests disagree: one; another"));
        Assert.Equal(Call.CannotSay, Of(null, "cannot say: no test of it"));
    }

    private static PlannedSquad Squad(params PlayerWeek[] players) => new(true, 0, false, players, [new("A", 4, 4, true), new("B", 4, 3, true)]);

    private static PlayerWeek Player(string group, StudiedQuality quality, double behind, int sets)
        => Uncalled(group, "x") with { Qualities = [new(quality, behind, IsPlanted: false, Call.NotSure, OwnSets: 0, AllSets: sets)] };

    private static PlayerWeek Uncalled(string group, string work) => new(0, group, IsApart: false, [], work, HasCall: false, HasOwnForNeed: false, IsUntestedOpen: true);
}
