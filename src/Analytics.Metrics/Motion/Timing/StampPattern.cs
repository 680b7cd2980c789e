using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>Finds the even grid behind time stamps, the frames missing from it and whether it holds.</summary>
internal static class StampPattern
{
    public static (double Interval, bool IsVariable, IReadOnlyList<DroppedFrames> Dropped) Of(ReadOnlySpan<double> seconds, int firstFrame)
    {
        var steps = new double[seconds.Length - 1];
        for (var i = 0; i < steps.Length; i++) steps[i] = seconds[i + 1] - seconds[i];
        var typical = Median(steps);

        // Grid place of each stamp; a step of 1.5 typical ones or more has frames missing.
        var place = new double[seconds.Length];
        var dropped = new List<DroppedFrames>();
        for (var i = 0; i < steps.Length; i++)
        {
            var missing = Math.Max(0, Math.Round(steps[i] / typical) - 1);
            place[i + 1] = place[i] + 1 + missing;
            if (missing > 0) dropped.Add(new(firstFrame + i, (int)Math.Min(missing, int.MaxValue), Duration.FromSeconds(steps[i])));
        }

        // Stamps are often rounded to 1 ms, a quarter of a frame at 240 Hz: the line through all of them is sharper than the median step.
        var (interval, start) = Line(place, seconds);
        var variable = dropped.Count > 0;
        for (var i = 0; i < place.Length && !variable; i++)
            variable = Math.Abs(seconds[i] - start - (interval * place[i])) > FrameClock.EvenWithin * interval;
        return (interval, variable, dropped);
    }

    private static double Median(double[] values)
    {
        var sorted = (double[])values.Clone();
        Array.Sort(sorted);
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
    }

    private static (double Slope, double Start) Line(double[] x, ReadOnlySpan<double> y)
    {
        double meanX = 0, meanY = 0, xx = 0, xy = 0;
        for (var i = 0; i < x.Length; i++) (meanX, meanY) = (meanX + (x[i] / x.Length), meanY + (y[i] / x.Length));
        for (var i = 0; i < x.Length; i++) (xx, xy) = (xx + ((x[i] - meanX) * (x[i] - meanX)), xy + ((x[i] - meanX) * (y[i] - meanY)));
        return (xy / xx, meanY - (xy / xx * meanX));
    }
}
