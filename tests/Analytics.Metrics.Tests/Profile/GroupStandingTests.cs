using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Trials;
using Analytics.Statistics.Distributions;
using static Analytics.Metrics.Tests.Profile.Invented;

namespace Analytics.Metrics.Tests.Profile;

public class GroupStandingTests
{
    private static readonly PublishedError s_one = new(null, 1, "key");

    // One group, 10 20 30 40 50 60 70: mean 40, SD 21.602469, error 1: weight 466.6667 − 1 over 466.6667.
    [Fact]
    public void Of_OneGroup_StandardisesAndShrinksAsByHand()
    {
        var standing = new SquadProfile { Squad = Squad(7) }.Standing(Metric(published: s_one), Days(March, 10, 20, 30, 40, 50, 60, 70));
        var group = Assert.Single(standing.Groups);
        Assert.Equal((7, 40, 40, 25, 55, 1), (group.Values.N, group.Middle, group.Values.Median, group.Values.LowerQuartile, group.Values.UpperQuartile, group.Weight));
        var low = standing.For("a1")!;
        Assert.Equal(-30 / 21.602469, low.Score!.Value, 6);
        Assert.Equal(1 / 21.602469, low.ScoreError!.Value, 7);
        Assert.Equal(465.6667 / 466.6667, low.Weight!.Value, 6);
        Assert.Equal(-30 * 465.6667 / 466.6667, low.Likely!.Value, 4);
        Assert.Equal(-30, low.Difference);
        Assert.Null(low.Reason);
    }

    // Probability by hand: weight w = 465.6667/466.6667, guess −10 w = −9.978571, margin 0.2 √465.6667 = 4.315859,
    // deviation √(w + w²·66.6667) = 8.20848; t = (9.978571 − 4.315859)/8.20848 = 0.68986; R: pt(0.68986, 6) = 0.741968.
    [Fact]
    public void ProbabilityBehind_OneGroup_CountsTheMiddlesOwnError()
    {
        var standing = new SquadProfile { Squad = Squad(7) }.Standing(Metric(published: s_one), Days(March, 10, 20, 30, 40, 50, 60, 70));
        Assert.Equal(4.315859, standing.Margin.Value!.Value, 5);
        Assert.Equal(0.74197, standing.For("a3")!.ProbabilityBehind!.Value, 5);
        Assert.Equal(1, standing.For("a3")!.ProbabilityBehind!.Value + standing.For("a5")!.ProbabilityBehind!.Value
            + Within(standing.For("a3")!, standing.Margin.Value.Value), 9);
    }

    // a1 and the others at the same values, but a1 estimated with personal error 3, shared 2: SE √(1 + 9 + 4) = 3.741657. Mean squared error within
    // the group (7 · 1 + 9)/7 = 2.285714, the shared part left out; true variance 466.666667 − 2.285714 = 464.380952; w = 464.380952/478.380952 = 0.970735.
    [Fact]
    public void Of_EstimatedValue_CountsLessAndLeavesTheMiddleAlone()
    {
        IReadOnlyList<AthleteDay> days = [Day("a1", March, Estimated(10, 3, 2)), .. Days(March, 10, 20, 30, 40, 50, 60, 70).Skip(1)];
        var standing = new SquadProfile { Squad = Squad(7) }.Standing(Metric(published: s_one), days);
        Assert.Equal(40, standing.Groups[0].Middle);
        Assert.Equal(2.285714, standing.Spread!.ErrorVariance!.Value, 6);
        var low = standing.For("a1")!;
        Assert.Equal(3.741657 / 21.602469, low.ScoreError!.Value, 6);
        Assert.Equal(0.970735, low.Weight!.Value, 6);
        Assert.Equal(1 / 21.602469, standing.For("a2")!.ScoreError!.Value, 6);
    }

    [Fact]
    public void Of_LowerIsBetter_TurnsTheScoreNotTheDifference()
    {
        var low = new SquadProfile { Squad = Squad(7) }.Standing(Metric(better: Direction.Lower, published: s_one), Days(March, 10, 20, 30, 40, 50, 60, 70)).For("a1")!;
        Assert.Equal(30 / 21.602469, low.Score!.Value, 6);
        Assert.Equal(-30, low.Difference);
        Assert.True(low.ProbabilityBehind < 0.01);
    }

    // Five groups of 6, 6, 6, 6 and 3; the small one is pulled harder toward the squad and known less well.
    [Fact]
    public void Of_SmallGroup_IsPulledHarderTowardTheSquad()
    {
        string[] groups = [.. "AAAAAABBBBBBCCCCCCDDDDDDEEE".Select(c => $"{c}")];
        double[] shape = [-5, -2, 0, 0, 2, 5];
        double[] values = [.. shape.Select(v => 46 + v), .. shape.Select(v => 50 + v), .. shape.Select(v => 54 + v), .. shape.Select(v => 50 + v), 56, 60, 64];
        var profile = new SquadProfile { Squad = [.. groups.Select((g, i) => new SquadMember($"a{i + 1}", g))] };
        var standing = profile.Standing(Metric(published: s_one), Days(March, values));
        Assert.Equal(["A", "B", "C", "D", "E"], standing.Groups.Select(g => g.Group));
        Assert.Equal(60, standing.Groups[4].Values.Median);
        Assert.InRange(standing.Groups[4].Middle, 55, 59.9);
        Assert.True(standing.Groups[4].Weight < standing.Groups[0].Weight);
        Assert.True(standing.Groups[4].MiddleError > standing.Groups[0].MiddleError);
    }

    [Fact]
    public void Of_ThreeGroups_KeepTheirOwnMeans()
    {
        var standing = new SquadProfile { Squad = Squad(9, "A", "B", "C") }.Standing(Metric(published: s_one), Days(March, 1, 20, 30, 2, 22, 33, 3, 24, 36));
        Assert.Equal([2.0, 22, 33], standing.Groups.Select(g => g.Middle));
        Assert.All(standing.Groups, g => Assert.Equal(1, g.Weight));
    }

    [Fact]
    public void Of_TwoOfAGroup_AreShownButNotCompared()
    {
        string[] groups = ["A", "A", "A", "A", "A", "A", "B", "B"];
        var profile = new SquadProfile { Squad = [.. groups.Select((g, i) => new SquadMember($"a{i + 1}", g))] };
        var b = profile.Standing(Metric(published: s_one), Days(March, 45, 48, 50, 50, 52, 55, 70, 90)).For("a8")!;
        Assert.Null(b.Score);
        Assert.Null(b.ProbabilityBehind);
        Assert.Equal("only 2 of the group did this test, 3 are needed", b.Reason);
    }

    [Fact]
    public void Of_AllEqual_HasNoScore()
    {
        var standing = new SquadProfile { Squad = Squad(7) }.Standing(Metric(published: s_one), Days(March, 50, 50, 50, 50, 50, 50, 50));
        Assert.All(standing.Athletes, a => Assert.Equal((null, "everybody scored the same"), (a.Score, a.Reason)));
    }

    [Fact]
    public void Of_SpreadBelowError_HasAScoreButNoProbability()
    {
        var standing = new SquadProfile { Squad = Squad(7) }.Standing(Metric(published: new(null, 50, "key")), Days(March, 10, 20, 30, 40, 50, 60, 70));
        Assert.All(standing.Athletes, a => Assert.Null(a.ProbabilityBehind));
        Assert.Contains("no more than test error explains", standing.Athletes[0].Reason, StringComparison.Ordinal);
        Assert.True(standing.Spread!.TrueVariance < 0);
    }

    [Fact]
    public void Of_NoErrorKnown_HasAScoreWithoutError()
    {
        var a = new SquadProfile { Squad = Squad(7) }.Standing(Metric(), Days(March, 10, 20, 30, 40, 50, 60, 70)).For("a1")!;
        Assert.NotNull(a.Score);
        Assert.Null(a.ScoreError);
        Assert.Contains("no error known", a.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_SameDayErrorOnly_GivesNoProbability()
    {
        var days = Enumerable.Range(1, 7).Select(i => Day($"a{i}", 10 * i, 10 * i + 1)).ToList();
        var a = new SquadProfile { Squad = Squad(7) }.Standing(Metric(), days).For("a1")!;
        Assert.Null(a.ProbabilityBehind);
        Assert.Contains("only same-day attempts", a.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_FewAthletes_SaysSo()
        => Assert.Contains("too few athletes", new SquadProfile { Squad = Squad(4) }.Standing(Metric(published: s_one), Days(March, 10, 20, 30, 40)).Athletes[0].Reason, StringComparison.Ordinal);

    [Fact]
    public void Of_AthleteOutsideTheSquadList_IsNamed()
    {
        var standing = new SquadProfile { Squad = Squad(6) }.Standing(Metric(published: s_one), Days(March, 10, 20, 30, 40, 50, 60, 70));
        Assert.Equal(["a7"], standing.WithoutGroup);
        Assert.Equal(6, standing.Athletes.Count);
    }

    private static double Within(AthleteStanding a, double margin)
        => StudentLaw.Cdf((margin - a.Likely!.Value) / a.LikelyError!.Value, 6) - StudentLaw.Cdf((-margin - a.Likely.Value) / a.LikelyError.Value, 6);
}
