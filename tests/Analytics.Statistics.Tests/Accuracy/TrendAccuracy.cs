using Analytics.Statistics.Trends;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>Trends: Sen's printed example [sen1968], the Nile series, twelve invented values.</summary>
public sealed class TrendAccuracy : AccuracySection
{
    public override string Section => "6";

    public override string Title => "Trends and correlation";

    public override void Fill(AccuracyBook book)
    {
        Sen(book);
        var nile = Oracle.Column("nile.csv", 1);
        Test(book, "nile_MK", MannKendall.Of(nile));
        Slope(book, "nile_sen", nile);
        var twelve = Oracle.Column("trend-twelve.csv", 1);
        Test(book, "trend12_MK", MannKendall.Of(twelve));
        Slope(book, "trend12_sen", twelve);
        Line(book, twelve);
    }

    private static void Sen(AccuracyBook book)
    {
        var sen = TheilSen.Of([1, 2, 3, 4, 10, 12, 18], [9, 15, 19, 20, 45, 55, 78], 0.93);
        book.Check("sen1968", "n_pairs", sen.Slopes.Count, 0);
        book.Check("sen1968", "slope_median", sen.Slope, 1e-14);
        book.Check("sen1968", "slope_min", sen.Slopes[0], 1e-14);
        book.Check("sen1968", "slope_max", sen.Slopes[^1], 1e-14);
        book.Check("sen1968", "intercept_median(y)-b*median(x)", sen.InterceptByMedians, 1e-14);
        book.Check("sen1968", "intercept_median(y-bx)", sen.InterceptOfResiduals, 1e-14);
        book.Check("sen1968", "lo93", sen.Interval!.Value.Low, 1e-14);
        book.Check("sen1968", "hi93", sen.Interval!.Value.High, 1e-14);
    }

    private static void Test(AccuracyBook book, string set, MannKendall test)
    {
        book.Check(set, "n", test.N, 0);
        book.Check(set, "S", test.S, 0);
        book.Check(set, "varS", test.Variance, 1e-14);
        book.Check(set, "z", test.Z, 1e-13);
        book.Check(set, "p", test.P, 1e-12);
        book.Check(set, "tau_a", test.TauA, 1e-13);
        book.Check(set, "tau_b", test.TauB, 1e-13);
    }

    private static void Slope(AccuracyBook book, string set, double[] y)
    {
        var (rounded, between) = (TheilSen.Of(y), TheilSen.Of(y, ranks: SlopeRanks.Interpolated));
        book.Check(set, "slope", rounded.Slope, 1e-12);
        book.Check(set, "N", rounded.Slopes.Count, 0);
        book.Check(set, "C", rounded.Reach, 1e-12);
        book.Check(set, "M1", (rounded.Slopes.Count - rounded.Reach) / 2, 1e-12);
        book.Check(set, "M2", (rounded.Slopes.Count + rounded.Reach) / 2, 1e-12);
        book.Check(set, "lo_round", rounded.Interval!.Value.Low, 1e-12);
        book.Check(set, "hi_round", rounded.Interval!.Value.High, 1e-12);
        book.Check(set, "lo_interp", between.Interval!.Value.Low, 1e-12);
        book.Check(set, "hi_interp", between.Interval!.Value.High, 1e-12);
    }

    private static void Line(AccuracyBook book, double[] y)
    {
        var line = LeastSquaresTrend.Of([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12], y);
        const string set = "trend12_OLS";
        book.Check(set, "intercept", line.Line.Intercept, 1e-12);
        book.Check(set, "slope", line.Line.Slope, 1e-12);
        book.Check(set, "se_int", line.Line.InterceptError, 1e-12);
        book.Check(set, "se_slope", line.Line.SlopeError, 1e-12);
        book.Check(set, "t_slope", line.Line.Slope / line.Line.SlopeError, 1e-12);
        book.Check(set, "p_slope", line.Line.P!.Value, 1e-11);
        book.Check(set, "slope_lo95", line.Line.SlopeEstimate().Interval!.Value.Low, 1e-11);
        book.Check(set, "slope_hi95", line.Line.SlopeEstimate().Interval!.Value.High, 1e-11);
        book.Check(set, "resid_sd", line.Line.ResidualStandardDeviation, 1e-12);
        book.Check(set, "R2", line.Line.RSquared!.Value, 1e-12);
        book.Check("trend12_rank", "durbin_watson", line.DurbinWatson!.Value, 1e-12);
        book.Check("trend12_rank", "lag1_resid", line.SerialCorrelation!.LagOne, 1e-12);
    }
}
