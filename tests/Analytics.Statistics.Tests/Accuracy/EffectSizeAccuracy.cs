using Analytics.Statistics.Distributions;
using Analytics.Statistics.EffectSize;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>Effect sizes; R's own noncentral t and root finder set the tolerance of its limits.</summary>
public sealed class EffectSizeAccuracy : AccuracySection
{
    private const double Tight = 1e-10;

    public override string Section => "4";

    public override string Title => "Effect sizes";

    public override void Fill(AccuracyBook book)
    {
        foreach (var df in new[] { 2, 3, 4, 5, 6, 7, 8, 9, 10, 15, 18, 20, 28, 38, 50, 58, 98, 198 })
        {
            book.Check($"J_df{df}", "exact", SmallSample.Correction(df), Tight);
            book.Check($"J_df{df}", "approx_1-3/(4m-1)", SmallSample.ApproximateCorrection(df), Tight);
        }

        foreach (var n in new[] { 2, 3, 4, 5, 6, 8, 10, 15, 20, 30 }) book.Check($"c4_n{n}", "c4", SmallSample.SpreadBias(n), Tight);
        foreach (var d in new[] { 0.2, 0.5, 0.6, 0.8, 1.2, 2 }) book.Check("CLES", FormattableString.Invariant($"d={d}"), Overlap.ChanceOfExceeding(d), Tight);
        Groups(book);
        Pairs(book);
        foreach (var (t, df) in new[] { (0.5, 8), (1.5, 10), (2.5, 18), (3, 28), (5, 38), (8.0, 98) })
        {
            var limits = NoncentralStudentLaw.NoncentralityInterval(t, df);
            book.Check("g_standard_cases", FormattableString.Invariant($"ncp95 t={t} df={df} lo"), limits.Low);
            book.Check("g_standard_cases", FormattableString.Invariant($"ncp95 t={t} df={df} hi"), limits.High);
        }

        TwoGroups(book);
    }

    private static double[] Sleep(string group) => [.. Oracle.Rows("student-sleep.csv").Where(r => r[0] == group).Select(r => Oracle.Number(r[2]))];

    private static void Groups(AccuracyBook book)
    {
        const string Case = "sleep_independent";
        var apart = GroupDifference.Between(Sleep("1"), Sleep("2"));
        book.Check(Case, "t", apart.T, Tight);
        book.Check(Case, "df", apart.DegreesOfFreedom, Tight);
        book.Check(Case, "pooled_sd", apart.PooledSd, Tight);
        book.Check(Case, "d", apart.D, Tight);
        book.Check(Case, "d_lo95", apart.DInterval.Low);
        book.Check(Case, "d_hi95", apart.DInterval.High);
        book.Check(Case, "g", apart.G, Tight);
        book.Check(Case, "g_lo95", apart.GInterval.Low);
        book.Check(Case, "g_hi95", apart.GInterval.High);
        book.Check(Case, "ncp_lo", apart.Noncentrality.Low);
        book.Check(Case, "ncp_hi", apart.Noncentrality.High);
        book.Check(Case, "se_d_large_sample", apart.LargeSampleError, Tight);
    }

    private static void Pairs(AccuracyBook book)
    {
        const string Case = "sleep_paired";
        var apart = PairedDifference.Between(Sleep("1"), Sleep("2"));
        book.Check(Case, "t", apart.T, Tight);
        book.Check(Case, "dz", apart.Z, Tight);
        book.Check(Case, "dz_lo95", apart.ZInterval.Low);
        book.Check(Case, "dz_hi95", apart.ZInterval.High);
        book.Check(Case, "gz", apart.CorrectedZ!.Value, Tight);
        book.Check(Case, "d_av", apart.Average, Tight);
        book.Check(Case, "d_rm", apart.RepeatedMeasures, Tight);
        book.Check(Case, "d_baseline(post-pre)/sd_pre", apart.ChangeInFirstSpreads!.Value, Tight);
        book.Check(Case, "r", apart.Correlation, Tight);
    }

    // 19 and 13 values of a public data set; figures of R 4.2.2 (t.test, uniroot on pt).
    private static void TwoGroups(AccuracyBook book)
    {
        const string Case = "two-groups-32.csv", R = "R 4.2.2: t.test, uniroot on pt";
        double[] Group(string g) => [.. Oracle.Rows(Case).Where(r => r[0] == g).Select(r => Oracle.Number(r[1]))];
        var apart = GroupDifference.Between(Group("0"), Group("1"));
        var welch = WelchTest.Between(Group("0"), Group("1"));
        book.CheckPublished(Case, "t", -4.106126983, apart.T, 2e-10, R);
        book.CheckPublished(Case, "d", -1.477947096, apart.D, 4e-10, R);
        book.CheckPublished(Case, "d_lo95", -2.26597328, apart.DInterval.Low, 3e-9, R);
        book.CheckPublished(Case, "d_hi95", -0.6705683857, apart.DInterval.High, 2e-9, R);
        book.CheckPublished(Case, "g", -1.440635402, apart.G, 4e-10, R);
        book.CheckPublished(Case, "Welch t", -3.767123145, welch.T, 2e-10, R);
        book.CheckPublished(Case, "Welch df", 18.33225164, welch.DegreesOfFreedom, 3e-10, R);
        book.CheckPublished(Case, "Welch p", 0.001373638333, welch.P, 4e-10, R);
    }
}
