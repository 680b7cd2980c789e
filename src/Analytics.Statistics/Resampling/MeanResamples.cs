using System.Buffers;
using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Analytics.Statistics.Resampling;

/// <summary>
/// Means of resamples without making a resample: the deviations of the drawn values are summed as they are drawn. Up to
/// <see cref="ResampleStream.MostForPairs"/> values a table holds the sum of every pair, and one digit in base n² draws two values at once; it draws
/// the same two that two digits in base n would, so the resamples are those of any other statistic with the same seed.
/// </summary>
internal sealed class MeanResamples : IDisposable
{
    private readonly double _mean;
    private readonly double[] _deviations;
    private readonly int _states;

    // From the shared pool: the same memory from call to call stays near the processor.
    private readonly double[]? _pairs;

    public MeanResamples(double[] values, double mean)
    {
        _mean = mean;
        _deviations = Array.ConvertAll(values, v => v - mean);
        if (values.Length > ResampleStream.MostForPairs) return;
        _states = values.Length * values.Length;
        _pairs = ArrayPool<double>.Shared.Rent(_states);
        for (var i = 0; i < values.Length; i++)
        {
            for (var j = 0; j < values.Length; j++) _pairs[i * values.Length + j] = _deviations[i] + _deviations[j];
        }
    }

    public void Dispose()
    {
        if (_pairs is not null) ArrayPool<double>.Shared.Return(_pairs);
    }

    public void Fill(ResampleStream stream, int first, Span<double> means)
    {
        var done = 0;
        if (_pairs is not null && Vector512.IsHardwareAccelerated)
        {
            for (; done + 8 <= means.Length; done += 8) Eight(stream, first + done, means.Slice(done, 8), _pairs);
        }

        if (_pairs is not null)
        {
            for (; done + 4 <= means.Length; done += 4) Four(stream, first + done, means.Slice(done, 4), _pairs);
        }

        for (; done < means.Length; done++)
            means[done] = _pairs is null ? Singly(stream, first + done) : InPairs(stream, first + done, _pairs);
        var b = 0;
        Vector<double> mean = new(_mean), n = new(_deviations.Length);
        for (; b + Vector<double>.Count <= means.Length; b += Vector<double>.Count) (mean + (new Vector<double>(means[b..]) / n)).CopyTo(means[b..]);
        for (; b < means.Length; b++) means[b] = _mean + means[b] / _deviations.Length;
    }

    private double InPairs(ResampleStream stream, int resample, double[] pairs)
    {
        var position = stream.Start(resample);
        var n = (ulong)_states;
        double sum = 0;
        for (var left = stream.Draws / 4; left > 0; left--)
        {
            var word = ResampleStream.Next(ref position);
            sum += pairs[(int)((uint)word * n >> 32)];
            sum += pairs[(int)((word >> 32) * n >> 32)];
        }

        return sum + Rest(position, stream.Draws % 4, n, pairs);
    }

    // Four resamples in turn, so that none waits for its own last addition; each summed in the same order as alone.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Four(ResampleStream stream, int first, Span<double> sums, double[] pairs)
    {
        ulong p0 = stream.Start(first), p1 = stream.Start(first + 1), p2 = stream.Start(first + 2), p3 = stream.Start(first + 3), n = (ulong)_states;
        double s0 = 0, s1 = 0, s2 = 0, s3 = 0;
        for (var steps = stream.Draws / 4; steps > 0; steps--)
        {
            ulong w0 = ResampleStream.Next(ref p0), w1 = ResampleStream.Next(ref p1), w2 = ResampleStream.Next(ref p2), w3 = ResampleStream.Next(ref p3);
            s0 = s0 + pairs[(int)((uint)w0 * n >> 32)] + pairs[(int)((w0 >> 32) * n >> 32)];
            s1 = s1 + pairs[(int)((uint)w1 * n >> 32)] + pairs[(int)((w1 >> 32) * n >> 32)];
            s2 = s2 + pairs[(int)((uint)w2 * n >> 32)] + pairs[(int)((w2 >> 32) * n >> 32)];
            s3 = s3 + pairs[(int)((uint)w3 * n >> 32)] + pairs[(int)((w3 >> 32) * n >> 32)];
        }

        var rest = stream.Draws % 4;
        (sums[0], sums[1]) = (s0 + Rest(p0, rest, n, pairs), s1 + Rest(p1, rest, n, pairs));
        (sums[2], sums[3]) = (s2 + Rest(p2, rest, n, pairs), s3 + Rest(p3, rest, n, pairs));
    }

    // Eight resamples side by side, each summed in the same order as alone: the last digit is the same on every processor.
    // Compiled well at once: in a notebook it often runs a single time.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Eight(ResampleStream stream, int first, Span<double> sums, double[] pairs)
    {
        var positions = stream.StartOfEight(first);
        var n = Vector512.Create((ulong)_states);
        // A half word times n, shifted, is always below n: no bounds to check.
        ref var table = ref MemoryMarshal.GetArrayDataReference(pairs);
        double s0 = 0, s1 = 0, s2 = 0, s3 = 0, s4 = 0, s5 = 0, s6 = 0, s7 = 0;
        for (var steps = stream.Draws / 4; steps > 0; steps--)
        {
            var words = ResampleStream.At(positions);
            positions = ResampleStream.After(positions);
            var (low, high) = (TimesLowHalf(words, n) >>> 32, TimesLowHalf(words >>> 32, n) >>> 32);
            s0 = s0 + At(ref table, low, 0) + At(ref table, high, 0);
            s1 = s1 + At(ref table, low, 1) + At(ref table, high, 1);
            s2 = s2 + At(ref table, low, 2) + At(ref table, high, 2);
            s3 = s3 + At(ref table, low, 3) + At(ref table, high, 3);
            s4 = s4 + At(ref table, low, 4) + At(ref table, high, 4);
            s5 = s5 + At(ref table, low, 5) + At(ref table, high, 5);
            s6 = s6 + At(ref table, low, 6) + At(ref table, high, 6);
            s7 = s7 + At(ref table, low, 7) + At(ref table, high, 7);
        }

        (sums[0], sums[1], sums[2], sums[3], sums[4], sums[5], sums[6], sums[7]) = (s0, s1, s2, s3, s4, s5, s6, s7);
        var rest = stream.Draws % 4;
        if (rest == 0) return;
        Span<ulong> left = stackalloc ulong[8];
        positions.CopyTo(left);
        for (var b = 0; b < 8; b++) sums[b] += Rest(left[b], rest, (ulong)_states, pairs);
    }

    private static Vector512<ulong> TimesLowHalf(Vector512<ulong> words, Vector512<ulong> n)
        => Avx512F.IsSupported ? Avx512F.Multiply(words.AsUInt32(), n.AsUInt32()) : (words & Vector512.Create((ulong)uint.MaxValue)) * n;

    private static double At(ref double table, Vector512<ulong> places, int lane) => Unsafe.Add(ref table, (nint)places.GetElement(lane));

    private double Rest(ulong position, int draws, ulong n, double[] pairs)
    {
        if (draws == 0) return 0;
        var word = ResampleStream.Next(ref position);
        double sum = 0;
        if (draws >= 2)
        {
            sum = pairs[(int)((uint)word * n >> 32)];
            word >>= 32;
        }

        return draws % 2 == 0 ? sum : sum + _deviations[(int)((uint)word * (ulong)_deviations.Length >> 32)];
    }

    private double Singly(ResampleStream stream, int resample)
    {
        var position = stream.Start(resample);
        var n = (ulong)_deviations.Length;
        double sum = 0;
        for (var left = stream.Draws; left > 0;)
        {
            var fraction = ResampleStream.Next(ref position);
            for (var k = Math.Min(stream.DigitsPerWord, left); k > 0; k--, left--)
                sum += _deviations[Math.BigMul(fraction, n, out fraction)];
        }

        return sum;
    }
}
