using Analytics.Metrics.Bench;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Tests.Profile;
using Analytics.Statistics;
using Analytics.Statistics.Association;
using Analytics.Statistics.Reliability;

namespace Analytics.Metrics.Tests.Bench;

/// <summary>The rule of the bench at its edges: 8 players, 0 and 0.6 for the ICC, 0.25 and 0.10 for the own share, 0.95 for the order, 0.90 without a retest.</summary>
public class VerdictReasonTests
{
    private static readonly OwnShare s_share = OwnShare.Of(
        new([1, 2, 3, 4, 5, 6, 7, 9], [1, 2, 4, 3, 5, 7, 6, 9]), [new([2, 1, 3, 5, 4, 6, 8, 7], [1, 2, 3, 5, 4, 7, 8, 6])], options: new() { Resamples = 100 });

    private static readonly Repeatability s_sure = Repeats(0.9, 0.8, 0.95);

    private static readonly LibraryOverlap s_half = Overlap(0.5, 0.3, 0.7);

    [Theory]
    [InlineData(7, BenchVerdict.NoValues)]
    [InlineData(8, BenchVerdict.SaysSomethingNew)]
    public void Of_Players_NeedEight(int athletes, BenchVerdict verdict)
    {
        var (kind, why) = Verdict(s_half, athletes: athletes);

        Assert.Equal(verdict, kind);
        if (athletes == 7) Assert.Equal("7 players have a value; 8 are needed.", why);
    }

    [Theory]
    [InlineData(0.0, 0.59, BenchVerdict.Noise)]
    [InlineData(-0.4, 0.3, BenchVerdict.Noise)]
    [InlineData(0.0, 0.60, BenchVerdict.CannotTellYet)]
    [InlineData(-0.1, 0.9, BenchVerdict.CannotTellYet)]
    [InlineData(0.001, 0.59, BenchVerdict.SaysSomethingNew)]
    public void Of_IccThatHoldsZero_IsNoiseOnlyIfItStaysLow(double low, double high, BenchVerdict verdict)
        => Assert.Equal(verdict, Verdict(s_half, Repeats(0.3, low, high)).Kind);

    [Theory]
    [InlineData(0.02, 0.249, BenchVerdict.NothingNew)]
    [InlineData(0.0, 0.0, BenchVerdict.NothingNew)]
    [InlineData(0.02, 0.25, BenchVerdict.CannotTellYet)]
    [InlineData(0.10, 0.6, BenchVerdict.CannotTellYet)]
    [InlineData(0.101, 0.6, BenchVerdict.SaysSomethingNew)]
    [InlineData(0.101, 0.249, BenchVerdict.NothingNew)]
    public void Of_OwnShare_AtItsEdges(double low, double high, BenchVerdict verdict)
        => Assert.Equal(verdict, Verdict(Overlap(0.2, low, high)).Kind);

    // With few players two of many metrics give most of anything: only what they give nearly whole is old.
    [Theory]
    [InlineData(20, 0.5, BenchVerdict.NothingNew)]
    [InlineData(19, 0.979, BenchVerdict.CannotTellYet)]
    [InlineData(19, 0.98, BenchVerdict.NothingNew)]
    public void Of_SmallShareOfFewPlayers_NeedsACopy(int players, double given, BenchVerdict verdict)
    {
        var overlap = Overlap(0.02, 0.0, 0.2);
        var (kind, why) = Verdict(overlap with { Own = overlap.Own! with { N = players, FromOthers = given } });

        Assert.Equal(verdict, kind);
        if (kind == BenchVerdict.CannotTellYet) Assert.Equal("Of what returns on the second day 2 % (0 to 20 %) is its own beside a and b, but with 19 players two of many metrics give most of anything by chance; 20 are needed.", why);
    }

    [Theory]
    [InlineData(0.999, BenchVerdict.SaysSomethingNew)]
    [InlineData(0.998, BenchVerdict.CannotTellYet)]
    public void Of_SomethingNew_MustSurelyReturnWithinGroups(double returns, BenchVerdict verdict)
        => Assert.Equal(verdict, Verdict(s_half with { Own = s_half.Own! with { Returns = returns } }).Kind);

    // Noise comes before all else: an order that agrees by chance, or a share of nothing, does not count.
    [Fact]
    public void Of_Noise_ComesFirst()
        => Assert.Equal(BenchVerdict.Noise, Verdict(s_half with { Rows = [Row(1, null)] }, Repeats(0.1, -0.2, 0.4)).Kind);

    [Theory]
    [InlineData(0.97, 0.95, 0.98, BenchVerdict.NothingNew)]
    [InlineData(0.97, 0.949, 0.98, BenchVerdict.SaysSomethingNew)]
    [InlineData(-0.97, -0.98, -0.95, BenchVerdict.NothingNew)]
    [InlineData(-0.97, -0.98, -0.949, BenchVerdict.SaysSomethingNew)]
    [InlineData(0.0, -0.98, 0.98, BenchVerdict.SaysSomethingNew)]
    public void Of_SameOrder_NeedsItsLowerLimitToo(double rank, double low, double high, BenchVerdict verdict)
        => Assert.Equal(verdict, Verdict(s_half with { Rows = [Row(rank, new(low, high))] }).Kind);

    [Fact]
    public void Of_ExactOrderWithoutInterval_IsNothingNew()
    {
        Assert.Equal(BenchVerdict.NothingNew, Verdict(s_half with { Rows = [Row(-1, null)] }).Kind);
        Assert.Equal(BenchVerdict.SaysSomethingNew, Verdict(s_half with { Rows = [Row(0.97, null)] }).Kind);
    }

    [Theory]
    [InlineData(0.90, BenchVerdict.NothingNew)]
    [InlineData(0.899, BenchVerdict.CannotTellYet)]
    public void Of_WithoutRetest_TakesWhatTwoGive(double given, BenchVerdict verdict)
    {
        var (kind, why) = Verdict(s_half with { Own = null, GivenByTwo = given }, s_sure with { Kind = RepeatKind.SameDay });

        Assert.Equal((verdict, verdict == BenchVerdict.NothingNew ? "a and b give 90 % of the differences between players of a group." : "Too few players have it on two days within a week, so what it says cannot be told from its error."), (kind, why));
    }

    [Fact]
    public void Of_NothingToCompareWith_SaysWhy()
    {
        Assert.Equal((BenchVerdict.CannotTellYet, "It returns, but no two library metrics were done by enough of the same players on both days to say what is new in it."),
            Verdict(s_half with { Own = null, GivenByTwo = null }));
        Assert.Equal(BenchVerdict.CannotTellYet, Verdict(null, new(RepeatKind.None, null, 0, [])).Kind);
    }

    [Fact]
    public void Why_HasTheFigures()
    {
        Assert.Equal("On the retest day it does not return: ICC 0.10 (-0.20 to 0.40), which holds 0. A player's value says nothing about his next one.", Verdict(null, Repeats(0.1, -0.2, 0.4)).Why);
        Assert.Equal("20 players with repeats are too few: ICC 0.50 (-0.10 to 0.90), anything from noise to a good test.", Verdict(null, Repeats(0.5, -0.1, 0.9)).Why);
        Assert.Equal("Of what returns on the second day only 5 % (0 to 20 %) is its own; the rest is in a and b.", Verdict(Overlap(0.05, 0, 0.2)).Why);
        Assert.Equal("It returns (ICC 0.90 (0.80 to 0.95)), and of what returns 50 % (30 to 70 %) is in no pair of library metrics, the nearest being a and b.", Verdict(s_half).Why);
        Assert.Equal("Of what returns on the second day 20 % (5 to 60 %) is its own beside a and b: it may be little or much.", Verdict(Overlap(0.2, 0.05, 0.6)).Why);
    }

    // Without one player the ICC's interval reaches 0 and stays low: he alone makes it more than noise.
    [Fact]
    public void Verdict_ThatOnePlayerMakes_SaysWhatItWouldBe()
    {
        var repeats = Repeats(0.5, 0.1, 0.7) with { LeaveOneOut = [Icc(0.5, 0.1, 0.7), Icc(0.2, -0.1, 0.5)] };
        var (alone, sure) = (SketchVerdict.Of(20, repeats, Overlap(0.9, 0.8, 1), BenchRule.Standard), SketchVerdict.Of(20, s_sure, Overlap(0.9, 0.8, 1), BenchRule.Standard));

        Assert.Equal((BenchVerdict.SaysSomethingNew, BenchVerdict.Noise, "says something new"), (alone.Kind, alone.DecidedBy, alone.Words));
        Assert.Null(sure.DecidedBy);
    }

    [Fact]
    public void Words_OfEveryVerdict_Differ()
        => Assert.Equal(["too few values", "no more than noise", "nothing new", "says something new", "cannot tell yet"], Enum.GetValues<BenchVerdict>().Select(v => v.Words()));

    [Fact]
    public void Statement_HoldsTheLimits()
    {
        foreach (var text in new[] { "below 0.60", "less than 25 %", "0.95 or more", "without retest days, the best two give 90 %", "more than 10 %", "our choice, no source" }) Assert.Contains(text, BenchRule.Standard.Statement, StringComparison.Ordinal);
        Assert.Contains("less than 30 %", (BenchRule.Standard with { OwnShareSmall = 0.3 }).Statement, StringComparison.Ordinal);
    }

    private static (BenchVerdict Kind, string Why) Verdict(LibraryOverlap? overlap, Repeatability? repeats = null, int athletes = 20)
        => VerdictReason.Of(athletes, repeats ?? s_sure, overlap, BenchRule.Standard);

    private static Repeatability Repeats(double icc, double low, double high) => new(RepeatKind.RetestDays, Icc(icc, low, high), 20, []);

    private static IntraclassCorrelation Icc(double icc, double low, double high) => new(IccForm.ConsistencySingle, icc, new(low, high), 20, 2, 0);

    // No leave-one-out values of the share: its limits stand as given. The first row has no order worth speaking of.
    private static LibraryOverlap Overlap(double share, double low, double high)
    {
        Metric a = Invented.Metric("a"), b = Invented.Metric("b");
        return new([Row(0.2, new(-0.1, 0.5))], [a, b], s_share with { Value = share, Interval = new(low, high), LeaveOneOut = [], N = 20, Returns = 1 }, 1 - share, "");
    }

    private static OverlapRow Row(double rank, Interval? interval)
    {
        var correlation = Correlation.Spearman([1, 2, 3, 4, 5, 6, 7, 9], [1, 2, 4, 3, 5, 7, 6, 9]) with { Value = rank, Interval = interval };
        return new(Invented.Metric("a"), correlation, correlation);
    }
}
