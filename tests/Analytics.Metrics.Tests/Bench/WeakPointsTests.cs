using Analytics.Metrics.Bench;
using Analytics.Metrics.Bench.Inputs;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Tests.Seasons;
using Analytics.Statistics;
using Analytics.Statistics.Change;

namespace Analytics.Metrics.Tests.Bench;

public class WeakPointsTests
{
    private static readonly BenchSquad s_bench = Benches.Bench(Benches.Days(40, [.. Benches.Retest, Course.June],
        ("own", Benches.Drawn(11)), ("a", Benches.Drawn(12))), retest: true, null, "a");

    private static readonly SketchCard s_card = s_bench.Judge(Benches.Own(v => v[0], "own"));

    [Fact]
    public void Of_AnyCard_IsWeightiestFirst()
    {
        Assert.Equal(s_card.Weak.Select(p => p.Weight).OrderDescending(), s_card.Weak.Select(p => p.Weight));
        Assert.Equal(s_card.Weak.Take(3), s_card.Weakest);
        Assert.All(s_card.Weak, p => Assert.InRange(p.Weight, 0, 1));
        Assert.Equal(s_card.Weak.Count, s_card.Weak.Select(p => p.What).Distinct().Count());
        Assert.All(s_card.Weak, p => Assert.EndsWith(".", p.Text, StringComparison.Ordinal));
    }

    // Nothing to complain of but what no season can mend: three points are left.
    [Fact]
    public void Of_CardWithoutFlaws_HasThreeAllTheSame()
    {
        var clean = s_card with
        {
            Sketch = s_card.Sketch with { Sources = ["oba2014"] },
            Repeats = s_card.Repeats with { Icc = s_card.Repeats.Icc! with { Value = 0.95 } },
            Quality = s_card.Quality with { DetectableChange = null, UsableShare = 1 },
            Overlap = null, Mass = null, Ends = new(40, 1, 1, 0), Groups = [],
            Movement = s_card.Movement! with { Mean = s_card.Movement.Mean with { Mean = s_card.Movement.Mean.Mean with { Interval = new(1, 2) } }, Still = null },
            Conditions = s_card.Conditions with { TestersNoted = 2, Others = [], Testers = [] },
            Verdict = s_card.Verdict with { DecidedBy = null },
            Cost = new(0, []),
        };

        Assert.Equal(["one squad", "not held against play", "not reviewed"], WeakPoints.Of(clean, BenchRule.Standard).Select(p => p.What));
    }

    [Fact]
    public void Of_OneFlawAtATime_NamesIt()
    {
        Assert.Equal(0.95, Point(s_card with { Repeats = new(RepeatKind.None, null, 0, []) }, "no repeats")!.Weight);
        Assert.Equal(0.75, Point(s_card with { Repeats = s_card.Repeats with { Kind = RepeatKind.SameDay } }, "no retest")!.Weight);
        Assert.Contains("30 % of what it shows on one day is error", Point(s_card with { Repeats = s_card.Repeats with { Icc = s_card.Repeats.Icc! with { Value = 0.7, Interval = new(0.5, 0.8) } } }, "error")!.Text, StringComparison.Ordinal);
        Assert.Null(Point(s_card with { Repeats = s_card.Repeats with { Icc = s_card.Repeats.Icc! with { Value = 0.9 } } }, "error"));
        Assert.NotNull(Point(s_card with { Repeats = s_card.Repeats with { Athletes = 15 } }, "few repeats"));
        Assert.Null(Point(s_card with { Repeats = s_card.Repeats with { Athletes = 16 } }, "few repeats"));
        Assert.Contains("would be \u201Cno more than noise\u201D", Point(s_card with { Verdict = s_card.Verdict with { DecidedBy = BenchVerdict.Noise } }, "one player decides")!.Text, StringComparison.Ordinal);
        Assert.StartsWith("7 of 40 players share the lowest value", Point(s_card with { Ends = new(40, 7, 1, 0) }, "floor")!.Text, StringComparison.Ordinal);
        Assert.StartsWith("7 of 40 players share the highest value", Point(s_card with { Ends = new(40, 1, 7, 0) }, "ceiling")!.Text, StringComparison.Ordinal);
        Assert.Equal("0 values lie far from the group, 4 outside what is believed. Look at these first.", Point(s_card with { Groups = [], Ends = new(40, 1, 1, 4) }, "odd values")!.Text);
        Assert.Equal("On a usual testing day 50 % of the squad have a value.", Point(s_card with { Quality = s_card.Quality with { UsableShare = 0.5 } }, "few players have it")!.Text);
        Assert.NotNull(Point(s_card with { Movement = null }, "one occasion only"));
        Assert.Equal("5 minutes more for every player.", Point(s_card with { Cost = new(5, []) }, "costs time")!.Text);
        Assert.Null(Point(s_card with { Cost = new(1.9, []) }, "costs time"));
        Assert.NotNull(Point(s_card, "tester not noted"));
        Assert.NotNull(Point(s_card, "no published source"));
        Assert.Equal("10 values on another scale (hand) are not compared. Test everybody the same way.", Point(s_card with { Conditions = s_card.Conditions with { Others = [new("hand", 10, null)] } }, "several scales")!.Text);
    }

    // 8 seen where 2 matter: 4 times, two doublings of the five that would weigh in full.
    [Fact]
    public void Of_ChangeSeenLate_IsTooCoarseForOnePlayer()
    {
        var quality = s_card.Quality with { DetectableChange = 8, Worthwhile = SmallestWorthwhileChange.Anchored(2, "set") };

        var point = Point(s_card with { Quality = quality }, "too coarse for one player")!;
        Assert.Equal(0.4, point.Weight, 1e-12);
        Assert.Contains("change by 4.0 times what matters", point.Text, StringComparison.Ordinal);
        Assert.Null(Point(s_card with { Quality = quality with { DetectableChange = 2 } }, "too coarse for one player"));
    }

    [Theory]
    [InlineData(0.8, 0.31, 0.9, "(rank correlation 0.80 (0.31 to 0.90))")]
    [InlineData(-0.8, -0.9, -0.31, "(rank correlation -0.80 (-0.90 to -0.31))")]
    [InlineData(0.8, 0.3, 0.9, null)]
    [InlineData(0.6, 0.4, 0.7, null)]
    public void Of_OrderOfALibraryMetric_CountsWhereItsLowerLimitDoes(double rank, double low, double high, string? says)
    {
        var row = s_card.Overlap!.Rows[0];
        var like = row with { WithinGroups = row.Squad with { Value = rank, Interval = new(low, high) } };

        var point = Point(s_card with { Overlap = s_card.Overlap with { Own = null, Rows = [like] } }, "much like a library metric");
        if (says is null) Assert.Null(point);
        else Assert.Contains(says, point!.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_RankOfBodyMass_CountsAboveSevenTenths()
    {
        var rank = s_card.Overlap!.Rows[0].Squad with { Interval = new(0.5, 0.9) };

        Assert.Contains("body mass 0.71 (0.50 to 0.90)", Point(s_card with { Mass = new(40, rank with { Value = 0.71 }, null, null, null) }, "mostly body mass")!.Text, StringComparison.Ordinal);
        Assert.Null(Point(s_card with { Mass = new(40, rank with { Value = 0.7 }, null, null, null) }, "mostly body mass"));
    }

    // Still by 0.6 of a typical error, which is more than half of one, and not by none.
    [Fact]
    public void Of_Movement_IsHeldAgainstTrainingAndStandingStill()
    {
        var movement = s_card.Movement!;
        SeasonMovement With(MeanChange of, double value, double low, double high, bool still) => still
            ? movement with { TypicalError = 1, Still = of with { Mean = of.Mean with { Value = value, Interval = new(low, high) } } }
            : movement with { Mean = of with { Mean = of.Mean with { Value = value, Interval = new(low, high) } } };

        Assert.NotNull(Point(s_card with { Movement = With(movement.Mean, 0.5, -1, 2, still: false) }, "did not move"));
        Assert.Null(Point(s_card with { Movement = With(movement.Mean, 1.5, 1, 2, still: false) }, "did not move"));
        Assert.Contains("shifted by 0.6 typical errors", Point(s_card with { Movement = With(movement.Mean, -0.6, -0.9, -0.3, still: true) }, "moves without training")!.Text, StringComparison.Ordinal);
        Assert.Null(Point(s_card with { Movement = With(movement.Mean, 0.5, 0.2, 0.8, still: true) }, "moves without training"));
        Assert.Null(Point(s_card with { Movement = With(movement.Mean, 0.6, -0.1, 1.3, still: true) }, "moves without training"));
    }

    [Fact]
    public void Of_ErrorThatIsLargeAndNotExplained_IsNotUnderstood()
    {
        var error = new PropagatedError(1, null, null, [], [], 2, 2, new(1.5, 2.5), "why");

        Assert.Equal("why", Point(s_card with { Error = error }, "error not understood")!.Text);
        Assert.Null(Point(s_card with { Error = error with { Together = 1.9 } }, "error not understood"));
        Assert.Null(Point(s_card with { Error = error with { RatioInterval = new(0.9, 2.5) } }, "error not understood"));
        Assert.Null(Point(s_card with { Error = error with { Ratio = 1.2, RatioInterval = new(1.1, 1.3) } }, "error not understood"));
    }

    // A far share of its own is no weakness; a rule of one's own moves the limit.
    [Fact]
    public void Of_LittleOfItsOwn_FollowsTheRuleGiven()
    {
        var own = s_card.Overlap!.Own!;
        var card = s_card with { Overlap = s_card.Overlap with { Own = own with { Value = 0.5, Interval = new(0.3, 0.7) } } };

        Assert.Null(Point(card, "little of its own"));
        Assert.NotNull(WeakPoints.Of(card, BenchRule.Standard with { OwnShareSmall = 0.4 }).FirstOrDefault(p => p.What == "little of its own"));
    }

    [Fact]
    public void Of_FormulaThatFails_CountsThePlayerDays()
    {
        var sketch = Sketch.Day("own_idea", "Own idea", "1", Direction.Higher, (0, 1e6), day => day.AthleteId == "a3" ? throw new NotSupportedException() : 5);
        var card = s_bench.Judge(sketch);

        Assert.Equal(3, card.TroubledDays);
        Assert.Equal("For 3 player-days the formula failed; see the list.", card.Weak.Single(p => p.What == "formula fails").Text);
    }

    private static WeakPoint? Point(SketchCard card, string what) => WeakPoints.Of(card, BenchRule.Standard).SingleOrDefault(p => p.What == what);
}
