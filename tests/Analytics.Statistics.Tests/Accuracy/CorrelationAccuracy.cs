using Analytics.Statistics.Association;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>Correlations with and without ties, and Fisher's interval in its versions.</summary>
public sealed class CorrelationAccuracy : AccuracySection
{
    private static readonly double[] s_x = [1, 2, 2, 3, 4, 4, 4, 5, 6, 7];
    private static readonly double[] s_y = [2, 1, 3, 3, 5, 4, 4, 6, 6, 5];
    private static readonly double[] s_lightness = [44.4, 45.9, 41.9, 53.3, 44.7, 44.1, 50.7, 45.2, 60.1];
    private static readonly double[] s_panel = [2.6, 3.1, 2.5, 5.0, 3.6, 4.0, 5.2, 2.8, 3.8];

    public override string Section => "6";

    public override string Title => "Trends and correlation";

    public override void Fill(AccuracyBook book)
    {
        double[] twelve = Oracle.Column("trend-twelve.csv", 1), weeks = Oracle.Column("trend-twelve.csv", 0);
        var (kendall, spearman) = (Correlation.Kendall(weeks, twelve), Correlation.Spearman(weeks, twelve));
        book.Check("trend12_rank", "tau_b", kendall.Value, 1e-13);
        book.Check("trend12_rank", "z_cor.test_kendall", kendall.Statistic!.Value, 1e-13);
        book.Check("trend12_rank", "p_kendall", kendall.P!.Value, 1e-12);
        book.Check("trend12_rank", "rho_s", spearman.Value, 1e-13);
        book.Check("trend12_rank", "p_spearman_asymp", spearman.P!.Value, 1e-10);
        Ties(book);
        Tuna(book);
        Fisher(book, 0.5, 20);
        Fisher(book, 0.8, 10);
        Fisher(book, -0.3, 50);
        Fisher(book, 0.95, 8);
        Rank(book, "FHP1.06", CorrelationVariance.Fieller);
        Rank(book, "BonettWright", CorrelationVariance.BonettWright);
    }

    private static void Ties(AccuracyBook book)
    {
        var (tau, rho) = (Correlation.Kendall(s_x, s_y), Correlation.Spearman(s_x, s_y));
        book.Check("ties10", "concordant", tau.Concordant!.Value, 0);
        book.Check("ties10", "discordant", tau.Discordant!.Value, 0);
        book.Check("ties10", "tau_b", tau.Value, 1e-13);
        book.Check("ties10", "z", tau.Statistic!.Value, 1e-13);
        book.Check("ties10", "p", tau.P!.Value, 1e-12);
        book.Check("ties10", "rho_s", rho.Value, 1e-13);
        book.Check("ties10", "p_rho_t_approx", rho.P!.Value, 1e-10);
    }

    // Printed in the help of R's cor.test, from Hollander and Wolfe (1973): canned tuna.
    private static void Tuna(AccuracyBook book)
    {
        const string source = "R 4.2.2 cor.test, example of its help page";
        var (tau, rho, r) = (Correlation.Kendall(s_lightness, s_panel), Correlation.Spearman(s_lightness, s_panel), Correlation.Pearson(s_lightness, s_panel));
        book.CheckPublished("tuna", "Kendall, concordant", 26, tau.Concordant!.Value, 0, source);
        book.CheckPublished("tuna", "Kendall, exact p", 0.119438933, tau.P!.Value, 1e-8, source);
        book.CheckPublished("tuna", "Kendall, z", 1.668115312, tau.Statistic!.Value, 1e-9, source);
        book.CheckPublished("tuna", "Spearman", 0.6, rho.Value, 1e-13, source);
        book.CheckPublished("tuna", "Spearman, exact p", 0.09679783951, rho.P!.Value, 1e-9, source);
        book.CheckPublished("tuna", "Pearson", 0.5711815576, r.Value, 1e-9, source);
        book.CheckPublished("tuna", "Pearson, t", 1.841082638, r.Statistic!.Value, 1e-9, source);
        book.CheckPublished("tuna", "Pearson, p", 0.1081730543, r.P!.Value, 1e-9, source);
        book.CheckPublished("tuna", "Fisher, low", -0.149742633, r.Interval!.Value.Low, 1e-8, source);
        book.CheckPublished("tuna", "Fisher, high", 0.8955794618, r.Interval!.Value.High, 1e-9, source);
    }

    private static void Fisher(AccuracyBook book, double r, int n)
    {
        var set = FormattableString.Invariant($"fisher_r{r}_n{n}");
        foreach (var percent in new[] { 90, 95 })
        {
            var interval = FisherInterval.Of(r, n, percent / 100.0)!.Value;
            book.Check(set, $"lo{percent}", interval.Low, 1e-12);
            book.Check(set, $"hi{percent}", interval.High, 1e-12);
        }

        var exact = Correlation.Pearson(Spread(n), Related(n, r));
        book.Check(set, "t", exact.Statistic!.Value, 1e-10);
        book.Check(set, "p", exact.P!.Value, 1e-9);
    }

    private static void Rank(AccuracyBook book, string name, CorrelationVariance variance)
    {
        var interval = FisherInterval.Of(0.6, 25, 0.95, CorrelationKind.Spearman, variance)!.Value;
        book.Check("fisher_spearman_r.6_n25", "lo95_" + name, interval.Low, 1e-12);
        book.Check("fisher_spearman_r.6_n25", "hi95_" + name, interval.High, 1e-12);
    }

    private static double[] Spread(int n) => [.. Enumerable.Range(0, n).Select(i => i - (n - 1) / 2.0)];

    // Pairs whose correlation is r to the last digit: a line and something at right angles to it and to a constant, of the same length.
    private static double[] Related(int n, double r)
    {
        var x = Spread(n);
        var square = x.Average(v => v * v);
        double[] bow = [.. x.Select(v => v * v - square)];
        var size = Math.Sqrt(x.Sum(v => v * v) / bow.Sum(v => v * v));
        return [.. x.Zip(bow, (a, b) => r * a + Math.Sqrt(1 - r * r) * size * b)];
    }
}
