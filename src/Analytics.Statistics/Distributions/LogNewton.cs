namespace Analytics.Statistics.Distributions;

/// <summary>Solves P(x) = p for a monotone probability by Newton steps on ln P, which is nearly straight in the tails, kept inside a bracket.</summary>
internal static class LogNewton
{
    /// <summary>The x with value(x).P = p.</summary>
    /// <param name="value">Probability and its slope at x.</param>
    /// <param name="p">Above 0 and below 1.</param>
    /// <param name="start">Where to begin.</param>
    /// <param name="rising">Whether P rises with x.</param>
    public static double Solve(Func<double, (double P, double Slope)> value, double p, double start, bool rising)
    {
        double low = double.NegativeInfinity, high = double.PositiveInfinity, x = start, reach = 1 + Math.Abs(start);
        for (var i = 0; i < 400; i++)
        {
            var (probability, slope) = value(x);
            var miss = Math.Log(probability / p);
            if (miss == 0) return x;
            if (miss > 0 == rising) high = x; else low = x;
            var next = x - miss * probability / slope;
            if (!(next > low && next < high))
            {
                if (double.IsFinite(low) && double.IsFinite(high)) next = (low + high) / 2;
                else
                {
                    next = double.IsFinite(low) ? low + reach : high - reach;
                    reach *= 2;
                }
            }

            // Newton doubles the digits: a step this small has already reached the last one.
            if (Math.Abs(next - x) <= 1e-12 * Math.Max(Math.Abs(next), 1e-3) || next == low || next == high) return next;
            x = next;
        }

        return x;
    }
}
