using System.Buffers;
using System.Numerics;
using System.Runtime.InteropServices;

namespace Analytics.Metrics.Motion;

/// <summary>
/// Root-mean-square residual of series for many cut-offs at once (dual pass, odd padding). The recursion of one filter cannot be spread over lanes, so the lanes hold
/// different cut-offs; two vectors, of one series or of both coordinates of a marker, run side by side to hide the waiting for each other's last output.
/// </summary>
internal sealed class ResidualSweep
{
    private const int Padding = FilterPass.Padding;

    private readonly int count;
    private readonly Vector<double>[] a0;
    private readonly Vector<double>[] b1;
    private readonly Vector<double>[] b2;

    public ResidualSweep(ReadOnlySpan<FilterCoefficients> filters)
    {
        var lanes = Vector<double>.Count;
        count = filters.Length;
        var vectors = ((count - 1) / lanes) + 1;
        (a0, b1, b2) = (new Vector<double>[vectors], new Vector<double>[vectors], new Vector<double>[vectors]);
        Span<double> a = stackalloc double[lanes], b = stackalloc double[lanes], c = stackalloc double[lanes];
        for (var v = 0; v < vectors; v++)
        {
            for (var lane = 0; lane < lanes; lane++)
            {
                var filter = filters[Math.Min((v * lanes) + lane, count - 1)];
                (a[lane], b[lane], c[lane]) = (filter.A0, filter.B1, filter.B2);
            }
            (a0[v], b1[v], b2[v]) = (new(a), new(b), new(c));
        }
    }

    /// <summary>Residual by cut-off, in the unit of x.</summary>
    /// <param name="x">More than 9 finite samples.</param>
    /// <param name="residuals">One a cut-off.</param>
    public void Run(ReadOnlySpan<double> x, Span<double> residuals) => Run(x, residuals, default, default);

    /// <summary>The same for two series of one length.</summary>
    public void Run(ReadOnlySpan<double> x, Span<double> xResiduals, ReadOnlySpan<double> y, Span<double> yResiduals)
    {
        var n = x.Length + (2 * Padding);
        var lanes = Vector<double>.Count;
        var buffer = ArrayPool<double>.Shared.Rent(n * (4 + (2 * lanes)));
        var passed = MemoryMarshal.Cast<double, Pair>(buffer.AsSpan(0, 2 * n * lanes));
        var series = buffer.AsSpan(2 * n * lanes, 4 * n);
        Series first = Pad(x, series[..(2 * n)]), second = y.Length == 0 ? first : Pad(y, series[(2 * n)..]);

        Span<double> sums = stackalloc double[2 * lanes];
        var vectors = a0.Length * (y.Length == 0 ? 1 : 2);
        for (var at = 0; at < vectors; at += 2)
        {
            // Where the vectors do not come out even, the last one runs beside itself.
            var (p, q) = (at, Math.Min(at + 1, vectors - 1));
            Series ofP = p < a0.Length ? first : second, ofQ = q < a0.Length ? first : second;
            Forward(ofP.Zeros, p % a0.Length, ofQ.Zeros, q % a0.Length, passed);
            Backward(ofP.Padded, p % a0.Length, ofQ.Padded, q % a0.Length, passed, sums);
            Keep(sums[..lanes], p % a0.Length, p < a0.Length ? xResiduals : yResiduals, x.Length);
            Keep(sums[lanes..], q % a0.Length, q < a0.Length ? xResiduals : yResiduals, x.Length);
        }
        ArrayPool<double>.Shared.Return(buffer);
    }

    private void Keep(ReadOnlySpan<double> sums, int v, Span<double> residuals, int samples)
    {
        var from = v * sums.Length;
        for (var lane = 0; lane < sums.Length && from + lane < count; lane++) residuals[from + lane] = Math.Sqrt(sums[lane] / samples);
    }

    private static Series Pad(ReadOnlySpan<double> x, Span<double> room)
    {
        var n = room.Length / 2;
        Span<double> padded = room[..n], zeros = room[n..];
        x.CopyTo(padded[Padding..]);
        for (var i = 1; i <= Padding; i++)
        {
            padded[Padding - i] = (2 * x[0]) - x[i];
            padded[n - Padding - 1 + i] = (2 * x[^1]) - x[x.Length - 1 - i];
        }
        (zeros[0], zeros[1]) = (4 * padded[0], padded[1] + (3 * padded[0]));
        var at = 2;
        for (; at + Vector<double>.Count <= n; at += Vector<double>.Count)
            (new Vector<double>(padded[at..]) + (2 * new Vector<double>(padded[(at - 1)..])) + new Vector<double>(padded[(at - 2)..])).CopyTo(zeros[at..]);
        for (; at < n; at++) zeros[at] = padded[at] + (2 * padded[at - 1]) + padded[at - 2];
        return new(padded, zeros);
    }

    // Both passes have the factor a0; taken squared in the first one, the second needs none. What is passed on is a0 times the output of the first pass.
    private void Forward(ReadOnlySpan<double> zerosP, int p, ReadOnlySpan<double> zerosQ, int q, Span<Pair> passed)
    {
        var (aP, bP, cP, aQ, bQ, cQ) = (a0[p] * a0[p], b1[p], b2[p], a0[q] * a0[q], b1[q], b2[q]);
        Vector<double> p1 = a0[p] * (zerosP[0] / 4), p2 = p1, q1 = a0[q] * (zerosQ[0] / 4), q2 = q1;
        for (var i = 0; i < passed.Length && i < zerosP.Length && i < zerosQ.Length; i++)
        {
            (p2, p1) = (p1, Vector.FusedMultiplyAdd(bP, p1, Vector.FusedMultiplyAdd(cP, p2, aP * new Vector<double>(zerosP[i]))));
            (q2, q1) = (q1, Vector.FusedMultiplyAdd(bQ, q1, Vector.FusedMultiplyAdd(cQ, q2, aQ * new Vector<double>(zerosQ[i]))));
            ref var to = ref passed[i];
            (to.P, to.Q) = (p1, q1);
        }
    }

    // x[i] + 2x[i+1] + x[i+2] as a sum of two neighbouring pairs: additions alone, which leave the multipliers to the recursion.
    private void Backward(ReadOnlySpan<double> paddedP, int p, ReadOnlySpan<double> paddedQ, int q, ReadOnlySpan<Pair> passed, Span<double> sums)
    {
        var (bP, cP, bQ, cQ) = (b1[p], b2[p], b1[q], b2[q]);
        Vector<double> xP = passed[^1].P, xQ = passed[^1].Q, pairP = xP + xP, pairQ = xQ + xQ;
        Vector<double> p1 = xP / a0[p], p2 = p1, q1 = xQ / a0[q], q2 = q1, sumP = default, sumQ = default;
        var within = passed.Length - 1 - Padding;
        for (var i = passed.Length - 1; i >= Padding; i--)
        {
            ref readonly var now = ref passed[i];
            Vector<double> nextP = now.P + xP, nextQ = now.Q + xQ;
            (p2, p1) = (p1, Vector.FusedMultiplyAdd(bP, p1, Vector.FusedMultiplyAdd(cP, p2, nextP + pairP)));
            (q2, q1) = (q1, Vector.FusedMultiplyAdd(bQ, q1, Vector.FusedMultiplyAdd(cQ, q2, nextQ + pairQ)));
            (xP, xQ, pairP, pairQ) = (now.P, now.Q, nextP, nextQ);
            if (i > within) continue;
            Vector<double> dP = new Vector<double>(paddedP[i]) - p1, dQ = new Vector<double>(paddedQ[i]) - q1;
            (sumP, sumQ) = (Vector.FusedMultiplyAdd(dP, dP, sumP), Vector.FusedMultiplyAdd(dQ, dQ, sumQ));
        }
        sumP.CopyTo(sums);
        sumQ.CopyTo(sums[Vector<double>.Count..]);
    }

    private struct Pair
    {
        public Vector<double> P;
        public Vector<double> Q;
    }

    /// <summary>A series with its padding, and its x[i] + 2x[i-1] + x[i-2], which all cut-offs share; the first value as if it had stood for ever.</summary>
    private readonly ref struct Series(ReadOnlySpan<double> padded, ReadOnlySpan<double> zeros)
    {
        public ReadOnlySpan<double> Padded { get; } = padded;

        public ReadOnlySpan<double> Zeros { get; } = zeros;
    }
}
