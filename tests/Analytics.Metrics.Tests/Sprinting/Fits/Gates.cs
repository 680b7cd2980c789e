using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Sprinting.Fits;

/// <summary>Splits for tests.</summary>
internal static class Gates
{
    public static IReadOnlyList<Split> Metres(params (double Distance, double Time)[] gates)
        => [.. gates.Select(g => new Split(Length.FromMetres(g.Distance), Duration.FromSeconds(g.Time)))];

    public static IReadOnlyList<Split> Yards(params (double Distance, double Time)[] gates)
        => [.. gates.Select(g => new Split(Length.FromYards(g.Distance), Duration.FromSeconds(g.Time)))];

    /// <summary>Made-up 10-20-40 yd run of the worked example.</summary>
    public static IReadOnlyList<Split> ThreeGates => Yards((10, 1.58), (20, 2.66), (40, 4.58));

    /// <summary>Made-up clean run over five gates.</summary>
    public static IReadOnlyList<Split> FiveGates => Metres((5, 1.37), (10, 2.12), (20, 3.40), (30, 4.61), (40, 5.80));

    /// <summary>V 8.5 m/s, T 1.1 s, 0.5 m run before the first gate, times rounded to 0.001 s.</summary>
    public static IReadOnlyList<Split> RunInHalfMetre => Metres((5, 1.073), (10, 1.804), (15, 2.460), (20, 3.084), (30, 4.292), (40, 5.479));

    /// <summary>The same with 0.3 m.</summary>
    public static IReadOnlyList<Split> RunInThirdMetre => Metres((5, 1.130), (10, 1.866), (15, 2.524), (20, 3.149), (30, 4.358), (40, 5.545));
}
