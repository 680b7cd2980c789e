using Analytics.Statistics.Fitting;
using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>NIST univariate sets [nist-strd]. The hard ones are hard by their decimals, which binary numbers do not hold.</summary>
public sealed class UnivariateAccuracy : AccuracySection
{
    private const string Decimals = "the decimals of the data are not exact in binary; two passes cannot do better";

    public override string Section => "1";

    public override string Title => "Summaries";

    public override void Fill(AccuracyBook book)
    {
        Set(book, "michelso", Oracle.Column("nist-michelso.csv", 1), 1e-14, 1e-13);
        Set(book, "mavro", Oracle.Column("nist-mavro.csv", 1), 1e-14, 1e-12);
        Set(book, "lew", Oracle.Column("nist-lew.csv", 1), 1e-14, 1e-13);
        Set(book, "numacc1", [10000001, 10000003, 10000002], 1e-14, 1e-14);
        Set(book, "numacc2", Alternating(1.2, 1.1, 1.3), 1e-14, 1e-13);
        Set(book, "numacc3", Alternating(1000000.2, 1000000.1, 1000000.3), 1e-14, 1e-9);
        Set(book, "numacc4", Alternating(10000000.2, 10000000.1, 10000000.3), 1e-14, 1e-8);
        OneWay(book);
        Line(book);
    }

    private static void OneWay(AccuracyBook book)
    {
        var anova = OneWayAnova.Of([.. Oracle.Rows("nist-sirstv.csv").GroupBy(r => r[0]).Select(g => (IReadOnlyList<double>)[.. g.Select(r => Oracle.Number(r[1]))])]);
        book.Check("sirstv", "df_between", anova.DfBetween, 0);
        book.Check("sirstv", "df_within", anova.DfWithin, 0);
        book.Check("sirstv", "SS_between", anova.BetweenSquares, 1e-12);
        book.Check("sirstv", "SS_within", anova.WithinSquares, 1e-12);
        book.Check("sirstv", "MS_between", anova.BetweenMeanSquare, 1e-12);
        book.Check("sirstv", "MS_within", anova.WithinMeanSquare, 1e-12);
        book.Check("sirstv", "F", anova.F, 1e-12);
        book.Check("sirstv", "R2", anova.RSquared, 1e-12);
        book.Check("sirstv", "resid_sd", anova.ResidualStandardDeviation, 1e-12);
    }

    private static void Line(AccuracyBook book)
    {
        var line = StraightLine.Of(Oracle.Column("nist-norris.csv", 1), Oracle.Column("nist-norris.csv", 0));
        book.Check("norris", "intercept", line.Intercept, 1e-12);
        book.Check("norris", "slope", line.Slope, 1e-14);
        book.Check("norris", "se_intercept", line.InterceptError, 1e-12);
        book.Check("norris", "se_slope", line.SlopeError, 1e-12);
        book.Check("norris", "resid_sd", line.ResidualStandardDeviation, 1e-12);
        book.Check("norris", "R2", line.RSquared!.Value, 1e-14);
        book.Check("norris", "MS_resid", line.ResidualMeanSquare, 1e-12);
        book.Check("norris", "F", line.F!.Value, 1e-12);
    }

    private static double[] Alternating(double first, double low, double high)
        => [first, .. Enumerable.Range(0, 1000).Select(i => i % 2 == 0 ? low : high)];

    private static void Set(AccuracyBook book, string set, double[] y, double mean, double spread)
    {
        book.Check(set, "n", y.Length, 0);
        book.Check(set, "mean", Moments.Mean(y), mean);
        book.Check(set, "sd", Moments.StandardDeviation(y), spread, Decimals);
        book.Check(set, "r1", Moments.LagOneAutocorrelation(y), spread, Decimals);
    }
}
