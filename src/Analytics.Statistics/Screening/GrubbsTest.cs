using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;
using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Screening;

/// <summary>Which side an outlier is expected on, decided before looking.</summary>
public enum OutlierSide
{
    /// <summary>Either side.</summary>
    Both,

    /// <summary>The largest value.</summary>
    High,

    /// <summary>The smallest value.</summary>
    Low,
}

/// <summary>Grubbs' test for one outlier among normal values [grubbs1969; nist-handbook].</summary>
/// <param name="Suspect">The value tested; its statistic is G = distance from the mean in SDs.</param>
/// <param name="Side">Which side was asked about.</param>
/// <param name="Critical">G that is passed at most at the rate <paramref name="Alpha"/> without an outlier.</param>
/// <param name="PBound">Upper bound of p (Bonferroni), at most 1; nearly exact when small.</param>
/// <param name="Alpha">Rate of false alarms allowed.</param>
/// <param name="N">Number of values.</param>
public sealed record GrubbsTest(ScreenedValue Suspect, OutlierSide Side, double Critical, double PBound, double Alpha, int N) : Result
{
    /// <summary>The statistic, in standard deviations.</summary>
    public double G => Suspect.Statistic;

    /// <summary>Whether the suspect is farther out than chance explains. It is named, not removed.</summary>
    public bool IsOutlier => G > Critical;

    /// <summary>Tests the value farthest out. A second outlier can hide the first: use <see cref="GeneralisedEsd"/> when there may be several.</summary>
    /// <param name="values">At least three finite values, not all equal, normal but for the outlier.</param>
    /// <param name="side">Which side, decided before looking.</param>
    /// <param name="alpha">Rate of false alarms, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">Too few values, or all equal.</exception>
    public static GrubbsTest Of(IReadOnlyList<double> values, OutlierSide side = OutlierSide.Both, double alpha = 0.05)
    {
        Require.Sample(values, 3, nameof(values));
        double mean = Moments.Mean(values), sd = Moments.StandardDeviation(values);
        if (sd <= 0) throw new ArgumentException($"All {values.Count} values are equal; Grubbs' test needs some spread.", nameof(values));
        var suspect = values.Select((v, i) => new ScreenedValue(i, v, Distance(v - mean, side) / sd)).MaxBy(v => v.Statistic)!;
        var n = values.Count;
        return new(suspect, side, CriticalValue(n, side, alpha), BoundOf(suspect.Statistic, n, side), alpha, n);
    }

    /// <summary>(n − 1)/√n √(t²/(n − 2 + t²)) with t(n − 2) at α/(2n) for both sides, α/n for one.</summary>
    /// <param name="n">Number of values, at least 3.</param>
    /// <param name="side">Which side.</param>
    /// <param name="alpha">Rate of false alarms, above 0 and below 1.</param>
    public static double CriticalValue(int n, OutlierSide side = OutlierSide.Both, double alpha = 0.05)
    {
        Require.AtLeast(n, 3, nameof(n));
        var t = StudentLaw.Quantile(Require.Share(alpha, nameof(alpha)) / Tails(n, side), n - 2);
        return (n - 1) / Math.Sqrt(n) * Math.Sqrt(t * t / (n - 2 + t * t));
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Is one value an outlier?", "Grubbs' test, normal values [grubbs1969]",
        [
            new($"value {Suspect.Index + 1}", Suspect.Value) { Note = IsOutlier ? "farther out than chance explains; find out why" : "not farther out than chance explains" },
            new("G", G, "SD") { DegreesOfFreedom = N - 2 },
            new("critical G", Critical, "SD") { Note = FormattableString.Invariant($"{(Side == OutlierSide.Both ? "either side" : Side == OutlierSide.High ? "largest value" : "smallest value")}, {100 * Alpha:0.##} % false alarms") },
            new("p at most", PBound),
        ])
    { Basis = $"{N} values", Remarks = ["The value stays in the data."] };

    private static double BoundOf(double g, int n, OutlierSide side)
    {
        // G and t are tied by t² = n (n − 2) G² / ((n − 1)² − n G²); at its largest possible G, t is infinite.
        var rest = (n - 1.0) * (n - 1) - n * g * g;
        if (g <= 0) return 1;
        if (rest <= 0) return 0;
        return Math.Min(1, Tails(n, side) * StudentLaw.Cdf(-Math.Sqrt(n * (n - 2.0) * g * g / rest), n - 2));
    }

    private static int Tails(int n, OutlierSide side) => side switch
    {
        OutlierSide.Both => 2 * n,
        OutlierSide.High or OutlierSide.Low => n,
        _ => throw new ArgumentOutOfRangeException(nameof(side), side, $"{side} is not a known side."),
    };

    private static double Distance(double deviation, OutlierSide side) => side switch
    {
        OutlierSide.High => deviation,
        OutlierSide.Low => -deviation,
        _ => Math.Abs(deviation),
    };
}
