namespace Analytics.Metrics.Motion;

/// <summary>Rates that cameras print rounded: 29.97 stands for 30·1000/1001 and so on.</summary>
internal static class NominalRate
{
    private static readonly double[] Whole = [24, 30, 48, 60, 120, 240];

    /// <summary>Half a unit in the second decimal, the coarsest way these rates are printed (23.98).</summary>
    private const double PrintedTo = 0.005;

    /// <summary>The exact rate meant by a printed one, in Hz; the rate itself when it is none of those.</summary>
    public static double Exact(double hertz)
    {
        foreach (var whole in Whole)
            if (Math.Abs(hertz - (whole * 1000 / 1001)) <= PrintedTo) return whole * 1000 / 1001;
        return hertz;
    }
}
