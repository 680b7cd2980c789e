using Analytics.Metrics.Bench;
using Analytics.Metrics.Tests.Profile;
using Analytics.Metrics.Tests.Seasons;
using Analytics.Statistics;

namespace Analytics.Metrics.Tests.Bench;

/// <summary>Sketches that are made of library metrics are seen as such; one of its own is seen too. 40 athletes in 4 groups.</summary>
public class LibraryOverlapTests
{
    private const int Athletes = 40;

    private static readonly Func<int, int, double> s_a = Benches.Drawn(1), s_b = Benches.Drawn(2), s_c = Benches.Drawn(3), s_new = Benches.Drawn(4);

    // Goes with a at 0.95 and more, as times at 10 and at 20 yards do.
    private static readonly Func<int, int, double> s_nearA = Benches.Drawn(5, 0.01, i => Math.Log(s_a(i, 9)) - 4 + 0.02 * (i % 5 - 2));

    private static readonly BenchSquad s_bench = Bench(Benches.Retest, retest: true);

    [Fact]
    public void Copy_InAnotherUnit_IsNothingNew()
    {
        var card = s_bench.Judge(Benches.Own(v => 2.2 * v[0], "a"));

        Assert.Equal(["a"], card.Overlap!.BestTwo.Select(m => m.Id));
        Assert.Equal((0.0, new Interval(0, 0)), (card.Overlap.Own!.Value, card.Overlap.Own.Interval));
        Assert.Equal(1, card.Overlap.GivenByTwo!.Value, 1e-9);
        Assert.Equal("a", card.Overlap.Rows[0].Metric.Id);
        Assert.Equal(1, card.Overlap.Rows[0].WithinGroups!.Value, 1e-9);
        Assert.Equal(BenchVerdict.NothingNew, card.Verdict.Kind);
        Assert.Equal("It puts players of a group in the same order as a: rank correlation 1.00.", card.Verdict.Why);
    }

    [Theory]
    [InlineData("square", "a", "")]
    [InlineData("reciprocal", "a", "")]
    [InlineData("product", "a", "b")]
    [InlineData("ratio", "a", "c")]
    [InlineData("ratio of two that go together", "a", "near_a")]
    [InlineData("power law", "b", "c")]
    public void MadeOfOneOrTwo_HasNothingOfItsOwn(string how, string one, string two)
    {
        var card = s_bench.Judge(Benches.Own(v => how switch
        {
            "square" => v[0] * v[0],
            "reciprocal" => 1e4 / v[0],
            "product" => v[0] * v[1],
            "power law" => 10 * v[0] / Math.Pow(v[1], 0.67),
            _ => 100 * v[0] / v[1],
        }, two.Length == 0 ? [one] : [one, two]));

        Assert.Equal(new[] { one, two }.Where(n => n.Length > 0), card.Overlap!.BestTwo.Select(m => m.Id).Order(StringComparer.Ordinal));
        Assert.Equal((0.0, new Interval(0, 0)), (card.Overlap.Own!.Value, card.Overlap.Own.Interval));
        Assert.Null(card.Overlap.Own.RemainderRepeats);
    }

    // The new quality is drawn apart from all others: its share is 1 but for the best pair of six that chance makes look alike. One correlation of 36 degrees of
    // freedom has SD 1/6; twice that in both of a pair would take (2/6)² + (2/6)² = 0.22, and a little more is left for the largest of six.
    [Fact]
    public void New_HasMostOfItsOwn()
    {
        var card = s_bench.Judge(Benches.Own(v => v[0], "new"));

        Assert.Equal(2, card.Overlap!.BestTwo.Count);
        Assert.InRange(card.Overlap.Own!.Value!.Value, 0.6, 1);
        Assert.Equal(BenchVerdict.SaysSomethingNew, card.Verdict.Kind);
        Assert.Contains("is in no pair of library metrics, the nearest being", card.Verdict.Why, StringComparison.Ordinal);
    }

    // Level differences between groups are taken off: a and the sketch differ by group only. What is left goes together by chance, SD 1/√35 = 0.17; allowed three.
    [Fact]
    public void Same_OnlyBetweenGroups_IsNotTheSame()
    {
        double Group(int i) => i % 4;
        var days = Benches.Days(Athletes, Benches.Retest, ("a", (i, d) => s_a(i, d) * Math.Exp(Group(i))), ("new", (i, d) => s_new(i, d) * Math.Exp(Group(i))));
        var card = Benches.Bench(days, true, null, "a").Judge(Benches.Own(v => v[0], "new"));

        var row = Assert.Single(card.Overlap!.Rows);
        Assert.True(row.Squad.Value > 0.9);
        Assert.InRange(row.WithinGroups!.Value, -0.5, 0.5);
        Assert.Equal(Math.Abs(row.WithinGroups.Value), row.Size);
        Assert.InRange(card.Overlap.Own!.Value!.Value, 0.6, 1);
    }

    [Fact]
    public void OneOccasion_Product_IsGivenByTwo()
    {
        var card = Bench([Course.March], retest: false).Judge(Benches.Own(v => v[0] * v[1], "a", "b"));

        Assert.Null(card.Overlap!.Own);
        Assert.Equal(["a", "b"], card.Overlap.BestTwo.Select(m => m.Id));
        Assert.Equal(1, card.Overlap.GivenByTwo!.Value, 1e-9);
        Assert.Equal("one occasion only: without retest days what remains cannot be told from test error", card.Overlap.Basis);
        Assert.Equal((BenchVerdict.NothingNew, "a and b give 100 % of the differences between players of a group."), (card.Verdict.Kind, card.Verdict.Why));
    }

    // Adjusted for two predictors, what chance gives of a quality drawn apart stays well below the 0.90 of the rule; 0.5 is twice what the pair above may take.
    [Fact]
    public void OneOccasion_New_CannotBeTold()
    {
        var card = Bench([Course.March], retest: false).Judge(Benches.Own(v => v[0], "new"));

        Assert.InRange(card.Overlap!.GivenByTwo!.Value, 0, 0.5);
        Assert.Equal(BenchVerdict.CannotTellYet, card.Verdict.Kind);
    }

    // Three in ten lack a on the second day: fewer than 80 % have it on both.
    [Fact]
    public void MetricOfTooFew_IsNotOneOfTheTwo()
    {
        var days = Benches.Days(Athletes, Benches.Retest, ("a", (i, d) => d == 1 && i % 10 < 3 ? double.NaN : s_a(i, d)), ("b", s_b), ("own", (i, d) => s_a(i, d)));
        var card = Benches.Bench(days, true, null, "a", "b").Judge(Benches.Own(v => v[0], "own"));

        Assert.Equal(["b"], card.Overlap!.BestTwo.Select(m => m.Id));
        Assert.Equal("a", card.Overlap.Rows[0].Metric.Id);
    }

    // A metric that is the same for everybody gives nothing and breaks nothing, whatever rounding leaves of it.
    [Fact]
    public void FlatMetric_IsNeverOneOfTheTwo()
    {
        var days = Benches.Days(Athletes, Benches.Retest, ("flat", (_, _) => 0.1), ("b", s_b), ("new", s_new));

        Assert.Equal(["b"], Benches.Bench(days, true, null, "flat", "b").Judge(Benches.Own(v => v[0], "new")).Overlap!.BestTwo.Select(m => m.Id));
        Assert.Empty(Benches.Bench(days, true, null, "flat").Judge(Benches.Own(v => v[0], "new")).Overlap!.BestTwo);
        Assert.Empty(Benches.Bench(days, false, null, "flat").Judge(Benches.Own(v => v[0], "new")).Overlap!.Rows);
    }

    // Within groups the second day is the first one turned round; between groups it returns. Nothing is left to share out, and the reason is said.
    [Fact]
    public void ReturnsBetweenGroupsOnly_SaysSo()
    {
        var days = Benches.Days(Athletes, Benches.Retest, ("a", s_a), ("own", (i, d) => 100 * (1 + i % 4) + (d == 0 ? 1 : -1) * (i / 4 - 4.5)));
        var card = Benches.Bench(days, true, null, "a").Judge(Benches.Own(v => v[0], "own"));

        Assert.Null(card.Overlap!.Own!.Value);
        Assert.Equal((BenchVerdict.CannotTellYet, "It returns over the squad, but between players of a group that cannot be told from noise: it may do no more than tell groups apart."), (card.Verdict.Kind, card.Verdict.Why));
    }

    // Sketches are not compared with sketches.
    [Fact]
    public void Library_LeavesOutMetricsOnTrial()
        => Assert.Equal(["a"], s_bench.Beside(Invented.Metric("a"), Benches.Own(v => v[0], "b").Metric).Library.Select(m => m.Id));

    private static BenchSquad Bench(IReadOnlyList<DateOnly> dates, bool retest) => Benches.Bench(
        Benches.Days(Athletes, dates, ("a", s_a), ("near_a", s_nearA), ("b", s_b), ("c", s_c), ("new", s_new)), retest, null, "a", "near_a", "b", "c");
}
