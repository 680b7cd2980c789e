using Analytics.Statistics.Monitoring;
using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>Charts: the worked examples of [nist-handbook], closed forms, run lengths of the R package spc.</summary>
public sealed class MonitoringAccuracy : AccuracySection
{
    private static readonly double[] s_flow = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];

    public override string Section => "7";

    public override string Title => "Weekly monitoring";

    public override void Fill(AccuracyBook book)
    {
        Constants(book);
        Flow(book);
        Ewma(book);
        foreach (var (lambda, width) in new[] { ("0.05", "2.615"), ("0.1", "2.814"), ("0.2", "2.962"), ("0.25", "2.998"), ("0.3", "3"), ("0.4", "3.054") })
        {
            var (l, w, set) = (Oracle.Number(lambda), Oracle.Number(width), $"ewma_ARL0_lambda{lambda}_L{width}");
            book.Check(set, "ARL0", EwmaRunLength.Of(l, w), 1e-9);
            book.Check(set, "ARL_shift1sd", EwmaRunLength.Of(l, w, 1), 1e-9);
        }

        var known = FalseAlarms.KnownLimits(3);
        book.Check("shewhart", "P_beyond_3sd", known.PerPoint!.Value, 1e-12);
        book.Check("shewhart", "ARL0", known.RunLength!.Value, 1e-12);
        book.Check("shewhart", "P_2of3_beyond2sd_sameside_any_window", RunRule.TwoOfThreeBeyondTwo.FalseAlarmRate, 1e-12);
        book.Check("shewhart", "P_8_same_side_given_window", RunRule.EightOnOneSide.FalseAlarmRate, 1e-13);
        book.Check("shewhart", "P_9_same_side", RunRule.NineOnOneSide.FalseAlarmRate, 1e-13);
        Cusum(book);
    }

    private static void Constants(AccuracyBook book)
    {
        book.Check("constants", "d2_n2=2/sqrt(pi)", MovingRange.D2, 1e-15);
        book.Check("constants", "d3_n2=sqrt(2-4/pi)", MovingRange.D3, 1e-14);
        book.Check("constants", "3/d2", 3 / MovingRange.D2, 1e-14);
        book.Check("constants", "D4_n2=1+3*d3/d2", MovingRange.D4, 1e-14);
        book.Check("constants", "median_MR_factor=sqrt2*qnorm(.75)", MovingRange.Median, 1e-15);
        book.Check("constants", "d4_exact_3/(sqrt2*qnorm(.75))", 3 / MovingRange.Median, 1e-14);
        // The printed divisors, seen from outside: a step of 1 in two values.
        book.Check("constants", "3/1.128", 3 * MovingRange.StandardDeviation([0, 1], constants: MovingRangeConstants.Printed), 1e-14);
        book.Check("constants", "3/0.954", 3 * MovingRange.StandardDeviation([0, 1], MovingRangeCentre.Median, MovingRangeConstants.Printed), 1e-14);
    }

    private static void Flow(AccuracyBook book)
    {
        const string set = "flowrate";
        var (exact, printed) = (IndividualsChart.FromBaseline(s_flow), IndividualsChart.FromBaseline(s_flow, constants: MovingRangeConstants.Printed));
        book.Check(set, "mean", exact.Centre, 1e-13);
        book.Check(set, "sd", Moments.StandardDeviation(s_flow), 1e-13);
        book.Check(set, "MRbar", exact.MeanRange, 1e-13);
        book.Check(set, "UCL_exact_d2", exact.Limits.High, 1e-13);
        book.Check(set, "LCL_exact_d2", exact.Limits.Low, 1e-13);
        book.Check(set, "UCL_1.128", printed.Limits.High, 1e-13);
        book.Check(set, "LCL_1.128", printed.Limits.Low, 1e-13);
        book.Check(set, "MR_UCL_exact_D4", exact.RangeLimit, 1e-13);
        book.Check(set, "MR_UCL_3.267", printed.RangeLimit, 1e-13);
        book.Check(set, "sigma_hat_exact", exact.StandardDeviation, 1e-13);
        book.Check(set, "median_MR", Quantiles.Median(MovingRange.Of(s_flow)), 1e-13);
        book.Check(set, "sigma_medMR", IndividualsChart.FromBaseline(s_flow, MovingRangeCentre.Median).StandardDeviation, 1e-13);
        book.Leave(set, "3/d2 rounded to 2.66: the library offers the exact constant and the printed divisor 1.128", "UCL_2.66", "LCL_2.66");
    }

    private static void Ewma(AccuracyBook book)
    {
        const string set = "ewma_nist";
        var chart = EwmaChart.Known(50, 2.0539, 0.3, 3);
        var early = EwmaChart.Known(50, 2.0539, 0.3, 3, EwmaLimits.TimeVarying);
        var points = chart.Points(Oracle.Column("ewma-chart.csv", 1));
        book.Check(set, "sqrt(lambda/(2-lambda))", (chart.LimitsAt(1).High - 50) / (3 * 2.0539), 1e-12);
        book.Check(set, "UCL_asym", chart.LimitsAt(1).High, 1e-13);
        book.Check(set, "LCL_asym", chart.LimitsAt(1).Low, 1e-13);
        book.Check(set, "UCL_t1", early.LimitsAt(1).High, 1e-13);
        book.Check(set, "LCL_t1", early.LimitsAt(1).Low, 1e-13);
        book.Check(set, "UCL_t5", early.LimitsAt(5).High, 1e-13);
        book.Check(set, "LCL_t5", early.LimitsAt(5).Low, 1e-13);
        book.Check(set, "ewma20", points[19].Plotted, 1e-13);
        double[] printed = Oracle.Column("ewma-chart.csv", 3), upper = Oracle.Column("ewma-chart.csv", 4);
        for (var i = 0; i < points.Count; i++)
        {
            book.CheckPublished(set, $"EWMA {i + 1}, printed to 2 decimals", printed[i], points[i].Plotted, 1.2e-4, "[nist-handbook] 6.3.2.4, rounded");
            book.CheckPublished(set, $"upper limit {i + 1}", upper[i], early.LimitsAt(i + 1).High, 1e-11, "closed form");
        }
    }

    private static void Cusum(AccuracyBook book)
    {
        var points = CusumChart.Of(325, 0.3175, 4.1959).Points(Oracle.Column("cusum-chart.csv", 1));
        book.Check("cusum_nist", "first_signal", points.First(p => p.Signals).Index + 1, 0);
        book.Check("cusum_nist", "S_hi_14", points[13].High, 1e-11);
        book.Check("cusum_nist", "S_hi_20", points[19].High, 1e-11);
        double[] high = Oracle.Column("cusum-chart.csv", 2), low = Oracle.Column("cusum-chart.csv", 3);
        for (var i = 0; i < points.Count; i++)
        {
            // Differences of numbers near 325: three digits go with the subtraction.
            if (high[i] > 0) book.CheckPublished("cusum_nist", $"high sum {i + 1}", high[i], points[i].High, 1e-9, "[nist-handbook] 6.3.2.3");
            if (low[i] > 0) book.CheckPublished("cusum_nist", $"low sum {i + 1}", low[i], points[i].Low, 1e-9, "[nist-handbook] 6.3.2.3");
        }
    }
}
