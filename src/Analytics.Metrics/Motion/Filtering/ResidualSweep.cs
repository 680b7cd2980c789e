using System.Buffers;
using System.Numerics;
using System.Runtime.InteropServices;

namespace Analytics.Metrics.Motion;

/// <summary>
/// Root-mean-square residual of one series for many cut-offs at once (dual pass, odd padding). The recursion of one filter cannot be spread over lanes, so the lanes hold
/// different cut-offs; two vectors run side by side to hide the waiting for each other's last output.
/// </summary>
internal sealed class ResidualSweep
{
    private readonly int count;
    private readonly Vector<double>[] a0;
    private readonly Vector<double>[] b1;
    private readonly Vector<double>[] b2;

    public ResidualSweep(ReadOnlySpan<FilterCoefficients> filters)
    {
        var lanes = Vector<double>.Count;
        count = filters.Length;
        var vectors = 2 * (((count - 1) / (2 * lanes)) + 1);
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
    public void Run(ReadOnlySpan<double> x, Span<double> residuals)
    {
        const int pad = FilterPass.Padding;
        var n = x.Length + (2 * pad);
        var lanes = Vector<double>.Count;
        var buffer = ArrayPool<double>.Shared.Rent(n * (1 + (2 * lanes)));
        var passed = MemoryMarshal.Cast<double, Vector<double>>(buffer.AsSpan(0, 2 * n * lanes));
        var padded = buffer.AsSpan(2 * n * lanes, n);
        x.CopyTo(padded[pad..]);
        for (var i = 1; i <= pad; i++)
        {
            padded[pad - i] = (2 * x[0]) - x[i];
            padded[n - pad - 1 + i] = (2 * x[^1]) - x[x.Length - 1 - i];
        }

        Span<double> sums = stackalloc double[2 * lanes];
        for (var v = 0; v < a0.Length; v += 2)
        {
            Forward(padded, passed, v);
            Backward(padded, passed, v, sums);
            for (var lane = 0; lane < sums.Length && (v * lanes) + lane < count; lane++)
                residuals[(v * lanes) + lane] = Math.Sqrt(sums[lane] / x.Length);
        }
        ArrayPool<double>.Shared.Return(buffer);
    }

    // Both passes have the factor a0; taken squared in the first one, the second needs none. What is passed on is a0 times the output of the first pass.
    private void Forward(ReadOnlySpan<double> padded, Span<Vector<double>> passed, int v)
    {
        var (aP, bP, cP, aQ, bQ, cQ) = (a0[v] * a0[v], b1[v], b2[v], a0[v + 1] * a0[v + 1], b1[v + 1], b2[v + 1]);
        double x1 = padded[0], x2 = padded[0];
        Vector<double> p1 = a0[v] * x1, p2 = p1, q1 = a0[v + 1] * x1, q2 = q1;
        for (int i = 0, k = 0; i < padded.Length && k + 1 < passed.Length; i++, k += 2)
        {
            var inputs = new Vector<double>(padded[i] + (2 * x1) + x2);
            var p = Vector.FusedMultiplyAdd(bP, p1, Vector.FusedMultiplyAdd(cP, p2, aP * inputs));
            var q = Vector.FusedMultiplyAdd(bQ, q1, Vector.FusedMultiplyAdd(cQ, q2, aQ * inputs));
            (x2, x1, p2, p1, q2, q1) = (x1, padded[i], p1, p, q1, q);
            (passed[k], passed[k + 1]) = (p, q);
        }
    }

    private void Backward(ReadOnlySpan<double> padded, ReadOnlySpan<Vector<double>> passed, int v, Span<double> sums)
    {
        const int pad = FilterPass.Padding;
        var (bP, cP, bQ, cQ) = (b1[v], b2[v], b1[v + 1], b2[v + 1]);
        var last = padded.Length - 1;
        var two = new Vector<double>(2);
        Vector<double> xP1 = passed[2 * last], xQ1 = passed[(2 * last) + 1], xP2 = xP1, xQ2 = xQ1;
        Vector<double> p1 = xP1 / a0[v], p2 = p1, q1 = xQ1 / a0[v + 1], q2 = q1, sumP = default, sumQ = default;
        for (var i = last; i >= pad; i--)
        {
            Vector<double> xP = passed[2 * i], xQ = passed[(2 * i) + 1];
            var p = Vector.FusedMultiplyAdd(bP, p1, Vector.FusedMultiplyAdd(cP, p2, Vector.FusedMultiplyAdd(two, xP1, xP + xP2)));
            var q = Vector.FusedMultiplyAdd(bQ, q1, Vector.FusedMultiplyAdd(cQ, q2, Vector.FusedMultiplyAdd(two, xQ1, xQ + xQ2)));
            (xP2, xP1, xQ2, xQ1, p2, p1, q2, q1) = (xP1, xP, xQ1, xQ, p1, p, q1, q);
            if (i > last - pad) continue;
            Vector<double> raw = new(padded[i]), dP = raw - p, dQ = raw - q;
            (sumP, sumQ) = (Vector.FusedMultiplyAdd(dP, dP, sumP), Vector.FusedMultiplyAdd(dQ, dQ, sumQ));
        }
        sumP.CopyTo(sums);
        sumQ.CopyTo(sums[Vector<double>.Count..]);
    }
}
