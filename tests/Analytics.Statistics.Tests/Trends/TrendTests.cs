using Analytics.Statistics.Trends;

namespace Analytics.Statistics.Tests.Trends;

public sealed class TrendTests
{
    private static readonly double[] s_times = [1, 2, 4, 7, 8, 11, 13, 14];
    private static readonly double[] s_values = [3, 3.5, 3.1, 5, 4.6, 5.5, 7, 6.1];

    [Fact]
    public void Repeated_medians_of_the_nile_are_those_of_scipy()
    {
        // scipy.stats.siegelslopes, SciPy 1.10.1, on years 1871 to 1970.
        var siegel = RepeatedMedians.Of(Oracle.Column("nile.csv", 0), Oracle.Column("nile.csv", 1));
        Oracle.Close(-2.155494505494505, siegel.Slope, 1e-13);
        Oracle.Close(5040.837637362637, siegel.Intercept, 1e-13);
    }

    [Fact]
    public void Intercept_of_the_nile_is_that_of_scipy()
        => Oracle.Close(5886.8, TheilSen.Of(Oracle.Column("nile.csv", 0), Oracle.Column("nile.csv", 1)).InterceptByMedians, 1e-13);

    [Fact]
    public void Shift_and_scale_carry_over()
    {
        double[] moved = [.. s_values.Select(v => 100 + 2 * v)];
        double[] later = [.. s_times.Select(t => 40 + 7 * t)];
        var (a, b) = (TheilSen.Of(s_times, s_values, 0.9), TheilSen.Of(later, moved, 0.9));
        Oracle.Close(a.Slope * 2 / 7, b.Slope, 1e-12);
        Oracle.Close(a.Interval!.Value.High * 2 / 7, b.Interval!.Value.High, 1e-12);
        Oracle.Close(RepeatedMedians.Of(s_times, s_values).Slope * 2 / 7, RepeatedMedians.Of(later, moved).Slope, 1e-12);
        var (c, d) = (LeastSquaresTrend.Of(s_times, s_values), LeastSquaresTrend.Of(later, moved));
        Oracle.Close(c.Line.Slope * 2 / 7, d.Line.Slope, 1e-12);
        Oracle.Close(c.Line.P!.Value, d.Line.P!.Value, 1e-10);
        Oracle.Close(c.DurbinWatson!.Value, d.DurbinWatson!.Value, 1e-10);
        Assert.Equal(MannKendall.Of(s_values).P, MannKendall.Of(moved).P);
    }

    [Fact]
    public void Order_of_the_points_does_not_matter_to_a_slope()
    {
        double[] x = [.. s_times.Reverse()], y = [.. s_values.Reverse()];
        Assert.Equal(TheilSen.Of(s_times, s_values).Slopes, TheilSen.Of(x, y).Slopes);
        Oracle.Close(LeastSquaresTrend.Of(s_times, s_values).Line.Slope, LeastSquaresTrend.Of(x, y).Line.Slope, 1e-13);
        Oracle.Close(RepeatedMedians.Of(s_times, s_values).Slope, RepeatedMedians.Of(x, y).Slope, 1e-13);
        // Without the order of time successive residuals mean nothing.
        Assert.Null(TheilSen.Of(x, y).SerialCorrelation);
        Assert.Null(LeastSquaresTrend.Of(x, y).DurbinWatson);
    }

    [Fact]
    public void One_wild_value_does_not_move_the_median_slopes_much()
    {
        double[] wild = [.. s_values];
        wild[3] = 900;
        Assert.Equal(TheilSen.Of(s_times, s_values).Slope, TheilSen.Of(s_times, wild).Slope, 0.1);
        Assert.Equal(RepeatedMedians.Of(s_times, s_values).Slope, RepeatedMedians.Of(s_times, wild).Slope, 0.1);
    }

    [Fact]
    public void Exact_p_of_a_perfect_rise()
    {
        // One order of 5! and its mirror: 2/120.
        Oracle.Close(2.0 / 120, MannKendall.Of([1, 2, 3, 4, 5]).ExactP!.Value, 1e-13);
        Assert.Equal(-MannKendall.Of([1, 2, 3, 4, 5]).S, MannKendall.Of([5, 4, 3, 2, 1]).S);
        Assert.Null(MannKendall.Of([1, 2, 2, 4, 5]).ExactP);
    }

    [Fact]
    public void Interval_of_the_median_slope_covers_at_its_level()
    {
        var gauss = new Gaussian(8);
        const int runs = 2000;
        var held = 0;
        double[] x = [.. Enumerable.Range(0, 15).Select(i => (double)i)];
        for (var run = 0; run < runs; run++)
            held += TheilSen.Of(x, [.. x.Select(t => 0.3 * t + gauss.Next())], ranks: SlopeRanks.Interpolated).Interval!.Value.Contains(0.3) ? 1 : 0;
        Assert.Equal(0.95, held / (double)runs, 0.015);
    }
}
