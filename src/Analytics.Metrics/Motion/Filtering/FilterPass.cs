using System.Runtime.Intrinsics;

namespace Analytics.Metrics.Motion;

/// <summary>
/// One or two passes of a second-order filter over two series of one length side by side (both coordinates of a marker): each waits for its own last output, so two cost little more than one.
/// Allocates nothing. a1 = 2·a0 and a2 = a0 are used as such.
/// </summary>
internal static class FilterPass
{
    /// <summary>Samples the odd padding adds at each end.</summary>
    public const int Padding = 9;

    /// <summary>Filters one series into another (which may be itself). With padding, x needs more than <see cref="Padding"/> samples.</summary>
    public static void Run(in FilterCoefficients filter, ReadOnlySpan<double> x, Span<double> filtered, int passes, bool padded) => Run(filter, x, x, filtered, filtered, passes, padded);

    /// <summary>Filters x and y, of one length, into two series (which may be themselves).</summary>
    public static void Run(in FilterCoefficients filter, ReadOnlySpan<double> x, ReadOnlySpan<double> y, Span<double> xFiltered, Span<double> yFiltered, int passes, bool padded)
    {
        Span<Vector128<double>> tail = stackalloc Vector128<double>[padded ? Padding : 0];
        Vector128<double> first = At(x, y, 0), last = At(x, y, x.Length - 1);
        // Reflections of the right end, taken before the output overwrites the input.
        for (var i = 0; i < tail.Length; i++) tail[i] = last + last - At(x, y, x.Length - 2 - i);

        var state = padded ? State.Steady(first + first - At(x, y, Padding)) : default;
        for (var i = padded ? Padding : 0; i > 0; i--) state.Next(filter, first + first - At(x, y, i));
        state = Forward(filter, x, y, xFiltered, yFiltered, state);
        if (passes == 1) return;
        foreach (ref var sample in tail)
        {
            state.Next(filter, sample);
            sample = state.Y1;
        }

        // Backward; what it makes of the padding on the left would be cut off again.
        state = padded ? State.Steady(tail[^1]) : default;
        for (var i = tail.Length - 1; i >= 0; i--) state.Next(filter, tail[i]);
        Backward(filter, xFiltered, yFiltered, state);
    }

    private static Vector128<double> At(ReadOnlySpan<double> x, ReadOnlySpan<double> y, int i) => Vector128.Create(x[i], y[i]);

    // The loops keep their state in locals, so in registers. Only the last product waits for the output before: the shortest chain a recursion allows.
    private static State Forward(in FilterCoefficients filter, ReadOnlySpan<double> x, ReadOnlySpan<double> y, Span<double> xFiltered, Span<double> yFiltered, State state)
    {
        Vector128<double> a0 = Vector128.Create(filter.A0), b1 = Vector128.Create(filter.B1), b2 = Vector128.Create(filter.B2), two = Vector128.Create(2.0);
        var (x1, x2, y1, y2) = (state.X1, state.X2, state.Y1, state.Y2);
        for (var i = 0; i < x.Length && i < y.Length && i < xFiltered.Length && i < yFiltered.Length; i++)
        {
            var input = Vector128.Create(x[i], y[i]);
            var output = Vector128.FusedMultiplyAdd(b1, y1, Vector128.FusedMultiplyAdd(b2, y2, a0 * (input + (two * x1) + x2)));
            (x2, x1, y2, y1) = (x1, input, y1, output);
            (xFiltered[i], yFiltered[i]) = (output[0], output[1]);
        }
        return new(x1, x2, y1, y2);
    }

    private static void Backward(in FilterCoefficients filter, Span<double> x, Span<double> y, State state)
    {
        Vector128<double> a0 = Vector128.Create(filter.A0), b1 = Vector128.Create(filter.B1), b2 = Vector128.Create(filter.B2), two = Vector128.Create(2.0);
        var (x1, x2, y1, y2) = (state.X1, state.X2, state.Y1, state.Y2);
        for (var i = Math.Min(x.Length, y.Length) - 1; i >= 0; i--)
        {
            var input = Vector128.Create(x[i], y[i]);
            var output = Vector128.FusedMultiplyAdd(b1, y1, Vector128.FusedMultiplyAdd(b2, y2, a0 * (input + (two * x1) + x2)));
            (x2, x1, y2, y1) = (x1, input, y1, output);
            (x[i], y[i]) = (output[0], output[1]);
        }
    }

    private record struct State(Vector128<double> X1, Vector128<double> X2, Vector128<double> Y1, Vector128<double> Y2)
    {
        /// <summary>As if the value had stood for ever; the filter passes a constant unchanged.</summary>
        public static State Steady(Vector128<double> value) => new(value, value, value, value);

        public void Next(in FilterCoefficients filter, Vector128<double> x)
        {
            var y = Vector128.FusedMultiplyAdd(Vector128.Create(filter.B1), Y1, Vector128.FusedMultiplyAdd(Vector128.Create(filter.B2), Y2, filter.A0 * (x + (2 * X1) + X2)));
            (X2, X1, Y2, Y1) = (X1, x, Y1, y);
        }
    }
}
