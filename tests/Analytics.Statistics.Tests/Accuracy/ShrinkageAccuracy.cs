using Analytics.Statistics.Shrinkage;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>Batting averages [efronmorris1975] and eight schools [rubin1981].</summary>
public sealed class ShrinkageAccuracy : AccuracySection
{
    private const double Tight = 1e-10;

    private static readonly double[] s_hits = Oracle.Column("efron-morris-1975.csv", 0);
    private static readonly double[] s_rest = Oracle.Column("efron-morris-1975.csv", 1);

    public override string Section => "11";

    public override string Title => "Shrinkage";

    public override void Fill(AccuracyBook book)
    {
        double[] averages = [.. s_hits.Select(h => h / 45)], printed = [.. averages.Select(a => Math.Round(a, 3, MidpointRounding.ToEven))];
        Raw(book, "baseball_raw_hits/45", averages, withErrors: true);
        Raw(book, "baseball_raw_3dp", printed, withErrors: false);
        Arcsine(book, "baseball_arcsin", averages, withPlayers: true);
        Arcsine(book, "baseball_arcsin_3dp", printed, withPlayers: false);
        Schools(book);
    }

    private static void Raw(AccuracyBook book, string @case, double[] averages, bool withErrors)
    {
        var mean = averages.Average();
        var result = JamesStein.Of(averages, mean * (1 - mean) / 45);
        book.Check(@case, "mean", result.Mean, Tight);
        book.Check(@case, withErrors ? "sigma2=ybar(1-ybar)/45" : "sigma2", result.ErrorVariance, Tight);
        book.Check(@case, "S", result.SumOfSquares, Tight);
        book.Check(@case, "shrink_B", 1 - result.Weight, Tight);
        book.Check(@case, "c=1-B", result.Weight, Tight);
        book.Check(@case, "js_Clemente", result.Values[0], Tight);
        if (!withErrors) return;
        book.Check(@case, "js_Alvis", result.Values[^1], Tight);
        Errors(book, @case, averages, s_rest, result);
    }

    private static void Arcsine(AccuracyBook book, string @case, double[] averages, bool withPlayers)
    {
        double[] scaled = [.. averages.Select(Scaled)];
        var result = JamesStein.Of(scaled, 1);
        book.Check(@case, "mean_X", result.Mean, Tight);
        book.Check(@case, "S", result.SumOfSquares, Tight);
        book.Check(@case, "shrink_B", 1 - result.Weight, Tight);
        Errors(book, @case, scaled, [.. s_rest.Select(Scaled)], result);
        if (!withPlayers) return;
        book.Check(@case, "js_Clemente", result.Values[0], Tight);
        book.Check(@case, "js_Clemente_back", Back(result.Values[0]), Tight);
        book.Check(@case, "js_Alvis_back", Back(result.Values[^1]), Tight);
    }

    private static void Errors(AccuracyBook book, string @case, double[] own, double[] truth, JamesStein result)
    {
        double Squares(IEnumerable<double> values) => values.Zip(truth, (a, b) => (a - b) * (a - b)).Sum();
        book.Check(@case, "sse_mle", Squares(own), Tight);
        book.Check(@case, "sse_js", Squares(result.Values), Tight);
        book.Check(@case, "ratio", Squares(own) / Squares(result.Values), Tight);
    }

    private static void Schools(AccuracyBook book)
    {
        const string Case = "eight schools", R = "R 4.2.2, DerSimonian–Laird by hand";
        double[] y = [28, 8, -3, 7, -1, 1, 18, 12], se = [15, 10, 16, 11, 9, 11, 10, 18];
        EmpiricalBayes none = EmpiricalBayes.Of(y, se), five = EmpiricalBayes.Of(y, se, 25);
        book.CheckPublished(Case, "Q", 4.707078864, none.Heterogeneity, 2e-10, R);
        book.CheckPublished(Case, "tau2", 0, none.BetweenVariance, 0, R);
        book.CheckPublished(Case, "mean", 7.685616725, none.Centre, 2e-10, R);
        book.CheckPublished(Case, "mean SE", 4.071919158, none.CentreError, 2e-10, R);
        book.CheckPublished(Case, "tau 5: mean", 7.850983234, five.Centre, 2e-10, R);
        book.CheckPublished(Case, "tau 5: A", 9.865884911, five.Values[0].Value, 2e-10, R);
        book.CheckPublished(Case, "tau 5: C", 6.885593266, five.Values[2].Value, 2e-10, R);
    }

    private static double Scaled(double average) => Math.Sqrt(45) * Math.Asin(2 * average - 1);

    private static double Back(double x) => (Math.Sin(x / Math.Sqrt(45)) + 1) / 2;
}
