using Analytics.Statistics.Association;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>Printed example of a correlation within subjects [blandaltman1995], as worked again by [bakdash2017].</summary>
public sealed class WithinAthletesAccuracy : AccuracySection
{
    public override string Section => "8";

    public override string Title => "Correlation within athletes";

    public override void Fill(AccuracyBook book)
    {
        const string set = "bland1995";
        var subject = Oracle.Column("bland-altman-1995.csv", 0);
        double[] ph = Oracle.Column("bland-altman-1995.csv", 1), gas = Oracle.Column("bland-altman-1995.csv", 2);
        var r = RepeatedMeasuresCorrelation.Of(subject, gas, ph);
        var older = RepeatedMeasuresCorrelation.Of(subject, gas, ph, version: RepeatedMeasuresInterval.Degrees);
        book.Check(set, "n_obs", r.Pairs, 0);
        book.Check(set, "n_subjects", r.Athletes, 0);
        book.Check(set, "df", r.DegreesOfFreedom, 0);
        book.Check(set, "slope_common_pH_on_PaCO2", r.Slope, 1e-11);
        book.Check(set, "SS_factor", r.ExplainedSquares, 1e-11);
        book.Check(set, "SS_error", r.ResidualSquares, 1e-11);
        book.Check(set, "F", r.F!.Value, 1e-11);
        book.Check(set, "r_rm", r.Value, 1e-12);
        book.Check(set, "p", r.P, 1e-10);
        book.Check(set, "lo95_df+2", r.Interval!.Value.Low, 1e-11);
        book.Check(set, "hi95_df+2", r.Interval!.Value.High, 1e-11);
        book.Check(set, "lo95_df", older.Interval!.Value.Low, 1e-11);
        book.Check(set, "hi95_df", older.Interval!.Value.High, 1e-11);
        book.Check(set, "r_naive_all_points", Correlation.Pearson(gas, ph).Value, 1e-10);
        var means = Enumerable.Range(0, subject.Length).GroupBy(i => subject[i]).Select(g => (X: g.Average(i => gas[i]), Y: g.Average(i => ph[i]))).ToList();
        book.Check(set, "r_subject_means_unweighted", Correlation.Pearson([.. means.Select(m => m.X)], [.. means.Select(m => m.Y)]).Value, 1e-10);
    }
}
