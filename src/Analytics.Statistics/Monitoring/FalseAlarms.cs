using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Monitoring;

/// <summary>How often a chart cries out when nothing has changed. All rates take the values as normal and independent.</summary>
/// <param name="PerPoint">Chance that a new point signals; null when it changes from point to point.</param>
/// <param name="RunLength">Mean number of points until the first false alarm; null when it is not known.</param>
/// <param name="Basis">What the figures rest on, in words a report can print.</param>
public sealed record FalseAlarms(double? PerPoint, double? RunLength, string Basis) : Result
{
    /// <summary>Limits of k standard deviations about a centre, both known: 2 Φ(−k); for k = 3 one point in 370.</summary>
    /// <param name="k">Width in standard deviations, above 0.</param>
    public static FalseAlarms KnownLimits(double k)
    {
        var rate = 2 * NormalLaw.Cdf(-Require.AnyPositive(k, nameof(k)));
        return new(rate, 1 / rate, "centre and SD taken as known");
    }

    /// <summary>
    /// Mean ± k s from m baseline points, one new point: 2 P(T(m − 1) &lt; −k/√(1 + 1/m)). The rate is over baselines; one baseline stays, so points judged
    /// by it are not independent and no run length follows.
    /// </summary>
    /// <param name="k">Width in standard deviations, above 0.</param>
    /// <param name="m">Baseline points, at least 2.</param>
    public static FalseAlarms OwnBaseline(double k, int m)
    {
        Require.AtLeast(m, 2, nameof(m));
        var t = Require.AnyPositive(k, nameof(k)) / Math.Sqrt(1 + 1.0 / m);
        return new(2 * StudentLaw.Cdf(-t, m - 1), null, FormattableString.Invariant($"mean and SD of {m} baseline points; average over baselines"));
    }

    /// <summary>
    /// Limits of three SD by the mean moving range of m baseline points, one new point. No closed form: measured, 400,000 baselines a size, standard errors
    /// 3·10⁻⁴ (m = 3) to 10⁻⁵ (m = 50), straight in 1/m between the sizes measured; beyond 50 toward the known limits.
    /// </summary>
    /// <param name="m">Baseline points, at least 3.</param>
    public static FalseAlarms MovingRangeBaseline(int m)
    {
        Require.AtLeast(m, 3, nameof(m));
        var above = Array.FindIndex(s_measured, r => r.Points >= m);
        if (above < 0)
        {
            var (last, known) = (s_measured[^1], 2 * NormalLaw.Cdf(-3));
            return new(known + (last.Rate - known) * last.Points / m, null, Words(m));
        }

        var high = s_measured[above];
        if (high.Points == m) return new(high.Rate, null, Words(m));
        var low = s_measured[above - 1];
        var share = (1.0 / low.Points - 1.0 / m) / (1.0 / low.Points - 1.0 / high.Points);
        return new(low.Rate + share * (high.Rate - low.Rate), null, Words(m));
    }

    private static readonly (int Points, double Rate)[] s_measured =
    [
        (3, 0.1116356), (5, 0.0570266), (8, 0.0310684), (10, 0.0233519), (15, 0.0145322), (20, 0.0109256), (30, 0.0076121), (50, 0.0053663),
    ];

    /// <summary>In words for a report: the rate of a point, the run length, what they rest on.</summary>
    public string InWords()
    {
        var rate = PerPoint is { } p ? FormattableString.Invariant($"{100 * p:0.##} % of points without any change signal. ") : string.Empty;
        var run = RunLength is { } r ? FormattableString.Invariant($"First false alarm after {r:0} points on average. ") : string.Empty;
        return $"{rate}{run}({Basis}; values normal and independent)";
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("False alarms of a chart", "chance of a signal while nothing has changed",
    [
        new("points that signal without any change", 100 * PerPoint, "%") { Note = PerPoint is null ? "changes from point to point" : string.Empty },
        new("mean points to the first false alarm", RunLength) { Note = RunLength is null ? "not known" : string.Empty },
    ]) { Basis = Basis, Remarks = ["Values are taken as normal and independent."] };

    private static string Words(int m) => FormattableString.Invariant($"mean moving range of {m} baseline points; average over baselines, measured");
}
