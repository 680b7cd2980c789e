using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Trials;
using static Analytics.Metrics.Tests.Profile.Invented;

namespace Analytics.Metrics.Tests.Profile;

public class SquadNeedsTests
{
    private static readonly PublishedError s_one = new(null, 1, "key");
    private static readonly Dictionary<string, string> s_nobody = [];
    private static readonly Metric s_strength = Metric("strength", published: s_one);
    private static readonly Metric s_power = Metric("power", quality: Quality.ExplosivePower, published: s_one);
    private static readonly Metric s_sprint = Metric("sprint", better: Direction.Lower, quality: Quality.Acceleration, published: s_one);
    private static readonly Metric s_bulk = Metric("bulk", better: Direction.Neither, quality: Quality.Body, published: s_one);
    private static readonly Metric s_carried = Metric("momentum", quality: Quality.Momentum, published: s_one);

    /// <summary>Eight middling athletes and a9 with the values given; NaN leaves a test out.</summary>
    private static List<AthleteDay> Squad9(params (string Metric, double Value)[] ninth)
    {
        double[] middling = [44, 46, 48, 50, 50, 52, 54, 56];
        return
        [
            .. middling.Select((v, i) => Day($"a{i + 1}", March,
                Number(v, metric: "strength"), Number(100 - v, metric: "power"), Number(v, metric: "sprint"), Number(v, metric: "bulk"), Number(v, metric: "momentum"), Number(v, metric: "press"))),
            Day("a9", March, [.. ninth.Where(n => !double.IsNaN(n.Value)).Select(n => (Trial)Number(n.Value, metric: n.Metric))]),
        ];
    }

    private static Need Ninth(SquadProfile profile, List<AthleteDay> days, IReadOnlyDictionary<string, string>? away = null, params Metric[] metrics)
        => profile.Needs([.. (metrics.Length == 0 ? [s_strength, s_power, s_sprint] : metrics).Select(m => profile.Standing(m, days))], [], away ?? s_nobody)
            .Athletes.Single(a => a.AthleteId == "a9");

    private static SquadProfile NineOf(params string[] groups) => new() { Squad = Squad(9, groups) };

    [Fact]
    public void Needs_FurthestBehind_IsFirstAndTheNextIsKept()
    {
        // Behind in strength (40), further behind in the sprint (65 s where less is better), level in power.
        var need = Ninth(NineOf(), Squad9(("strength", 40), ("power", 50), ("sprint", 65)));
        Assert.Equal(Quality.Acceleration, need.First!.Quality);
        Assert.Equal([Quality.MaximalStrength], need.Also.Select(q => q.Quality));
        Assert.True(need.First.Probability >= 0.80);
        Assert.True(need.First.Deficit > need.Also[0].Deficit);
        Assert.True(need.First.Standing.Difference > 0);
        Assert.Null(need.Undecided);
        Assert.Equal(3, need.Looks);
    }

    [Fact]
    public void Needs_NothingBehind_IsUndecided()
    {
        var need = Ninth(NineOf(), Squad9(("strength", 50), ("power", 51), ("sprint", 49)));
        Assert.Null(need.First);
        Assert.Equal("no quality clearly behind the group", need.Undecided);
    }

    [Fact]
    public void Needs_TwoTestsOnly_IsUndecidedHoweverWeak()
        => Assert.Equal("only 2 qualities can be compared, 3 are needed", Ninth(NineOf(), Squad9(("strength", 10), ("power", 10))).Undecided);

    [Fact]
    public void Needs_Injured_IsNotJudged()
    {
        var need = Ninth(NineOf(), Squad9(("strength", 10), ("power", 10), ("sprint", 90)), new Dictionary<string, string> { ["a9"] = "injured" });
        Assert.Equal((null, "not judged: injured", 0), (need.First, need.Undecided, need.Looks));
    }

    [Fact]
    public void Needs_NotTested_IsSaid() => Assert.Equal("not tested", Ninth(NineOf(), Squad9()).Undecided);

    [Fact]
    public void Needs_AloneInTheGroup_PassesOnTheReason()
    {
        string[] groups = ["A", "A", "A", "A", "A", "A", "A", "A", "B"];
        var profile = new SquadProfile { Squad = [.. groups.Select((g, i) => new SquadMember($"a{i + 1}", g))] };
        Assert.Equal("no test can be compared: only 1 of the group did this test, 3 are needed",
            Ninth(profile, Squad9(("strength", 10), ("power", 10), ("sprint", 90))).Undecided);
    }

    [Fact]
    public void Needs_TestsOfOneQualityDisagree_IsUndecided()
    {
        var press = Metric("press", published: s_one);
        var days = Squad9(("strength", 40), ("press", 60), ("power", 50), ("sprint", 50));
        Assert.Equal("tests of the same quality disagree", Ninth(NineOf(), days, null, s_strength, press, s_power, s_sprint).Undecided);
        Assert.Equal(Quality.MaximalStrength, Ninth(NineOf(), Squad9(("strength", 40), ("press", 42), ("power", 50), ("sprint", 50)), null, s_strength, press, s_power, s_sprint).First!.Quality);
    }

    [Fact]
    public void Needs_BodyAndMomentum_AreNotQualitiesToTrain()
    {
        var need = Ninth(NineOf(), Squad9(("strength", 50), ("power", 50), ("sprint", 50), ("bulk", 10), ("momentum", 10)), null, s_strength, s_power, s_sprint, s_bulk, s_carried);
        Assert.Equal("no quality clearly behind the group", need.Undecided);
        Assert.Equal(3, need.Looks);
    }

    [Fact]
    public void Needs_ClearLoss_TravelsBesideTheNeed()
    {
        var profile = NineOf() with { Worthwhile = new Dictionary<string, double> { ["strength"] = 1 } };
        var before = Squad9(("strength", 60));
        var days = Squad9(("strength", 40), ("power", 50), ("sprint", 50));
        var needs = profile.Needs([profile.Standing(s_strength, days)], [profile.Change(s_strength, before, days)], s_nobody);
        var loss = Assert.Single(needs.Athletes.Single(a => a.AthleteId == "a9").ClearLosses);
        Assert.Equal(("strength", -20), (loss.Metric.Id, loss.Change.Difference));
        Assert.All(needs.Athletes.Where(a => a.AthleteId != "a9"), a => Assert.Empty(a.ClearLosses));
    }

    [Fact]
    public void Needs_WholeSquad_ListsEverybodyOnceAndCountsLooks()
    {
        var profile = NineOf();
        var days = Squad9(("strength", 40), ("power", 50));
        var needs = profile.Needs([.. new[] { s_strength, s_power, s_sprint }.Select(m => profile.Standing(m, days))], [], s_nobody);
        Assert.Equal(profile.Squad.Select(m => m.Id), needs.Athletes.Select(a => a.AthleteId));
        Assert.Equal(8 * 3 + 2, needs.Looks);
        Assert.Equal(needs.Athletes.Where(a => a.First is not null).Sum(a => 1 - a.First!.Probability), needs.ExpectedWrong, 12);
    }
}
