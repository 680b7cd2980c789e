using Analytics.Metrics.Bench;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Tests.Catalogue;
using Analytics.Metrics.Tests.Seasons;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Bench;

/// <summary>Scales, days and testers a sketch depends on, of jumps whose heights are written out.</summary>
public class ConditionsTests
{
    private static readonly MetricSketch s_height = Sketch.Each<JumpTrial>("own_idea", "Own idea", "cm", Direction.Higher, (1, 100), (jump, _) => jump.Height);

    // On the mat everybody jumps 2.0 to 2.7 cm higher than on the plate on the same day: differences −2.0, −2.1, ..., mean −2.35.
    [Fact]
    public void OtherScale_OfThoseWithBoth_HasItsShift()
    {
        var conditions = Of(false, Day(Course.Baseline, 9, i => i < 8
            ? [Jump(40 + i), Jump(38 + i - 0.1 * i) with { Method = JumpMethod.ForcePlate }]
            : [Jump(44)]));

        Assert.Equal("mat", conditions.Series);
        var other = Assert.Single(conditions.Others);
        Assert.Equal(("force plate", 8, 8), (other.Series, other.Values, other.Shift!.Mean.N));
        Assert.Equal(-2.35, other.Shift.Mean.Value, 1e-9);
    }

    [Fact]
    public void OtherScale_OfOtherPlayers_HasNoShift()
    {
        var other = Assert.Single(Of(false, Day(Course.Baseline, 12, i => [i < 8 ? Jump(40 + i) : Jump(38) with { Method = JumpMethod.ForcePlate }])).Others);

        Assert.Equal((4, null), (other.Values, other.Shift));
    }

    [Fact]
    public void OtherScales_AreListedByTheirNumber()
        => Assert.Equal(["video", "force plate"], Of(false, Day(Course.Baseline, 12, i => [Jump(40 + i) with { Method = i < 7 ? JumpMethod.Mat : i < 9 ? JumpMethod.ForcePlate : JumpMethod.Video }])).Others.Select(o => o.Series));

    // Everybody jumps 1 cm higher on the second retest day, give or take half a centimetre.
    [Fact]
    public void RetestShift_IsThatOfTheRetestDays()
    {
        var shift = Of(true, Day(Course.Baseline, 10, i => [Jump(40 + i)]), Day(Course.Retest, 10, i => [Jump(41 + i + (i % 2 == 0 ? 0.5 : -0.5))])).RetestShift!;

        Assert.Equal((10, 1.0), (shift.Mean.N, Math.Round(shift.Mean.Value, 9)));
        Assert.Null(Of(false, Day(Course.Baseline, 10, i => [Jump(40 + i)])).RetestShift);
    }

    // KB reads 1.5 cm more than MS. Five are tested by MS first, five by KB first, so the day takes no part; initials are typed in both cases.
    [Fact]
    public void Testers_BothWaysRound_AreContrasted()
    {
        var conditions = Of(true, Day(Course.Baseline, 10, i => [By(i < 5 ? "MS" : "KB", 40 + i + (i < 5 ? 0 : 1.5))]), Day(Course.Retest, 10, i => [By(i < 5 ? "kb" : "ms", 40 + i + (i < 5 ? 1.5 : 0) + 0.1 * (i % 5 - 2))]));

        Assert.Equal(2, conditions.TestersNoted);
        var contrast = Assert.Single(conditions.Testers);
        Assert.Equal(("KB", "MS", 10, 5), (contrast.First, contrast.Second, contrast.Shift.N, contrast.SecondWasLater));
        Assert.Equal(-1.5, contrast.Shift.Value, 1e-9);
    }

    // KB reads 1.5 cm more than MS for everybody to the last digit, and the second day is 2 cm higher: the difference is plain, its doubt is not known.
    [Fact]
    public void Testers_WithoutSpreadInEitherOrder_HaveNoInterval()
    {
        var contrast = Assert.Single(Of(true, Day(Course.Baseline, 10, i => [By(i < 5 ? "MS" : "KB", 40 + (i < 5 ? 0 : 1.5))]), Day(Course.Retest, 10, i => [By(i < 5 ? "KB" : "MS", 42 + (i < 5 ? 1.5 : 0))])).Testers);

        Assert.Equal(-1.5, contrast.Shift.Value, 1e-9);
        Assert.Null(contrast.Shift.Interval);
    }

    // The second day is 2 cm higher for everybody and no tester reads otherwise; ten go from KB to MS and two the other way, give or take.
    [Fact]
    public void Testers_UnlikeNumbersOfEachOrder_DoNotTakeTheDayForTheTester()
    {
        var contrast = Assert.Single(Of(true, Day(Course.Baseline, 12, i => [By(i < 10 ? "KB" : "MS", 40 + i)]), Day(Course.Retest, 12, i => [By(i < 10 ? "MS" : "KB", 42 + i + (i % 2 == 0 ? 0.3 : -0.3))])).Testers);

        Assert.Equal((12, 10, true), (contrast.Shift.N, contrast.SecondWasLater, contrast.BothOrders));
        Assert.Equal(0, contrast.Shift.Value, 1e-9);
        Assert.True(contrast.Shift.Interval!.Value.Contains(0));
    }

    [Theory]
    [InlineData("KB", "MS", 10)]
    [InlineData("MS", "KB", 0)]
    public void Testers_OneWayRoundOnly_SaysSo(string first, string second, int later)
    {
        var contrast = Assert.Single(Of(true, Day(Course.Baseline, 10, i => [By(first, 40 + i)]), Day(Course.Retest, 10, i => [By(second, 41 + i)])).Testers);

        Assert.Equal(("KB", "MS", later), (contrast.First, contrast.Second, contrast.SecondWasLater));
        Assert.Equal(later == 0 ? -1 : 1, contrast.Shift.Value, 1e-9);
    }

    [Fact]
    public void Testers_OfFewerThanEight_OrWeeksApart_AreNotContrasted()
    {
        Assert.Empty(Of(true, Day(Course.Baseline, 7, i => [By("KB", 40 + i)]), Day(Course.Retest, 7, i => [By("MS", 41 + i)])).Testers);
        var apart = Of(false, Day(Course.Baseline, 10, i => [By("KB", 40 + i)]), Day(Course.June, 10, i => [By("MS", 41 + i)]));
        Assert.Equal((0, 2), (apart.Testers.Count, apart.TestersNoted));
    }

    // The value rests on the best jump, and so on who took that; a day whose mean holds jumps of two testers is nobody's.
    [Fact]
    public void Tester_IsWhoTookTheTrialsThatCount()
    {
        var best = s_height.BestOf();
        var day = Days.With(By("KB", 40), By("MS", 44), Jump(39));

        Assert.Equal("MS", TesterUsed.Of(best.Metric, day));
        Assert.Null(TesterUsed.Of(s_height.Metric, day));
        Assert.Null(TesterUsed.Of(best.Metric, Days.With(Jump(40))));
        Assert.Null(TesterUsed.Of(best.Metric, Days.With(By("KB", 40), Jump(44))));
    }

    // Days without one tester's trials are made up, and a formula that fails on them has not failed.
    [Fact]
    public void Testers_LookedFor_LeaveNoTroubles()
    {
        var sketch = Sketch.Day("own_idea", "Own idea", "cm", Direction.Higher, (1, 100), day => day.Of<JumpTrial>().Max(j => j.Height!.Value));
        var bench = Bench(true, Day(Course.Baseline, 10, i => [By("KB", 40 + i)]), Day(Course.Retest, 10, i => [By("MS", 41 + i)]));
        var card = bench.Judge(sketch);

        Assert.Single(card.Conditions.Testers);
        Assert.Empty(sketch.Troubles);
        Assert.Equal(0, card.TroubledDays);
    }

    [Fact]
    public void Nothing_HasNoConditions()
    {
        var conditions = Of(false, Day(Course.Baseline, 3, _ => []));

        Assert.Equal((null, 0, null, 0, 0), (conditions.Series, conditions.Others.Count, conditions.RetestShift, conditions.Testers.Count, conditions.TestersNoted));
    }

    private static JumpTrial Jump(double centimetres) => Days.Jump(JumpKind.Countermovement) with { Height = Length.FromCentimetres(centimetres) };

    private static JumpTrial By(string tester, double centimetres) => Jump(centimetres) with { Tester = tester };

    private static IReadOnlyList<AthleteDay> Day(DateOnly date, int athletes, Func<int, Trial[]> trials)
        => [.. Enumerable.Range(0, athletes).Select(i => new AthleteDay { AthleteId = $"a{i + 1}", Date = date, Trials = trials(i) })];

    private static BenchSquad Bench(bool retest, params IReadOnlyList<AthleteDay>[] days) => Benches.Bench(days, retest, ["Line", "Backs"]);

    private static Conditions Of(bool retest, params IReadOnlyList<AthleteDay>[] days)
    {
        var bench = Bench(retest, days);
        return Conditions.Of(bench, s_height, bench.Values(s_height.Metric));
    }
}
