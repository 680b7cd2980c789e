namespace Analytics.Metrics.Contact;

/// <summary>Value and slope of a series at one moment.</summary>
/// <param name="Value">In the unit of the series.</param>
/// <param name="ValueVariance">Variance by the error of the samples.</param>
/// <param name="Slope">By second.</param>
/// <param name="SlopeVariance">Variance by the error of the samples.</param>
/// <param name="Samples">Samples used.</param>
internal readonly record struct LocalValue(double Value, double ValueVariance, double Slope, double SlopeVariance, int Samples);

/// <summary>
/// A polynomial of low degree through the samples near a moment, by least squares in orthogonal polynomials. Unlike a filter it can be kept to one side of a moment: what happens after the first touch says
/// nothing about the run before it. The error of a sample is given where it is known, and taken from the scatter about the curve otherwise.
/// </summary>
internal static class LocalCurve
{
    /// <summary>Value and slope at a moment; null with fewer than degree + 2 samples.</summary>
    /// <param name="seconds">Times.</param>
    /// <param name="values">Values at those times.</param>
    /// <param name="at">The moment, s.</param>
    /// <param name="degree">1 to 3.</param>
    /// <param name="sampleSd">SD of one sample, independent from sample to sample; null when not known.</param>
    public static LocalValue? At(IReadOnlyList<double> seconds, IReadOnlyList<double> values, double at, int degree, double? sampleSd)
    {
        var n = seconds.Count;
        if (n < degree + 2) return null;
        double middle = (seconds[0] + seconds[^1]) / 2, half = (seconds[^1] - seconds[0]) / 2;
        double x = (at - middle) / half, value = 0, slope = 0, valueShare = 0, slopeShare = 0;
        double[] u = [.. seconds.Select(s => (s - middle) / half)], left = [.. values], before = new double[n], now = [.. Enumerable.Repeat(1.0, n)];
        // Three-term recurrence of polynomials orthogonal over these samples; p and d are the polynomial and its derivative at the moment.
        double beforeNorm = 1, beforeP = 0, beforeD = 0, p = 1, d = 0;
        for (var k = 0; k <= degree; k++)
        {
            double norm = 0, mean = 0, share = 0;
            for (var i = 0; i < n; i++) (norm, mean, share) = (norm + (now[i] * now[i]), mean + (u[i] * now[i] * now[i]), share + (left[i] * now[i]));
            var c = share / norm;
            (value, slope, valueShare, slopeShare) = (value + (c * p), slope + (c * d), valueShare + (p * p / norm), slopeShare + (d * d / norm));
            double a = mean / norm, b = k == 0 ? 0 : norm / beforeNorm;
            for (var i = 0; i < n; i++)
            {
                left[i] -= c * now[i];
                (before[i], now[i]) = (now[i], ((u[i] - a) * now[i]) - (b * before[i]));
            }
            (beforeP, p, beforeD, d, beforeNorm) = (p, ((x - a) * p) - (b * beforeP), d, p + ((x - a) * d) - (b * beforeD), norm);
        }
        var variance = sampleSd is { } sd ? sd * sd : left.Sum(r => r * r) / (n - degree - 1);
        return new(value, valueShare * variance, slope / half, slopeShare * variance / (half * half), n);
    }
}
