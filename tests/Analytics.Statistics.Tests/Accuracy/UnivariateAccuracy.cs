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
        book.Leave("sirstv", "one-way analysis of variance: no public type yet");
        book.Leave("norris", "straight line: no public type yet");
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
