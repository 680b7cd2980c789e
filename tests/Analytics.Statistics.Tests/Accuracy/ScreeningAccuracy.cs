using Analytics.Statistics.Distributions;
using Analytics.Statistics.Screening;
using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>Outlier screens and robust centre.</summary>
public sealed class ScreeningAccuracy : AccuracySection
{
    internal static readonly double[] TietjenMoore = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];

    public override string Section => "14";

    public override string Title => "Outlier screening";

    public override void Fill(AccuracyBook book)
    {
        book.Check("constants", "1/qnorm(.75)", Quantiles.NormalConsistency, 1e-15);
        book.Check("constants", "qnorm(.75)", NormalLaw.Quantile(0.75), 1e-14);
        book.Check("constants", "1.253314_meanAD=sqrt(pi/2)", Quantiles.NormalConsistencyOfMean, 1e-14);
        foreach (var n in new[] { 3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 20, 25, 30, 50, 100 })
        {
            book.Check($"grubbs_n{n}", "two_sided_.05", GrubbsTest.CriticalValue(n));
            book.Check($"grubbs_n{n}", "two_sided_.01", GrubbsTest.CriticalValue(n, alpha: 0.01));
            book.Check($"grubbs_n{n}", "one_sided_.05", GrubbsTest.CriticalValue(n, OutlierSide.High));
            book.Check($"grubbs_n{n}", "one_sided_.01", GrubbsTest.CriticalValue(n, OutlierSide.Low, 0.01));
        }

        var esd = GeneralisedEsd.Of(Oracle.Column("rosner-1983.csv", 1), 10);
        for (var i = 0; i < 10; i++)
        {
            book.Check($"rosner_esd_{i + 1}", "removed", esd.Steps[i].Suspect.Value, 0);
            book.Check($"rosner_esd_{i + 1}", "R", esd.Steps[i].Suspect.Statistic);
            book.Check($"rosner_esd_{i + 1}", "lambda", esd.Steps[i].Critical);
        }

        // The peer rounds the constant to 1.4826 and stops at a step of a millionth of the spread.
        var spread = 1.4826 * Quantiles.MedianAbsoluteDeviation(TietjenMoore);
        book.Check("huber_tm", "s_MAD", spread);
        book.Check("huber_tm", "mu", HuberMean.Of(TietjenMoore, spread: spread).Centre.Value);
    }
}
