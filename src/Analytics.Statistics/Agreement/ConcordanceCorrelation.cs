using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;
using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Agreement;

/// <summary>Lin's concordance: how closely pairs follow the line y = x, a shift and a change of scale counted against them [lin1989].</summary>
/// <remarks>Like every correlation it is high in a mixed group; limits of agreement say how large a difference is.</remarks>
/// <param name="Value">2 s_xy/(s_x² + s_y² + (mean difference)²), divisor n; −1 to 1.</param>
/// <param name="Interval">By Fisher's z with the variance of the source as corrected in 2000; null where Pearson's correlation is 0 and that variance has no value.</param>
/// <param name="Pearson">Pearson's correlation: precision.</param>
/// <param name="BiasFactor">Value/Pearson: accuracy, at most 1; null where Pearson's correlation is 0.</param>
/// <param name="N">Pairs.</param>
public sealed record ConcordanceCorrelation(double Value, Interval? Interval, double Pearson, double? BiasFactor, int N) : Result
{
    /// <summary>Concordance of two methods.</summary>
    /// <param name="x">First method; at least three finite values, not all equal.</param>
    /// <param name="y">Second method, same athletes in the same order, not all equal.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">Too few pairs, lists of different length, or a method that does not vary.</exception>
    public static ConcordanceCorrelation Of(IReadOnlyList<double> x, IReadOnlyList<double> y, double level = 0.95)
    {
        Require.Sample(x, 3, nameof(x));
        Require.Sample(y, 3, nameof(y));
        Require.Share(level, nameof(level));
        if (x.Count != y.Count) throw new ArgumentException($"{x.Count} values of x but {y.Count} of y; every pair needs both.", nameof(y));
        var n = x.Count;
        double meanX = Moments.Mean(x), meanY = Moments.Mean(y);
        double xx = 0, yy = 0, xy = 0;
        for (var i = 0; i < n; i++)
        {
            double dx = x[i] - meanX, dy = y[i] - meanY;
            xx += dx * dx / n;
            yy += dy * dy / n;
            xy += dx * dy / n;
        }

        if (xx <= 0 || yy <= 0) throw new ArgumentException($"All {n} values of {(xx <= 0 ? nameof(x) : nameof(y))} are equal; a correlation needs some spread.", xx <= 0 ? nameof(x) : nameof(y));
        var shift = meanX - meanY;
        var value = 2 * xy / (xx + yy + shift * shift);
        var r = Math.Clamp(xy / Math.Sqrt(xx * yy), -1, 1);
        return new(value, IntervalOf(value, r, shift * shift / Math.Sqrt(xx * yy), n, level), r, r == 0 ? null : value / r, n);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Concordance", "Lin's concordance correlation, interval by Fisher's z [lin1989]",
        [new("concordance", Value) { Interval = Interval }, new("precision (Pearson)", Pearson), new("accuracy (bias factor)", BiasFactor)])
    { Basis = $"{N} pairs" };

    private static Interval? IntervalOf(double c, double r, double shift, int n, double level)
    {
        if (r == 0) return null;
        var rest = 1 - c * c;
        if (rest <= 0) return new(c, c, level);
        var variance = ((1 - r * r) * c * c / (rest * r * r)
            + 2 * c * c * c * (1 - c) * shift / (r * rest * rest)
            - c * c * c * c * shift * shift / (2 * r * r * rest * rest)) / (n - 2);
        if (!(variance >= 0)) return null;
        var reach = NormalLaw.TwoSided(level) * Math.Sqrt(variance);
        var z = Math.Atanh(c);
        return new(Math.Tanh(z - reach), Math.Tanh(z + reach), level);
    }
}
