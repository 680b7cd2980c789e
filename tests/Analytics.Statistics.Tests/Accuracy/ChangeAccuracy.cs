using Analytics.Statistics.Change;
using Analytics.Statistics.Distributions;
using Analytics.Statistics.EffectSize;
using Analytics.Statistics.Reliability;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>Smallest worthwhile change and individual change.</summary>
public sealed class ChangeAccuracy : AccuracySection
{
    private const double Tight = 1e-10;
    private const string Input = "given number of the example";

    public override string Section => "3";

    public override string Title => "Change";

    public override void Fill(AccuracyBook book)
    {
        foreach (var cv in new[] { 2, 5, 10, 20 }) LogNormal(book, cv);
        var index = ReliableChangeIndex.Of(47.5, 32.5, 7.5, 0.8);
        book.Check("RCI_jacobson_truax1991", "SE", index.ErrorOfMeasurement, Tight);
        book.Check("RCI_jacobson_truax1991", "S_diff", index.ErrorOfDifference, Tight);
        book.Check("RCI_jacobson_truax1991", "RC", index.Value, Tight);
        foreach (var d in new[] { 0.2, 0.6, 1.2, 2, 4 }) book.Check("d_to_r", FormattableString.Invariant($"d={d}"), Overlap.Correlation(d), Tight);
        Reliability(book);
        Multipliers(book);
        foreach (var @case in new[] { "ind_A_normal", "ind_A_t9", "ind_A_t19", "ind_B_normal", "ind_B_t14", "ind_C_normal", "ind_C_t28", "ind_D_base3_normal", "ind_D_base3_t18" }) Individual(book, @case);
        Posterior(book, "bayes_A_tau2", 3, 2, 1);
        Posterior(book, "bayes_A_tau1", 3, 2, 1);
        Posterior(book, "bayes_A_m1tau2", 3, 2, 1);
        Posterior(book, "bayes_C_tau2", -4, 1.5, 1);
        Tests(book, "tests_A_t19", 3, 2, 1, 19);
        Tests(book, "tests_E_t19", 7.5, 2, 1, 19);
        Tests(book, "tests_F_t98", 0.1, 0.5, 2, 98);
        foreach (var @case in new[] { "swc1", "swc2", "swc3" }) Worthwhile(book, @case);
        foreach (var @case in new[] { "SDIR_1", "SDIR_2", "SDIR_3" }) Responses(book, @case);
        var shares = ResponderShares.Of(2.5, Math.Sqrt(20), 1);
        book.Check("prop_response", "prop_above", shares.Above, Tight);
        book.Check("prop_response", "prop_below", shares.Below, Tight);
        book.Leave("prop_response", Input);
        Labels(book);
    }

    private static void LogNormal(AccuracyBook book, int cv)
    {
        var limits = LogNormalLimits.Of(cv);
        var @case = $"RCV_lognormal_CV{cv}";
        book.Check(@case, "sigma_ln", limits.Sigma, Tight);
        book.Check(@case, "up_pct", limits.Limits.High, Tight);
        book.Check(@case, "down_pct", limits.Limits.Low, Tight);
        book.Check(@case, "symmetric_pct=z*sqrt2*CV", limits.Symmetric, Tight);
    }

    private static void Reliability(AccuracyBook book)
    {
        book.Check("spearman_brown", "ICC.7_k2", IntraclassCorrelation.OfMean(0.7, 2), Tight);
        book.Check("spearman_brown", "ICC.7_k3", IntraclassCorrelation.OfMean(0.7, 3), Tight);
        book.Check("spearman_brown", "ICC.9_k3", IntraclassCorrelation.OfMean(0.9, 3), Tight);
        book.Leave("spearman_brown", "trials needed for a reliability: the library states the reliability of a number of trials, not the reverse");
        var score = TrueScore.Of(60, 50, 8, 0.85);
        const string Case = "true_score_estimate";
        book.Check(Case, "x=60,M=50,SD=8,ICC=.85:T", score.Value, Tight);
        book.Check(Case, "SEE", score.ErrorOfTrueScore, Tight);
        book.Check(Case, "SEM", IntraclassCorrelation.StandardErrorOfMeasurement(8, 0.85), Tight);
        book.Check(Case, "SEP", score.ErrorOfNewScore, Tight);
        book.Check(Case, "T_lo95_SEE", score.Value - NormalLaw.TwoSided(0.95) * score.ErrorOfTrueScore, Tight);
        book.Check(Case, "T_hi95_SEE", score.Value + NormalLaw.TwoSided(0.95) * score.ErrorOfTrueScore, Tight);
    }

    private static void Multipliers(AccuracyBook book)
    {
        foreach (var (name, p) in new[] { ("z.975", 0.975), ("z.95", 0.95), ("z.75", 0.75), ("z.875", 0.875) }) book.Check("constants", name, NormalLaw.Quantile(p), Tight);
        book.Check("constants", "z.975*sqrt2", IndividualChange.Between(0, 0, 1, double.PositiveInfinity).DetectableChange(), Tight);
        book.Check("constants", "1.645*sqrt2", IndividualChange.Between(0, 0, 1, double.PositiveInfinity).DetectableChange(0.9), Tight);
        book.Leave("constants", "rounded multiplier or plain root, not used by the library", "sqrt2", "1.96*sqrt2");
        foreach (var width in ResponseWidths.Of().Widths)
        {
            var name = FormattableString.Invariant($"{100 * width.Level:0}%");
            book.Check("truescore_multiplier_of_TE", name, width.ForScore, Tight);
            book.Check("change_multiplier_of_TE", name, width.ForChange, Tight);
        }

        foreach (var k in new[] { 0.5, 1, 1.5, 2, 2.77, 3 })
        {
            var name = FormattableString.Invariant($"k={k}");
            book.Check("P(|noise change|<k*TE)", name, 1 - FlagRates.ErrorMultiple(k, double.PositiveInfinity), Tight);
            book.Check("P(noise change<k*TE)_one_sided", name, 1 - FlagRates.ErrorMultiple(k, double.PositiveInfinity) / 2, Tight);
        }

        book.Check("MDC", "SEM3_MDC90", TypicalError.Known(3, "example").DetectableChange(0.9), Tight);
        book.Check("MDC", "SEM3_MDC95", TypicalError.Known(3, "example").DetectableChange(), Tight);
        book.Leave("MDC", "rounded multiplier 1.96, not used by the library");
    }

    private static void Individual(AccuracyBook book, string @case)
    {
        var tail = @case[(@case.LastIndexOf('_') + 1)..];
        var df = tail == "normal" ? double.PositiveInfinity : Oracle.Number(tail[1..]);
        var change = IndividualChange.Between(0, book.Expected(@case, "change"), book.Expected(@case, "TE"), df, @case.Contains("base3", StringComparison.Ordinal) ? 3 : 1);
        var shares = change.Shares(book.Expected(@case, "SWC"));
        book.Leave(@case, Input, "change", "TE", "SWC");
        book.Check(@case, "SE_change", change.StandardError, Tight);
        book.Check(@case, "P_above", shares.Above, Tight);
        book.Check(@case, "P_within", shares.Within, Tight);
        book.Check(@case, "P_below", shares.Below, Tight);
        foreach (var level in new[] { 50, 90, 95 })
        {
            book.Check(@case, $"CI{level}_lo", change.Interval(level / 100.0).Low, Tight);
            book.Check(@case, $"CI{level}_hi", change.Interval(level / 100.0).High, Tight);
        }
    }

    private static void Posterior(AccuracyBook book, string @case, double difference, double typicalError, double worthwhile)
    {
        var prior = ChangePrior.Stated(book.Expected(@case, "prior_mean"), book.Expected(@case, "prior_sd"), "example");
        var posterior = ChangePosterior.Of(IndividualChange.Between(0, difference, typicalError, double.PositiveInfinity), prior);
        var shares = posterior.Shares(worthwhile);
        book.Leave(@case, Input, "prior_mean", "prior_sd");
        book.Check(@case, "post_mean", posterior.Mean, Tight);
        book.Check(@case, "post_sd", posterior.StandardDeviation, Tight);
        book.Check(@case, "P_above", shares.Above, Tight);
        book.Check(@case, "P_within", shares.Within, Tight);
        book.Check(@case, "P_below", shares.Below, Tight);
        book.Check(@case, "CrI95_lo", posterior.Interval().Low, Tight);
        book.Check(@case, "CrI95_hi", posterior.Interval().High, Tight);
    }

    private static void Tests(AccuracyBook book, string @case, double difference, double typicalError, double worthwhile, double df)
    {
        var tests = ChangeTests.Of(IndividualChange.Between(0, difference, typicalError, df), worthwhile);
        book.Check(@case, "p_MET_above", tests.NotAbove, Tight);
        book.Check(@case, "p_MET_below", tests.NotBelow, Tight);
        book.Check(@case, "p_TOST", tests.NotWithin, Tight);
        book.Check(@case, "p_zero_two_sided", tests.NoChange, Tight);
    }

    private static void Worthwhile(AccuracyBook book, string @case)
    {
        double sd = book.Expected(@case, "SD_obs"), te = book.Expected(@case, "TE");
        var k = (int)book.Expected(@case, "k");
        book.Leave(@case, Input, "SD_obs", "TE", "k");
        var corrected = SmallestWorthwhileChange.OfTrueSpread(sd, te, k);
        book.Check(@case, "SD_true", Math.Sqrt(corrected.TrueVariance!.Value), Tight);
        book.Check(@case, "SWC_obs", SmallestWorthwhileChange.OfObservedSpread(sd).Value!.Value, Tight);
        book.Check(@case, "SWC_true", corrected.Value!.Value, Tight);
        foreach (var (name, share) in new[] { ("small0.2", 0.2), ("moderate0.6", 0.6), ("large1.2", 1.2), ("very_large2.0", 2), ("extremely_large4.0", 4) })
            book.Check(@case, name, SmallestWorthwhileChange.OfTrueSpread(sd, te, k, share).Value!.Value, Tight);
    }

    private static void Responses(AccuracyBook book, string @case)
    {
        double V(string quantity) => book.Expected(@case, quantity);
        IndividualResponses At(double level) => IndividualResponses.Between(V("SD_exp"), (int)V("n_exp"), V("SD_con"), (int)V("n_con"), level);
        IndividualResponses usual = At(0.95), narrow = At(0.9);
        book.Leave(@case, Input, "SD_exp", "SD_con", "n_exp", "n_con");
        book.Check(@case, "var_IR", usual.Variance, Tight);
        book.Check(@case, "SE_var", usual.VarianceError, Tight);
        book.Check(@case, "SD_IR", usual.StandardDeviation, Tight);
        foreach (var (level, result) in new[] { (95, usual), (90, narrow) })
        {
            book.Check(@case, $"var_lo{level}", result.VarianceInterval.Low, Tight);
            book.Check(@case, $"var_hi{level}", result.VarianceInterval.High, Tight);
            book.Check(@case, $"SD_lo{level}", result.Interval.Low, Tight);
            book.Check(@case, $"SD_hi{level}", result.Interval.High, Tight);
        }
    }

    private static void Labels(AccuracyBook book)
    {
        foreach (var n in new[] { 5, 8, 10, 15, 20, 30, 50, 100 }) Rates(book, $"MBI_fpr_n{n}_per_group_d0.2", MagnitudeLabels.Ratio(n));
        const string Worst = "MBI_fpr_max_over_d/se";
        book.Leave(Worst, "largest on a grid of 0.0001, 1e-5 short of the crossing point; the crossing point itself is checked", "clinical_beneficial");
        book.CheckPublished(Worst, "clinical_beneficial at the crossing point", 0.1708860176155346, MagnitudeLabels.Clinical(MagnitudeLabels.WorstClinical), Tight, "R 4.2.2: 1 - pnorm(qnorm(.995) - 1.6251595268724908)");
        book.Check(Worst, "nonclin_likely_two_sided", MagnitudeLabels.Likely(MagnitudeLabels.WorstLikely), Tight);
        book.Check(Worst, "nonclin_possible_two_sided", MagnitudeLabels.Possible(MagnitudeLabels.WorstPossible), Tight);
        book.Check(Worst, "at_d/se_clinical", MagnitudeLabels.WorstClinical, Tight);
        book.Check(Worst, "at_d/se_likely", MagnitudeLabels.WorstLikely, Tight);
        book.Check(Worst, "at_d/se_possible", MagnitudeLabels.WorstPossible, Tight);
    }

    private static void Rates(AccuracyBook book, string @case, double ratio)
    {
        book.Check(@case, "clinical_beneficial", MagnitudeLabels.Clinical(ratio), Tight);
        book.Check(@case, "nonclin_likely_two_sided", MagnitudeLabels.Likely(ratio), Tight);
        book.Check(@case, "nonclin_possible_two_sided", MagnitudeLabels.Possible(ratio), Tight);
    }
}
