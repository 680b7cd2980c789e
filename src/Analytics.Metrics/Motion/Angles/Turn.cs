namespace Analytics.Metrics.Motion;

/// <summary>Arithmetic on angles in radians.</summary>
internal static class Turn
{
    /// <summary>The same direction between −π and π.</summary>
    public static double Wrapped(double radians) => Math.IEEERemainder(radians, 2 * Math.PI);

    /// <summary>Takes out jumps of whole turns, in place, so that a series moves by less than half a turn from sample to sample. NaN samples are passed over.</summary>
    public static void Unwrap(Span<double> radians)
    {
        var before = double.NaN;
        for (var i = 0; i < radians.Length; i++)
        {
            if (double.IsNaN(radians[i])) continue;
            // Most steps are small; the remainder is slow.
            if (Math.Abs(radians[i] - before) > Math.PI) radians[i] = before + Wrapped(radians[i] - before);
            before = radians[i];
        }
    }
}
