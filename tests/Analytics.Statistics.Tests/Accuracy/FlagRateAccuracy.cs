using Analytics.Statistics.Change;
using Analytics.Statistics.Distributions;
using Analytics.Statistics.EffectSize;
using Analytics.Statistics.Multiplicity;
using Analytics.Statistics.Reliability;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>Rates of flags in closed form or by one integral.</summary>
public sealed class FlagRateAccuracy : AccuracySection
{
    private const double Tight = 1e-10;
    private const double Known = double.PositiveInfinity;
    private const string MonteCarlo = "Monte Carlo; measured by the error-rates command";

    public override string Section => "16";

    public override string Title => "Error rates";

    public override void Fill(AccuracyBook book)
    {
        Over(book, "P_flag_MDC95_z_with_TE_est", nu => FlagRates.NormalMultiplier(nu));
        Over(book, "P_flag_MDC95_1.96_with_TE_est", nu => FlagRates.ErrorMultiple(1.96 * Math.Sqrt(2), nu));
        Over(book, "P_flag_MDC90_z_with_TE_est", nu => FlagRates.NormalMultiplier(nu, 0.9));
        Over(book, "t_multiplier_sqrt2_t975", nu => IndividualChange.Between(0, 0, 1, nu).DetectableChange());
        foreach (var nu in new[] { 5, 9, 19, 49, 98 })
        {
            var @case = $"conditional_flag_rate_nu{nu}";
            foreach (var q in new[] { 5, 25, 50, 75, 95 }) book.Check(@case, $"q{q:00}", FlagRates.OfOneStudy(q / 100.0, nu), Tight);
            book.Check(@case, "P(rate>0.10)", FlagRates.StudiesAbove(0.1, nu), Tight);
        }

        Over(book, "P_flag_MDC95_known_TE_true_change", delta => BeyondErrorRule.Standard.ClearRate(delta, 0, Known));
        Over(book, "P_flag_t_rule_true_change_nu9", delta => BeyondErrorRule.Standard.ClearRate(delta, 0, 9), AccuracyBook.Usual);
        Over(book, "P_flag_t_rule_true_change_nu19", delta => BeyondErrorRule.Standard.ClearRate(delta, 0, 19), AccuracyBook.Usual);
        Over(book, "P(|obs change|>SWC | no change)", FlagRates.PointBeyondWorthwhile);
        Over(book, "P(|obs|>SWC | no change), SWC=0.2*SD_obs", icc => FlagRates.PointBeyondWorthwhile(0.2 / Math.Sqrt(1 - icc)));
        Over(book, "P(|obs|>SWC | no change), SWC=0.2*SD_true", icc => FlagRates.PointBeyondWorthwhile(0.2 * Math.Sqrt(icc / (1 - icc))));
        book.Check("ICC_needed_for_MDC95<=0.2SD_obs", "ICC", FlagRates.ReliabilityNeeded(), Tight);
        book.Check("ICC_needed_for_MDC95<=0.2SD_obs", "TE/SD", Math.Sqrt(1 - FlagRates.ReliabilityNeeded()), Tight);
        foreach (var c in new[] { 0.5, 0.75, 0.9, 0.95, 0.975 })
            Over(book, FormattableString.Invariant($"P(Pabove>{c}) known TE, SWC/TE=0.5, one side"), delta => FlagRates.ProbabilityAbove(delta, 0.5, c));
        Over(book, "P(>=1 false flag among m athletes, alpha .05)", m => ChanceFlags.Of((int)m, 0.05).AtLeastOne);
        Over(book, "one_new_vs_mean_of_m_baseline SE/TE", m => IndividualChange.Between(0, 0, 1, Known, (int)m).StandardError);
        Over(book, "own-baseline SD rule: P(|new-mean|>1.96*s_own*sqrt(1+1/m))", m => FlagRates.OwnBaselinePrediction(1.96, (int)m));
        Over(book, "own-baseline mean+-2s: P(outside)", m => FlagRates.OwnBaseline(2, (int)m));
        Over(book, "mean+-3s_new_point_exact", m => FlagRates.OwnBaseline(3, (int)m));
        Over(book, "E[TE_hat]/TE (c4)", nu => SmallSample.SpreadBiasOfDegrees(nu));
        Over(book, "TE_upper80_rule average flag rate", nu => FlagRates.UpperErrorLimit(nu));
        var top = SelectionEffect.OfTop(0.25, 0.8);
        book.Check("regression_to_mean", "E[change]|x1=+1SD,ICC.8", TrueScore.Of(1, 0, 1, 0.8).Value - 1, Tight);
        book.Check("regression_to_mean", "E|top25%mean_z", top.MeanScore, Tight);
        book.Check("regression_to_mean", "E[change]_top25%_ICC.8", top.ExpectedChange, Tight);
        book.Leave("rel_SE_of_TE", "large-sample approximation 1/\u221a(2\u03bd); the library states the exact chi-square interval");
        foreach (var @case in Simulated) book.Leave(@case, MonteCarlo);
    }

    private static IEnumerable<string> Simulated =>
    [
        "XmR_new_point_false_alarm_MC",
        .. from phi in new[] { "0", "0.2", "0.4", "0.6" } from n in new[] { 12, 20, 40 } select $"false_trend_rate_AR1_phi{phi}_n{n}",
        "SDIR_TE1_sdIR0_n15_per_group", "SDIR_TE1_sdIR1_n15_per_group", "SDIR_TE1_sdIR1_n40_per_group",
        "ICC_CI_coverage_n10_k3_sb1_sj.2_se.5", "ICC_CI_coverage_n20_k2_sb1_sj.2_se.5",
    ];

    // The rows of such a case are named "argument=number".
    private static void Over(AccuracyBook book, string @case, Func<double, double> rate, double relative = Tight)
    {
        foreach (var quantity in book.Quantities(@case)) book.Check(@case, quantity, rate(Oracle.Number(quantity[(quantity.IndexOf('=', StringComparison.Ordinal) + 1)..])), relative);
    }
}
