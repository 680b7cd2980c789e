using Analytics.Statistics.Distributions;
using MathNet.Numerics;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>Every row of distributions.csv, made in 40-digit arithmetic: quantiles to 1e-11, probabilities to 1e-10 with all their digits in the far tail.</summary>
public sealed class DistributionAccuracy : AccuracySection
{
    private const string Source = "40-digit arithmetic";

    public override string Section => "10";

    public override string Title => "Distributions";

    public override void Fill(AccuracyBook book)
    {
        foreach (var row in Oracle.Rows("distributions.csv"))
        {
            double p1 = Parameter(row[2]), p2 = Parameter(row[3]), x = Oracle.Number(row[4]);
            // Rows that hold 0 or 1 to 16 digits leave nothing relative to compare but the value itself.
            book.CheckPublished(
                $"{row[0]} {row[1]}", FormattableString.Invariant($"{row[2]} {row[3]} at {row[4]}"), Oracle.Number(row[5]),
                Value(row[0], row[1], p1, p2, x), row[1] == "quantile" ? 1e-11 : 1e-10, Source);
        }
    }

    internal static double Value(string law, string kind, double p1, double p2, double x) => (law, kind) switch
    {
        ("normal", "cdf") => NormalLaw.Cdf(x),
        ("normal", "quantile") => NormalLaw.Quantile(x),
        ("t", "cdf") => StudentLaw.Cdf(x, p1),
        ("t", "quantile") => StudentLaw.Quantile(x, p1),
        ("chisq", "cdf") => ChiSquareLaw.Cdf(x, p1),
        ("chisq", "quantile") => ChiSquareLaw.Quantile(x, p1),
        ("F", "cdf") => FisherLaw.Cdf(x, p1, p2),
        ("F", "quantile") => FisherLaw.Quantile(x, p1, p2),
        ("noncentral_t", "cdf") => NoncentralStudentLaw.Cdf(x, p1, p2),
        ("noncentral_t", "quantile") => NoncentralStudentLaw.Quantile(x, p1, p2),
        ("beta", "cdf") => BetaLaw.Cdf(x, p1, p2),
        ("beta", "quantile") => BetaLaw.Quantile(x, p1, p2),
        ("gamma", "cdf") => GammaLaw.Cdf(x, p1, p2),
        ("binomial", "cdf") => BinomialLaw.Cdf((int)x, (int)p1, p2),
        ("lgamma", "value") => GammaLaw.LogGamma(x),
        ("erf", "value") => SpecialFunctions.Erf(x),
        _ => throw new InvalidOperationException($"Unknown law {law} {kind}."),
    };

    private static double Parameter(string text) => text.Length == 0 ? 0 : Oracle.Number(text);
}
