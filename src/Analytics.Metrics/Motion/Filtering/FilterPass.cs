namespace Analytics.Metrics.Motion;

/// <summary>One or two passes of a second-order filter over one series; allocates nothing. a1 = 2·a0 and a2 = a0 are used as such.</summary>
internal static class FilterPass
{
    /// <summary>Samples the odd padding adds at each end.</summary>
    public const int Padding = 9;

    /// <summary>Filters x into y (which may be x). With padding, x needs more than <see cref="Padding"/> samples.</summary>
    public static void Run(in FilterCoefficients filter, ReadOnlySpan<double> x, Span<double> y, int passes, bool padded)
    {
        Span<double> tail = stackalloc double[padded ? Padding : 0];
        var (first, last) = (2 * x[0], 2 * x[^1]);
        // Reflections of the right end, taken before y overwrites x.
        for (var i = 0; i < tail.Length; i++) tail[i] = last - x[x.Length - 2 - i];

        var state = padded ? State.Steady(first - x[Padding]) : default;
        for (var i = padded ? Padding : 0; i > 0; i--) state.Next(filter, first - x[i]);
        state = Forward(filter, x, y, state);
        if (passes == 1) return;
        Forward(filter, tail, tail, state);

        // Backward; what it makes of the padding on the left would be cut off again.
        state = padded ? State.Steady(tail[^1]) : default;
        for (var i = tail.Length - 1; i >= 0; i--) state.Next(filter, tail[i]);
        Backward(filter, y, state);
    }

    // The loops keep their state in locals, so in registers. Only the last product waits for the output before: the shortest chain a recursion allows.
    private static State Forward(in FilterCoefficients filter, ReadOnlySpan<double> x, Span<double> y, State state)
    {
        var (a0, b1, b2) = (filter.A0, filter.B1, filter.B2);
        var (x1, x2, y1, y2) = (state.X1, state.X2, state.Y1, state.Y2);
        for (var i = 0; i < x.Length && i < y.Length; i++)
        {
            var input = x[i];
            var output = Math.FusedMultiplyAdd(b1, y1, Math.FusedMultiplyAdd(b2, y2, a0 * (input + (2 * x1) + x2)));
            (x2, x1, y2, y1) = (x1, input, y1, output);
            y[i] = output;
        }
        return new(x1, x2, y1, y2);
    }

    private static void Backward(in FilterCoefficients filter, Span<double> y, State state)
    {
        var (a0, b1, b2) = (filter.A0, filter.B1, filter.B2);
        var (x1, x2, y1, y2) = (state.X1, state.X2, state.Y1, state.Y2);
        for (var i = y.Length - 1; i >= 0; i--)
        {
            var input = y[i];
            var output = Math.FusedMultiplyAdd(b1, y1, Math.FusedMultiplyAdd(b2, y2, a0 * (input + (2 * x1) + x2)));
            (x2, x1, y2, y1) = (x1, input, y1, output);
            y[i] = output;
        }
    }

    private record struct State(double X1, double X2, double Y1, double Y2)
    {
        /// <summary>As if the value had stood for ever; the filter passes a constant unchanged.</summary>
        public static State Steady(double value) => new(value, value, value, value);

        public void Next(in FilterCoefficients filter, double x)
        {
            var y = Math.FusedMultiplyAdd(filter.B1, Y1, Math.FusedMultiplyAdd(filter.B2, Y2, filter.A0 * (x + (2 * X1) + X2)));
            (X2, X1, Y2, Y1) = (X1, x, Y1, y);
        }
    }
}
