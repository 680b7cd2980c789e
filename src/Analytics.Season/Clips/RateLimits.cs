namespace Analytics.Season.Clips;

/// <summary>Frame rates of cameras.</summary>
internal static class RateLimits
{
    /// <summary>Lowest rate accepted, Hz.</summary>
    public const double Lowest = 10;

    /// <summary>Highest rate accepted, Hz.</summary>
    public const double Highest = 2000;

    /// <summary>Rates that cameras commonly offer, Hz; common practice, no source.</summary>
    public static readonly IReadOnlyList<double> Usual = [24, 25, 30, 50, 60, 100, 120, 200, 240, 300, 480, 500, 960, 1000];
}
