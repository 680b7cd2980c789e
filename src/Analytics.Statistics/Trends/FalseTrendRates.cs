namespace Analytics.Statistics.Trends;

/// <summary>Measured rates at which tests at a nominal 5 % flag series without trend, by lag-one correlation and length.</summary>
internal static class FalseTrendRates
{
    private static readonly double[] s_phi = [0, 0.2, 0.4, 0.6];
    private static readonly double[] s_n = [12, 20, 40];

    private static readonly double[,] s_mannKendall =
    {
        { 0.04285, 0.0489, 0.0496 }, { 0.0827, 0.09405, 0.10125 }, { 0.1444, 0.1657, 0.1852 }, { 0.2397, 0.2748, 0.2976 },
    };

    private static readonly double[,] s_leastSquares =
    {
        { 0.0491, 0.0514, 0.05225 }, { 0.0973, 0.1024, 0.109 }, { 0.17165, 0.18445, 0.1997 }, { 0.2843, 0.3105, 0.3203 },
    };

    /// <summary>Largest correlation measured; beyond it the rate is more than the one given.</summary>
    public static double Largest => s_phi[^1];

    public static double MannKendall(double phi, int n) => Between(s_mannKendall, phi, n);

    public static double LeastSquares(double phi, int n) => Between(s_leastSquares, phi, n);

    // Straight between the cells; at the edge beyond them.
    private static double Between(double[,] rates, double phi, int n)
    {
        var (i, a) = Place(s_phi, phi);
        var (j, b) = Place(s_n, n);
        return (1 - a) * ((1 - b) * rates[i, j] + b * rates[i, j + 1]) + a * ((1 - b) * rates[i + 1, j] + b * rates[i + 1, j + 1]);
    }

    private static (int Cell, double Share) Place(double[] edges, double value)
    {
        var cell = 0;
        while (cell < edges.Length - 2 && value > edges[cell + 1]) cell++;
        return (cell, Math.Clamp((value - edges[cell]) / (edges[cell + 1] - edges[cell]), 0, 1));
    }
}
