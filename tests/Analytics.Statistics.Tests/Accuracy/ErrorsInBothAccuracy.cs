using Analytics.Statistics.Association;
using Analytics.Statistics.Trends;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>Lines with error in both columns: Pearson's points with York's weights [pearson1901; york2004], two peak-flow meters, attenuation.</summary>
public sealed class ErrorsInBothAccuracy : AccuracySection
{
    public override string Section => "13";

    public override string Title => "Error in both columns";

    public override void Fill(AccuracyBook book)
    {
        double[] x = Oracle.Column("pearson-york.csv", 0), y = Oracle.Column("pearson-york.csv", 1);
        foreach (var (name, lambda) in new[] { ("1", 1.0), ("0.5", 0.5), ("4", 4.0) })
            Line(book, "pearson1901_deming_lambda" + name, ErrorsInBoth.Deming(x, y, lambda), "intercept");
        Others(book, x, y);
        York(book, YorkLine.Of(x, y, Oracle.Column("pearson-york.csv", 2), Oracle.Column("pearson-york.csv", 3)));
        PeakFlow(book);
        book.Check("attenuation", "r_obs.38_rxx.25_ryy.55", Attenuation.Of(0.38, 0.25, 0.55).Corrected, 1e-14);
        book.Check("attenuation", "r_obs.42_rxx.8_ryy.7", Attenuation.Of(0.42, 0.8, 0.7).Corrected, 1e-14);
        book.Check("attenuation", "obs_from_true.6_rxx.9_ryy.8", Attenuation.Expected(0.6, 0.9, 0.8), 1e-14);
        book.Check("attenuation", "slope_obs0.5_rxx.8_corrected", Attenuation.CorrectedSlope(0.5, 0.8), 1e-14);
        book.Check("attenuation", "slope_true1_rxx.75_expected_ols", Attenuation.ExpectedSlope(1, 0.75), 1e-14);
    }

    private static void Line(AccuracyBook book, string set, ErrorsInBoth line, string name)
    {
        book.Check(set, "intercept", line.Intercept, 1e-11);
        book.Check(set, "slope", line.Slope, 1e-12);
        book.Check(set, "jack_" + name, line.Jackknife!.Intercept, 1e-10);
        book.Check(set, "jack_slope", line.Jackknife!.Slope, 1e-10);
        book.Check(set, "jack_se_" + name, line.InterceptError!.Value, 1e-9);
        book.Check(set, "jack_se_slope", line.SlopeError!.Value, 1e-9);
    }

    private static void Others(AccuracyBook book, double[] x, double[] y)
    {
        const string set = "pearson1901_others";
        var (line, back, middle) = (LeastSquaresTrend.Of(x, y), LeastSquaresTrend.Of(y, x), ErrorsInBoth.GeometricMean(x, y));
        book.Check(set, "ols_int", line.Line.Intercept, 1e-12);
        book.Check(set, "ols_slope", line.Line.Slope, 1e-12);
        book.Check(set, "inverse_ols_slope", 1 / back.Line.Slope, 1e-12);
        book.Check(set, "geometric_mean_slope", middle.Slope, 1e-12);
        book.Check(set, "gm_int", middle.Intercept, 1e-12);
        book.Check(set, "ss_perp_lambda1", ErrorsInBoth.Orthogonal(x, y).PerpendicularSquares, 1e-10);
    }

    private static void York(AccuracyBook book, YorkLine york)
    {
        book.Check("york", "intercept", york.Intercept, 1e-12);
        book.Check("york", "slope", york.Slope, 1e-12);
        book.Check("york", "S", york.Squares, 1e-12);
        book.Check("york", "S/(n-2)", york.ReducedSquares!.Value, 1e-12);
        book.Check("york", "se_intercept_York2004", york.InterceptError, 1e-11);
        book.Check("york", "se_slope_York2004", york.SlopeError, 1e-11);
        book.Check("york", "se_int_scaled", york.ScaledInterceptError!.Value, 1e-11);
        book.Check("york", "se_slope_scaled", york.ScaledSlopeError!.Value, 1e-11);
    }

    private static void PeakFlow(AccuracyBook book)
    {
        double[] Column(int c) => Oracle.Column("bland-altman-1986.csv", c);
        Line(book, "pefr_deming_lambda1", ErrorsInBoth.Orthogonal(Column(1), Column(3)), "int");
        var means = ErrorsInBoth.DemingOfMeans(Column(1), Column(2), Column(3), Column(4));
        book.Check("pefr_deming_replicates", "lambda_from_replicates", means.Lambda!.Value, 1e-13);
        book.Check("pefr_deming_replicates", "intercept", means.Intercept, 1e-11);
        book.Check("pefr_deming_replicates", "slope", means.Slope, 1e-12);
    }
}
