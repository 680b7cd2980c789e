using Analytics.Metrics.Bench;

namespace Analytics.Metrics.Tests.Bench;

public class GroupDistributionTests
{
    // Distances from the medians 12 and 3 are −2..2 and −2, −1, 0, 1, 27: their median is 0, the median of their sizes 1. Printed form of the modified z: 0.6745 × 27/1 = 18.21 [iglewiczhoaglin1993].
    [Fact]
    public void Of_TwoGroups_NamesTheValueFarFromItsGroup()
    {
        var (values, _, profile) = Benches.One(("Line", 10), ("Line", 11), ("Line", 12), ("Line", 13), ("Line", 14), ("Backs", 1), ("Backs", 2), ("Backs", 3), ("Backs", 4), ("Backs", 30));
        var groups = GroupDistribution.Of(values, profile);

        Assert.Equal([("Line", 5, 12.0, 10.0, 14.0), ("Backs", 5, 3.0, 1.0, 30.0)], groups.Select(g => (g.Group, g.N, g.Median, g.Lowest, g.Highest)));
        // 10 to 14: variance 10/4, and √2.5 = 1.58113883.
        Assert.Equal(1.58113883, groups[0].StandardDeviation!.Value, 1e-8);
        Assert.Empty(groups[0].Far);
        var far = Assert.Single(groups[1].Far);
        Assert.Equal(("a10", 30.0), (far.AthleteId, far.Value));
        Assert.Equal(18.21, far.Distance, 0.01);
    }

    // 15 lies in the middle of all, but far below linemen; a value low in its own group has a negative distance.
    [Fact]
    public void Of_ValueThatIsUsualInAnotherGroup_IsFarInItsOwn()
    {
        var (values, _, profile) = Benches.One(("Line", 30), ("Line", 31), ("Line", 32), ("Line", 15), ("Line", 33), ("Backs", 14), ("Backs", 15), ("Backs", 16), ("Backs", 17), ("Backs", 13));

        Assert.Equal([("a4", true)], GroupDistribution.Of(values, profile).SelectMany(g => g.Far).Select(f => (f.AthleteId, f.Distance < 0)));
    }

    // Athletes alone in their group are their own middle; counted as distances of 0 they would shrink the spread of the others until 2 kg is far.
    [Fact]
    public void Of_AthletesAloneInTheirGroup_DoNotShrinkTheSpread()
    {
        (string, double)[] line = [("Line", 10), ("Line", 11), ("Line", 13), ("Line", 14), ("Line", 16), ("Line", 18)];
        var (values, _, profile) = Benches.One([.. line, .. Enumerable.Range(0, 12).Select(i => ($"alone {i}", 100.0 * i))]);
        var groups = GroupDistribution.Of(values, profile);

        Assert.Empty(groups.SelectMany(g => g.Far));
        Assert.All(groups.Skip(1), g => Assert.Equal((1, (double?)null, g.Median), (g.N, g.StandardDeviation, g.Lowest)));
    }

    [Fact]
    public void Of_FewerThanFiveAthletes_CallsNoneFar()
    {
        var (values, _, profile) = Benches.One(("Line", 10), ("Line", 10.1), ("Line", 10.2), ("Line", 99));

        Assert.Empty(GroupDistribution.Of(values, profile).Single().Far);
    }

    [Fact]
    public void Of_EqualValues_CallsNoneFar()
    {
        var (values, _, profile) = Benches.One([.. Enumerable.Range(0, 8).Select(_ => ("Line", 10.0))]);

        var group = Assert.Single(GroupDistribution.Of(values, profile));

        Assert.Equal((8, 10.0, 0.0, 0), (group.N, group.Median, group.StandardDeviation!.Value, group.Far.Count));
    }
}
