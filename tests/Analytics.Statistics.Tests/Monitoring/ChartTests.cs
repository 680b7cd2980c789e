using Analytics.Statistics.Monitoring;

namespace Analytics.Statistics.Tests.Monitoring;

public sealed class ChartTests
{
    private static readonly double[] s_baseline = [41, 43.5, 40.2, 44, 42.2, 41.8, 43, 40.9];
    private static readonly double[] s_new = [42, 45, 47, 48.5, 39, 44];

    [Fact]
    public void Shift_and_scale_carry_over()
    {
        double[] moved = [.. s_baseline.Select(v => 3 * v - 50)], fresh = [.. s_new.Select(v => 3 * v - 50)];
        Oracle.Close(3 * IndividualsChart.FromBaseline(s_baseline).Limits.High - 50, IndividualsChart.FromBaseline(moved).Limits.High, 1e-12);
        Oracle.Close(3 * OwnBaseline.Of(s_baseline).Limits.Low - 50, OwnBaseline.Of(moved).Limits.Low, 1e-12);
        Oracle.Close(OwnBaseline.Of(s_baseline).P(47), OwnBaseline.Of(moved).P(91), 1e-10);
        var (a, b) = (EwmaChart.Known(42, 1.4).Points(s_new), EwmaChart.Known(76, 4.2).Points(fresh));
        Assert.Equal(a.Select(p => p.Signals), b.Select(p => p.Signals));
        var (c, d) = (CusumChart.Standardised(42, 1.4).Points(s_new), CusumChart.Standardised(76, 4.2).Points(fresh));
        Assert.Equal(c.Select(p => p.Signals), d.Select(p => p.Signals));
        Oracle.Close(3 * c[3].High, d[3].High, 1e-11);
    }

    [Fact]
    public void Limits_of_one_athlete_are_students_t()
    {
        // t(.975, 4) = 2.776445105 (R qt); mean 50, s 2.
        var own = OwnBaseline.Of([50, 52, 48, 50 + Math.Sqrt(4), 50 - Math.Sqrt(4)]);
        Oracle.Close(50 + 2.776445105 * 2 * Math.Sqrt(1.2), own.Limits.High, 1e-9);
        Oracle.Close(0.05, own.P(own.Limits.High), 1e-9);
        Assert.Contains("5 % of points", own.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Narrow_first_limits_widen_to_the_asymptotic_ones()
    {
        var chart = EwmaChart.Known(0, 1, 0.1, 2.814, EwmaLimits.TimeVarying);
        var highs = Enumerable.Range(1, 200).Select(t => chart.LimitsAt(t).High).ToArray();
        for (var i = 1; i < highs.Length; i++) Assert.True(highs[i] >= highs[i - 1]);
        Oracle.Close(2.814 * 0.1, highs[0], 1e-13);
        Oracle.Close(EwmaChart.Known(0, 1, 0.1, 2.814).LimitsAt(1).High, highs[^1], 1e-12);
    }

    [Fact]
    public void Cusum_sees_a_fall_on_its_low_side()
    {
        var points = CusumChart.Of(10, 0.5, 2).Points([10, 8, 8, 8]);
        Assert.Equal([0, 1.5, 3, 4.5], points.Select(p => p.Low));
        Assert.All(points, p => Assert.Equal(0, p.High));
        Assert.Equal([false, false, true, true], points.Select(p => p.Signals));
    }

    [Fact]
    public void Run_rules_find_their_patterns()
    {
        Assert.Equal([4], RunRule.OneBeyondThree.Signals([0, 1, -2.9, 2, 3.1, 0], 0, 1));
        Assert.Equal([3], RunRule.TwoOfThreeBeyondTwo.Signals([0, 2.1, 0, 2.2, 0, 0, -2.5, 2.5], 0, 1));
        Assert.Equal([4], RunRule.FourOfFiveBeyondOne.Signals([1.1, 0, 1.2, 1.3, 1.4, -1], 0, 1));
        Assert.Equal([7, 8], RunRule.EightOnOneSide.Signals([1, 1, 1, 1, 1, 1, 1, 1, 1, -1], 0, 1));
        Assert.Equal([8], RunRule.NineOnOneSide.Signals([5, 5, 5, 5, 5, 5, 5, 5, 5, -5], 4, 2));
    }

    [Fact]
    public void Every_chart_prints_its_false_alarms()
    {
        Assert.Contains("3.11 % of points", IndividualsChart.FromBaseline(s_baseline).ToString(), StringComparison.Ordinal);
        Assert.Contains("after 500 points", EwmaChart.Known(0, 1).ToString(), StringComparison.Ordinal);
        Assert.Contains("after 465 points", CusumChart.Standardised(0, 1).ToString(), StringComparison.Ordinal);
        Assert.Contains("no rate can be stated", CusumChart.Of(0, 1, 2).ToString(), StringComparison.Ordinal);
    }
}
