namespace Analytics.Metrics.Bench;

/// <summary>Values that differ by no more than rounding: a formula that gives the same for everybody may do so to the last digit but one.</summary>
internal static class Flat
{
    /// <summary>What is left of equal values, in parts of their size.</summary>
    public const double Rounding = 1e-12;

    /// <summary>Whether values are all the same; so are none and one.</summary>
    public static bool Is(IEnumerable<double> values)
    {
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var value in values) (low, high) = (Math.Min(low, value), Math.Max(high, value));
        return !(high - low > Rounding * Math.Max(Math.Abs(low), Math.Abs(high)));
    }
}
