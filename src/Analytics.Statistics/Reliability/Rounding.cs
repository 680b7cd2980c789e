namespace Analytics.Statistics.Reliability;

/// <summary>Tells exact repeats, whose residuals are nothing but rounding, from real error.</summary>
internal static class Rounding
{
    /// <summary>0 when the residuals are all within 16 units of the last digit of the largest value, else the sum itself.</summary>
    public static double Dropped(double squares, int count, double largest)
        => squares <= count * Math.Pow(16 * 2.220446049250313e-16 * largest, 2) ? 0 : squares;
}
