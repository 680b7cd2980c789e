namespace Analytics.Statistics.Distributions;

/// <summary>Inverts a distribution function on the positive axis to near full double precision.</summary>
internal static class QuantileSearch
{
    /// <summary>
    /// The x above 0 with cdf(x) = p. Newton steps on ln x, kept inside a bracket that every step shrinks;
    /// bisection takes over when Newton leaves it, so the search cannot fail for a continuous law.
    /// </summary>
    public static double Positive(Func<double, double> cdf, Func<double, double> density, double p)
    {
        double low = -700, high = 700, y = 0;
        for (var step = 0; step < 200; step++)
        {
            var x = Math.Exp(y);
            var miss = cdf(x) - p;
            if (miss == 0) return x;
            if (miss > 0) high = y; else low = y;

            var next = y - miss / (density(x) * x);
            if (!(next > low && next < high)) next = (low + high) / 2;
            // Newton doubles the digits: a step this small has already reached the last one.
            if (Math.Abs(next - y) < 1e-11) return Math.Exp(next);
            y = next;
        }

        return Math.Exp(y);
    }
}
