using Analytics.Statistics.Agreement;
using Analytics.Statistics.Fitting;
using Analytics.Statistics.Reliability;
using Analytics.Statistics.Tests.Reliability;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>Two meters of peak expiratory flow, each read twice [blandaltman1986].</summary>
public sealed class AgreementAccuracy : AccuracySection
{
    public override string Section => "2";

    public override string Title => "Reliability";

    public override void Fill(AccuracyBook book)
    {
        double[] first = Oracle.Column("bland-altman-1986.csv", 1), mini = Oracle.Column("bland-altman-1986.csv", 3);
        Limits(book, [.. first.Zip(mini, (a, b) => a - b)]);

        TrialTable wright = ReliabilityTables.Of("pefr_wright"), small = ReliabilityTables.Of("pefr_mini");
        book.Check("pefr", "r_W1_M1", StraightLine.Of(first, mini).Correlation!.Value);
        book.Check("pefr", "Lin_CCC_W1_M1", ConcordanceCorrelation.Of(first, mini).Value);
        Repeats(book, "W", wright, "bland-altman-1986.csv", 1);
        Repeats(book, "M", small, "bland-altman-1986.csv", 3);

        var singles = ReplicateAgreement.Of(wright, small);
        book.Check("pefr", "meandiff_of_means", singles.Bias.Value);
        book.Check("pefr", "sd_diff_of_means", singles.SpreadOfMeans);
        book.Check("pefr", "corrected_sd_rms_repeats", singles.CorrectedSpread);
        book.Check("pefr", "LOA_from_means_lo_1.96", singles.Lower.Value);
        book.Check("pefr", "LOA_from_means_hi_1.96", singles.Upper.Value);
        book.Check("pefr", "corrected_sd_B&A", ReplicateAgreement.Of(wright, small, shiftIsError: false).CorrectedSpread);
    }

    private static void Limits(AccuracyBook book, double[] d)
    {
        const string name = "pefr_W1_minus_M1";
        LimitsOfAgreement two = LimitsOfAgreement.WithMultiplier(d, 2), rounded = LimitsOfAgreement.WithMultiplier(d, 1.96), exact = LimitsOfAgreement.Of(d);
        book.Check(name, "n", exact.N, 0);
        book.Check(name, "mean_diff", exact.Bias.Value);
        book.Check(name, "sd_diff", exact.StandardDeviation);
        book.Check(name, "se_mean", exact.Bias.StandardError!.Value);
        book.Check(name, "bias_lo95", exact.Bias.Interval!.Value.Low);
        book.Check(name, "bias_hi95", exact.Bias.Interval!.Value.High);
        book.Check(name, "LOA2_lo", two.Lower.Value);
        book.Check(name, "LOA2_hi", two.Upper.Value);
        book.Check(name, "LOA1.96_lo", rounded.Lower.Value);
        book.Check(name, "LOA1.96_hi", rounded.Upper.Value);
        book.Check(name, "LOAz_lo", exact.Lower.Value);
        book.Check(name, "LOAz_hi", exact.Upper.Value);
        book.Check(name, "se_LOA_3s2n", exact.RuleOfThumbError);
        book.Check(name, "loLOA_lo95_3s2n", two.RuleOfThumbLower.Low);
        book.Check(name, "loLOA_hi95_3s2n", two.RuleOfThumbLower.High);
        book.Check(name, "hiLOA_lo95_3s2n", two.RuleOfThumbUpper.Low);
        book.Check(name, "hiLOA_hi95_3s2n", two.RuleOfThumbUpper.High);
        book.Check(name, "se_LOA_full", exact.Upper.StandardError!.Value);
        book.Check(name, "exact_hiLOA_lo95", exact.ExactUpper.Low);
        book.Check(name, "exact_hiLOA_hi95", exact.ExactUpper.High);
        book.Check(name, "exact_loLOA_lo95", exact.ExactLower.Low);
        book.Check(name, "exact_loLOA_hi95", exact.ExactLower.High);
    }

    private static void Repeats(AccuracyBook book, string meter, TrialTable table, string file, int column)
    {
        var within = TypicalErrors.FromAttempts([.. Oracle.Rows(file).Select(r => (IReadOnlyList<double>)[Oracle.Number(r[column]), Oracle.Number(r[column + 1])])]);
        book.Check("pefr", $"sd_diff_{meter}", TrialPair.Of(table, 0, 1).DifferenceSpread);
        book.Check("pefr", $"sw_{meter}", within.Value);
        book.Check("pefr", $"rep_coef_2sd_rms_{meter}", within.RepeatabilityCoefficient().Value);
        book.Check("pefr", $"rep_coef_sdcentred2_{meter}", TypicalErrors.FromTrials(table).RepeatabilityCoefficient().Value);
    }
}
