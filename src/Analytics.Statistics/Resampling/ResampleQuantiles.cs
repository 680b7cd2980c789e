using System.Buffers;
using System.Runtime.CompilerServices;
using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Resampling;

/// <summary>Two quantiles of the resampled statistics, without sorting all of them.</summary>
internal static class ResampleQuantiles
{
    // A tail is looked for among the values this many SE inside the place a normal law gives it.
    private const double Slack = 0.25;

    /// <summary>Quantiles at two shares, the first below the second.</summary>
    public static (double Low, double High) Of(BootstrapDistribution from, double low, double high, EndPoint endPoint)
    {
        // The statistics are an array in all but type.
        var all = from.Statistics as double[] ?? [.. from.Statistics];
        var (first, last) = (Between.Of(low, all.Length, endPoint), Between.Of(high, all.Length, endPoint));
        var (centre, error) = (from.Estimate + from.Bias, from.StandardError);
        var buffer = ArrayPool<double>.Shared.Rent(2 * all.Length);
        try
        {
            Span<double> below = buffer.AsSpan(0, all.Length), above = buffer.AsSpan(all.Length, all.Length);
            var (lows, highs) = Tails(all, centre + error * (NormalLaw.Quantile(low) + Slack), centre + error * (NormalLaw.Quantile(high) - Slack), below, above);
            var left = all.Length - highs;
            return (
                lows > first.Above ? Placed(below[..lows], first, 0) : Placed(Copied(all, below), first, 0),
                left <= last.Below ? Placed(above[..highs], last, left) : Placed(Copied(all, above), last, 0));
        }
        finally
        {
            ArrayPool<double>.Shared.Return(buffer);
        }
    }

    /// <summary>The values up to one cut and those from another on, in one reading; how many there are.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static (int Lows, int Highs) Tails(double[] all, double lowCut, double highCut, Span<double> below, Span<double> above)
    {
        var (lows, highs) = (0, 0);
        foreach (var value in all)
        {
            // Written always, kept by moving on: no branch for the processor to guess.
            (below[lows], above[highs]) = (value, value);
            lows += value <= lowCut ? 1 : 0;
            highs += value >= highCut ? 1 : 0;
        }
        return (lows, highs);
    }

    private static Span<double> Copied(double[] all, Span<double> buffer)
    {
        all.CopyTo(buffer);
        return buffer;
    }

    private static double Placed(Span<double> values, Between place, int left)
    {
        OrderStatistics.Place(values, [place.Below - left, place.Above - left]);
        return place.In(values, left);
    }

    /// <summary>A place between two ranks (from 0).</summary>
    private readonly record struct Between(int Below, int Above, double Weight)
    {
        public static Between Of(double p, int n, EndPoint endPoint) => endPoint == EndPoint.Type7 ? Straight(p, n) : NormalScale(p, n);

        /// <summary>The value among placed ones whose first rank is <paramref name="left"/>.</summary>
        public double In(Span<double> placed, int left)
        {
            var below = placed[Below - left];
            return Weight == 0 ? below : below + Weight * (placed[Above - left] - below);
        }

        private static Between Straight(double p, int n)
        {
            var position = (n - 1) * p;
            var below = Math.Min((int)position, n - 1);
            return new(below, Math.Min(below + 1, n - 1), position - below);
        }

        // Beyond the outermost resample nothing can be interpolated: its value is taken.
        private static Between NormalScale(double p, int n)
        {
            var position = (n + 1) * p;
            var k = (int)position;
            if (k == 0) return new(0, 0, 0);
            if (k >= n) return new(n - 1, n - 1, 0);
            var from = NormalLaw.Quantile(k / (n + 1.0));
            var weight = position > k ? (NormalLaw.Quantile(p) - from) / (NormalLaw.Quantile((k + 1) / (n + 1.0)) - from) : 0;
            return new(k - 1, k, weight);
        }
    }
}
