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
        var buffer = ArrayPool<double>.Shared.Rent(all.Length);
        try
        {
            return (
                LowTail(all, first, centre + error * (NormalLaw.Quantile(low) + Slack), buffer),
                HighTail(all, last, centre + error * (NormalLaw.Quantile(high) - Slack), buffer));
        }
        finally
        {
            ArrayPool<double>.Shared.Return(buffer);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static double LowTail(double[] all, Between place, double cut, double[] tail)
    {
        var count = 0;
        foreach (var value in all)
        {
            // Written always, kept by moving on: no branch for the processor to guess.
            tail[count] = value;
            count += value <= cut ? 1 : 0;
        }

        return count > place.Above ? Placed(tail.AsSpan(0, count), place, 0) : Placed(Copied(all, tail), place, 0);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static double HighTail(double[] all, Between place, double cut, double[] tail)
    {
        var count = 0;
        foreach (var value in all)
        {
            tail[count] = value;
            count += value >= cut ? 1 : 0;
        }

        var left = all.Length - count;
        return left <= place.Below ? Placed(tail.AsSpan(0, count), place, left) : Placed(Copied(all, tail), place, 0);
    }

    private static Span<double> Copied(double[] all, double[] buffer)
    {
        all.CopyTo(buffer, 0);
        return buffer.AsSpan(0, all.Length);
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
