using Analytics.Statistics.Reliability;
using Analytics.Statistics.Summaries;
using Analytics.Statistics.Tests.Reliability;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>Intraclass correlations, typical errors in units and per cent, true scores.</summary>
public sealed class ReliabilityAccuracy : AccuracySection
{
    public override string Section => "2";

    public override string Title => "Reliability";

    public override void Fill(AccuracyBook book)
    {
        foreach (var table in new[] { "shrout_fleiss", "weir_A", "weir_B", "pefr_wright", "pefr_mini", "retest3" }) Correlations(book, table, ReliabilityTables.Of(table));
        foreach (var table in new[] { "weir_A", "weir_B" }) TrueScores(book, table, ReliabilityTables.Of(table));
        Retest(book, "retest3", ReliabilityTables.Of("retest3"));
        Retest(book, "retest3_first2", ReliabilityTables.Of("retest3_first2"));
        Retest(book, "weir_A_hopkins", ReliabilityTables.Of("weir_A"));
        Retest(book, "pefr_wright_hopkins", ReliabilityTables.Of("pefr_wright"));

        double[] one = [72, 76, 74, 79, 79, 77];
        book.Check("hopkins2001_one_subject", "mean", Moments.Mean(one), 1e-14);
        book.Check("hopkins2001_one_subject", "sd_total_error", TypicalErrors.FromAttempts([one]).Value, 1e-14);
        foreach (var df in new[] { 7, 9, 19, 20, 49, 98 })
        {
            var factor = TypicalError.Known(1, "factor of the interval", df).Interval();
            book.Check("TE_CI_factor", $"df{df} lo95", factor.Low, 1e-11);
            book.Check("TE_CI_factor", $"df{df} hi95", factor.High, 1e-11);
        }
    }

    private static void Correlations(AccuracyBook book, string name, TrialTable table)
    {
        var ms = MeanSquares.Of(table);
        if (name != "retest3")
        {
            // The long case of three trials lists both once for itself.
            book.Check(name, "n", ms.Athletes, 0);
            book.Check(name, "k", ms.Trials, 0);
        }

        book.Check(name, "BMS", ms.BetweenAthletes);
        book.Check(name, "JMS", ms.BetweenTrials);
        book.Check(name, "EMS", ms.Residual);
        book.Check(name, "WMS", ms.WithinAthletes);
        book.Check(name, "F_1way", ms.FOneWay);
        book.Check(name, "F_rows", ms.FBetweenAthletes);
        book.Check(name, "F_cols", ms.FBetweenTrials);
        foreach (var form in Enum.GetValues<IccForm>())
        {
            var icc = IntraclassCorrelation.Of(table, form);
            book.Check(name, form.ShroutFleissName(), icc.Value);
            book.Check(name, form.ShroutFleissName() + "_lo95", icc.Interval.Low);
            book.Check(name, form.ShroutFleissName() + "_hi95", icc.Interval.High);
        }

        book.Check(name, "SE_df_v_for_ICC21_CI", IntraclassCorrelation.Of(table, IccForm.AgreementSingle).IntervalDf);
    }

    private static void TrueScores(AccuracyBook book, string name, TrialTable table)
    {
        double[] first = [.. Enumerable.Range(0, 8).Select(i => table[i, 0]!.Value)], second = [.. Enumerable.Range(0, 8).Select(i => table[i, 1]!.Value)];
        var (ms, te) = (MeanSquares.Of(table), TypicalErrors.FromTrials(table));
        double sd = ms.TotalStandardDeviation, consistency = IntraclassCorrelation.Of(table).Value;
        var score = TrueScore.Of(150, 154, sd, consistency);
        book.Check(name, "mean1", Moments.Mean(first), 1e-14);
        book.Check(name, "mean2", Moments.Mean(second), 1e-14);
        book.Check(name, "sd1", Moments.StandardDeviation(first), 1e-14);
        book.Check(name, "sd2", Moments.StandardDeviation(second), 1e-14);
        book.Check(name, "SEM_sqrtEMS", te.Value);
        book.Check(name, "SD_total", sd);
        book.Check(name, "SEM_SDtotal_ICC31", IntraclassCorrelation.StandardErrorOfMeasurement(sd, consistency));
        book.Check(name, "MD95_1.96", te.RepeatabilityCoefficient(1.96).Value);
        book.Check(name, "MD95_exact_z", te.DetectableChangeOfKnownError());
        book.Check(name, "SEE_SDtotal_ICC31", score.ErrorOfTrueScore);
        book.Check(name, "SEP_SDtotal_ICC31", score.ErrorOfNewScore);
        book.Check(name, "SDtotal_sqrt(1-ICC21)", IntraclassCorrelation.StandardErrorOfMeasurement(sd, IntraclassCorrelation.Of(table, IccForm.AgreementSingle).Value));
    }

    private static void Retest(AccuracyBook book, string name, TrialTable table)
    {
        Units(book, name, "", table);
        Units(book, name, "ln_", table.Select(Math.Log));
        foreach (var pair in PercentTrialPair.Neighbours(table))
        {
            var tag = $"pct_pair{pair.Logs.First + 1}{pair.Logs.Second + 1}_";
            book.Check(name, tag + "chg_mean", pair.Change.Value);
            book.Check(name, tag + "chg_lo95", pair.Change.Interval!.Value.Low);
            book.Check(name, tag + "chg_hi95", pair.Change.Interval!.Value.High);
            book.Check(name, tag + "CV", pair.Variation.Value);
            book.Check(name, tag + "CV_lo95", pair.Variation.Interval!.Value.Low);
            book.Check(name, tag + "CV_hi95", pair.Variation.Interval!.Value.High);
        }

        var cv = CoefficientOfVariation.FromTrials(table);
        book.Check(name, "CV_pct", cv.Percent);
        book.Check(name, "CV_lo95", cv.Interval().Low);
        book.Check(name, "CV_hi95", cv.Interval().High);
        book.Check(name, "CV_lognormal_pct", cv.LogNormalPercent);
        book.Check(name, "CV_factor_times_div", cv.Factor);
        book.Check(name, "SWC_pct_0.2trueSD", 100 * (Math.Exp(0.2 * MeanSquares.Of(table.Select(Math.Log)).TrueStandardDeviation!.Value) - 1));
    }

    private static void Units(AccuracyBook book, string name, string tag, TrialTable table)
    {
        var (te, ms, icc) = (TypicalErrors.FromTrials(table), MeanSquares.Of(table), IntraclassCorrelation.Of(table));
        book.Check(name, tag + "n", ms.Athletes, 0);
        book.Check(name, tag + "k", ms.Trials, 0);
        book.Check(name, tag + "df", te.DegreesOfFreedom, 0);
        book.Check(name, tag + "TE", te.Value);
        book.Check(name, tag + "TE_lo95", te.Interval().Low);
        book.Check(name, tag + "TE_hi95", te.Interval().High);
        book.Check(name, tag + "TE_lo90", te.Interval(0.90).Low);
        book.Check(name, tag + "TE_hi90", te.Interval(0.90).High);
        book.Check(name, tag + "SD_trial_mean_rms", Math.Sqrt(Enumerable.Range(0, table.Trials).Average(j => Moments.Variance([.. Enumerable.Range(0, table.Athletes).Select(i => table[i, j]!.Value)]))));
        book.Check(name, tag + "SD_true_between", ms.TrueStandardDeviation!.Value);
        book.Check(name, tag + "ICC31", icc.Value);
        book.Check(name, tag + "ICC31_lo95", icc.Interval.Low);
        book.Check(name, tag + "ICC31_hi95", icc.Interval.High);
        book.Check(name, tag + "MDC95_z", te.DetectableChangeOfKnownError());
        foreach (var pair in TrialPair.Neighbours(table))
        {
            var of = $"{tag}pair{pair.First + 1}{pair.Second + 1}_";
            book.Check(name, of + "chg_mean", pair.Change.Value);
            book.Check(name, of + "chg_lo95", pair.Change.Interval!.Value.Low);
            book.Check(name, of + "chg_hi95", pair.Change.Interval!.Value.High);
            book.Check(name, of + "sd_diff", pair.DifferenceSpread);
            book.Check(name, of + "TE", pair.Error.Value);
            book.Check(name, of + "TE_lo95", pair.Error.Interval().Low);
            book.Check(name, of + "TE_hi95", pair.Error.Interval().High);
            book.Check(name, of + "pearson_r", pair.Correlation!.Value);
        }

        if (table.Trials > 2) book.Check(name, tag + "TE_rms_of_consecutive_pairs", TypicalErrors.FromNeighbours(table).Value);
    }
}
