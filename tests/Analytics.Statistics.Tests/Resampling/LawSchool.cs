using Analytics.Statistics.Resampling;

namespace Analytics.Statistics.Tests.Resampling;

/// <summary>Efron's law schools [efron1987] and 999 fixed resamples of them, which take the random numbers out of a test.</summary>
internal static class LawSchool
{
    public static readonly double[] Test = Oracle.Column("law-school.csv", 0);

    public static readonly double[] Grade = Oracle.Column("law-school.csv", 1);

    public static readonly int[][] Resamples =
        [.. Oracle.Rows("law-school-resamples.csv").Select(r => r.Select(c => (int)Oracle.Number(c) - 1).ToArray())];

    public static BootstrapDistribution Fixed()
        => Bootstrap.FromResamples(15, rows => CorrelationOf(Test, Grade, rows), Resamples) with
        {
            Influence = Bootstrap.Correlation(Test, Grade, new() { Resamples = 100 }).Influence,
        };

    /// <summary>The correlation written another way than the library's.</summary>
    public static double CorrelationOf(double[] x, double[] y, ReadOnlySpan<int> rows)
    {
        double mx = 0, my = 0, xx = 0, yy = 0, xy = 0;
        foreach (var row in rows)
        {
            mx += x[row] / rows.Length;
            my += y[row] / rows.Length;
        }

        foreach (var row in rows)
        {
            xx += (x[row] - mx) * (x[row] - mx);
            yy += (y[row] - my) * (y[row] - my);
            xy += (x[row] - mx) * (y[row] - my);
        }

        return xy / Math.Sqrt(xx * yy);
    }
}
