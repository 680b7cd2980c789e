using Analytics.Statistics.Association;
using Analytics.Statistics.Distributions;
using Analytics.Statistics.Resampling;
using Analytics.Statistics.Tests.Resampling;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>The law school example [efron1987; efrontibshirani1993] with fixed resamples, all resamples of five values, and Monte Carlo limits.</summary>
public sealed class BootstrapAccuracy : AccuracySection
{
    private const string MonteCarlo = "both sides are Monte Carlo; four standard errors of the difference, measured over repeats with other seeds";

    public override string Section => "5";

    public override string Title => "Bootstrap";

    public override void Fill(AccuracyBook book)
    {
        var law = LawSchool.Fixed();
        Estimate(book, law);
        Resamples(book, law);
        foreach (var percent in new[] { 90, 95 }) Intervals(book, law, percent);
        Limit(book, Bootstrap.Correlation(LawSchool.Test, LawSchool.Grade, new() { Resamples = 400_000, Seed = 1 }));
        Enumerated(book);
        MedianLaw(book);
        Fisher(book);
        book.Leave("law15", "the library gives no standard error on this scale; its interval is Fisher's", "se_normal_theory_(1-r2)/sqrt(n-3)");
    }

    private static void Estimate(AccuracyBook book, BootstrapDistribution law)
    {
        book.Check("law15", "r", law.Estimate, 1e-12);
        book.Check("law15", "jack_se", law.JackknifeStandardError!.Value, 1e-11);
        book.Check("law15", "jack_bias", law.JackknifeBias!.Value, 1e-11);
        book.Check("law15", "jack_mean", law.LeaveOneOut.Average(), 1e-12);
        book.Check("law15", "accel_jack_centred", law.AccelerationBy(Acceleration.CentredJackknife)!.Value, 1e-11);
        book.Check("law15", "accel_jack_uncentred", law.AccelerationBy(Acceleration.UncentredJackknife)!.Value, 1e-11);
        book.Check("law15", "accel_infinitesimal", law.AccelerationBy(Acceleration.ExactInfluence)!.Value, 1e-11);
        book.Check("law15", "se_infinitesimal_jack", Math.Sqrt(law.Influence!.Sum(u => u * u)) / 15, 1e-11);
        for (var i = 0; i < 15; i++) book.Check("law15", $"r_minus_{i + 1}", law.LeaveOneOut[i], 1e-12);
    }

    private static void Fisher(AccuracyBook book)
    {
        book.Check("law15", "fisher_z", Math.Atanh(Correlation.Pearson(LawSchool.Test, LawSchool.Grade).Value), 1e-12);
        foreach (var percent in new[] { 90, 95 })
        {
            var interval = Correlation.Pearson(LawSchool.Test, LawSchool.Grade, percent / 100.0).Interval!.Value;
            book.Check("law15", $"fisher_lo{percent}", interval.Low, 1e-12);
            book.Check("law15", $"fisher_hi{percent}", interval.High, 1e-12);
        }
    }

    private static void Resamples(AccuracyBook book, BootstrapDistribution law)
    {
        const string set = "law15_boot999";
        book.Check(set, "count_tstar_lt_t0", law.Below, 0);
        book.Check(set, "z0", law.BiasCorrection!.Value, 1e-12);
        book.Check(set, "mean_tstar", law.Statistics.Average(), 1e-12);
        book.Check(set, "sd_tstar", law.StandardError, 1e-11);
        book.Check(set, "bias", law.Bias, 1e-11);
        book.Check(set, "min", law.Statistics.Min(), 1e-11);
        book.Check(set, "max", law.Statistics.Max(), 1e-11);
        foreach (var i in new[] { 1, 2, 3, 999 }) book.Check(set, $"tstar{i}", law.Statistics[i - 1], 1e-11);
    }

    private static void Intervals(AccuracyBook book, BootstrapDistribution law, int percent)
    {
        var (set, level) = ($"law15_boot999_conf{percent}", percent / 100.0);
        BootstrapInterval By(BootstrapMethod method, EndPoint end = EndPoint.NormalScale, Acceleration source = Acceleration.CentredJackknife)
            => law.Interval(method, level, end, source);
        const BootstrapMethod bca = BootstrapMethod.BiasCorrectedAccelerated;

        Pair(book, set, "norm_lo", "norm_hi", By(BootstrapMethod.Normal));
        Pair(book, set, "basic_lo", "basic_hi", By(BootstrapMethod.Basic));
        Pair(book, set, "perc_lo", "perc_hi", By(BootstrapMethod.Percentile));
        Pair(book, set, "perc_type7_lo", "perc_type7_hi", By(BootstrapMethod.Percentile, EndPoint.Type7));
        // Type 6 and the normal scale meet where (B + 1) p is whole.
        Pair(book, set, "perc_type6_lo", "perc_type6_hi", By(BootstrapMethod.Percentile));
        Pair(book, set, "bca_jack_lo", "bca_jack_hi", By(bca, source: Acceleration.UncentredJackknife));
        Pair(book, set, "bca_inf_lo", "bca_inf_hi", By(bca, source: Acceleration.ExactInfluence));
        Pair(book, set, "bca_centred_norminter_lo", "bca_centred_norminter_hi", By(bca));
        Pair(book, set, "bca_centred_type7_lo", "bca_centred_type7_hi", By(bca, EndPoint.Type7));
        book.Check(set, "alpha1_centred", By(bca).LowerShare!.Value, 1e-11);
        book.Check(set, "alpha2_centred", By(bca).UpperShare!.Value, 1e-11);
    }

    private static void Pair(AccuracyBook book, string set, string low, string high, BootstrapInterval interval)
    {
        book.Check(set, low, interval.Limits!.Value.Low, 1e-10);
        book.Check(set, high, interval.Limits!.Value.High, 1e-10);
    }

    private static void Limit(AccuracyBook book, BootstrapDistribution law)
    {
        const string set = "law15_limit_B400000_MC";
        foreach (var percent in new[] { 90, 95 })
        {
            Both("bca_{0}" + percent + "_accel_inf", BootstrapMethod.BiasCorrectedAccelerated, Acceleration.ExactInfluence, 0.008);
            Both("bca_{0}" + percent + "_accel_jack", BootstrapMethod.BiasCorrectedAccelerated, Acceleration.CentredJackknife, 0.008);
            Both("perc_{0}" + percent, BootstrapMethod.Percentile, default, 0.002);

            void Both(string name, BootstrapMethod method, Acceleration source, double error)
            {
                var limits = law.Interval(method, percent / 100.0, acceleration: source).Limits!.Value;
                book.CheckAbsolute(set, name.Replace("{0}", "lo", StringComparison.Ordinal), limits.Low, error, MonteCarlo);
                book.CheckAbsolute(set, name.Replace("{0}", "hi", StringComparison.Ordinal), limits.High, error, MonteCarlo);
            }
        }

        book.CheckAbsolute(set, "z0", law.BiasCorrection!.Value, 0.012, MonteCarlo);
        book.CheckAbsolute(set, "boot_se", law.StandardError, 0.0012, MonteCarlo);
        book.CheckAbsolute(set, "boot_bias", law.Bias, 0.0012, MonteCarlo);
    }

    private static void Enumerated(AccuracyBook book)
    {
        const string set = "enum_mean5";
        double[] values = [2.1, 3.4, 1.7, 5.9, 4.2];
        int[][] all = [.. Enumerable.Range(0, 3125).Select(k => new[] { k % 5, k / 5 % 5, k / 25 % 5, k / 125 % 5, k / 625 })];
        var mean = Bootstrap.FromResamples(5, rows => rows.ToArray().Average(r => values[r]), all);
        book.Check(set, "mean", mean.Estimate, 1e-14);
        book.Check(set, "n_resamples", mean.Statistics.Count, 0);
        // All resamples are the whole population: divisor B, not B − 1.
        book.Check(set, "boot_se_exact", mean.StandardError * Math.Sqrt(3124.0 / 3125), 1e-12);
        book.Check(set, "count_lt", mean.Below, 0);
        book.Check(set, "count_eq", mean.Equal, 0);
        book.Check(set, "accel", mean.AccelerationBy(Acceleration.CentredJackknife)!.Value, 1e-12);
        book.Check(set, "z0_strict", NormalLaw.Quantile(mean.Below / 3125.0), 1e-12);
        book.Check(set, "z0_midrank", mean.BiasCorrection!.Value, 1e-12);
        Pair(book, set, "perc_lo95_type7", "perc_hi95_type7", mean.Interval(BootstrapMethod.Percentile));
        Pair(book, set, "perc_lo90_type7", "perc_hi90_type7", mean.Interval(BootstrapMethod.Percentile, 0.9));
        var bca = mean.Interval();
        Pair(book, set, "bca_lo95_mid", "bca_hi95_mid", bca);
        book.Check(set, "bca_alpha1_mid", bca.LowerShare!.Value, 1e-11);
        book.Check(set, "bca_alpha2_mid", bca.UpperShare!.Value, 1e-11);
    }

    private static void MedianLaw(AccuracyBook book)
    {
        const int resamples = 200_000;
        var median = Bootstrap.OfValues([1, 2, 3, 4, 5, 6, 7, 8, 9], sample =>
        {
            sample.Sort();
            return sample[4];
        }, new() { Resamples = resamples, Seed = 5 });
        for (var i = 1; i <= 9; i++)
        {
            var (name, share) = ($"P(median*=x({i}))", median.Statistics.Count(s => s == i) / (double)resamples);
            var p = book.Expected("exact_median_n9", name);
            book.CheckAbsolute("exact_median_n9", name, share, 4 * Math.Sqrt(p * (1 - p) / resamples), "share of 200,000 resamples within four standard errors");
        }
    }
}
