using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Analytics.Statistics.Resampling;

/// <summary>Where resampled statistics lie about the estimate.</summary>
/// <param name="Bias">Their mean less the estimate.</param>
/// <param name="StandardError">Their standard deviation, divisor B − 1.</param>
/// <param name="Below">How many lie below the estimate.</param>
/// <param name="Above">How many lie above it.</param>
/// <param name="IsFinite">Whether all are finite; nothing else holds when not.</param>
internal readonly record struct ResampleScatter(double Bias, double StandardError, int Below, int Above, bool IsFinite)
{
    // Equal to this many parts of the largest value counts as equal: sums in another order differ in the last digit.
    private const double Tie = 1e-12;

    // Sums in eight lanes whatever the processor has, so that the last digit does not depend on it.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static ResampleScatter Of(ReadOnlySpan<double> statistics, double estimate)
    {
        if (statistics.IsEmpty) return new(0, 0, 0, 0, true);
        var eights = MemoryMarshal.Cast<double, Vector512<double>>(statistics);
        var rest = statistics[(eights.Length * 8)..];
        var (centre, shifts, squares, sizes) = (Vector512.Create(estimate), Vector512<double>.Zero, Vector512<double>.Zero, Vector512<double>.Zero);
        foreach (var values in eights)
        {
            var d = values - centre;
            shifts += d;
            squares += d * d;
            sizes = Vector512.Max(sizes, Vector512.Abs(values));
        }

        double shift = 0, square = 0, largest = Math.Abs(estimate);
        for (var lane = 0; lane < 8; lane++)
        {
            shift += shifts[lane];
            square += squares[lane];
            largest = Math.Max(largest, sizes[lane]);
        }

        foreach (var value in rest)
        {
            var d = value - estimate;
            shift += d;
            square += d * d;
            largest = Math.Max(largest, Math.Abs(value));
        }

        var n = statistics.Length;
        if (!double.IsFinite(largest)) return default;
        var (below, above) = Sides(eights, rest, estimate, Tie * largest);
        return new(shift / n, n > 1 ? Math.Sqrt(Math.Max(0, square - shift * shift / n) / (n - 1)) : 0, below, above, true);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static (int Below, int Above) Sides(ReadOnlySpan<Vector512<double>> eights, ReadOnlySpan<double> rest, double estimate, double tie)
    {
        var (low, high) = (Vector512.Create(estimate - tie), Vector512.Create(estimate + tie));
        var (belows, aboves) = (Vector512<long>.Zero, Vector512<long>.Zero);
        foreach (var values in eights)
        {
            // A comparison that holds is −1 in its lane.
            belows -= Vector512.LessThan(values, low).AsInt64();
            aboves -= Vector512.GreaterThan(values, high).AsInt64();
        }

        var (below, above) = ((int)Vector512.Sum(belows), (int)Vector512.Sum(aboves));
        foreach (var value in rest)
        {
            below += value < estimate - tie ? 1 : 0;
            above += value > estimate + tie ? 1 : 0;
        }

        return (below, above);
    }
}
