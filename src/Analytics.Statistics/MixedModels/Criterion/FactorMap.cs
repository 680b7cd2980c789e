namespace Analytics.Statistics.MixedModels.Criterion;

/// <summary>
/// D = T T' with T = Base + Σ η_i Move_i: any D made so is a covariance, whatever the η. The map is quadratic, so its derivatives are exact.
/// Which models and which constraints it holds depends on the moves: all cells of a triangle, the diagonal only, a fixed correlation.
/// </summary>
internal sealed class FactorMap(int q, double[] @base, double[][] moves)
{
    public int Q => q;

    /// <summary>Number of η.</summary>
    public int Count => moves.Length;

    /// <summary>All cells of the lower triangle, or its diagonal only.</summary>
    public static FactorMap Cholesky(int q, bool correlated)
    {
        var cells = RandomPairs.All(q).Where(c => correlated || c.I == c.J).ToArray();
        return new(q, new double[q * q], [.. cells.Select(c => Unit(q, c.I, c.J, 1))]);
    }

    public static double[] Unit(int q, int row, int column, double value)
    {
        var m = new double[q * q];
        m[(row * q) + column] = value;
        return m;
    }

    public double[] Factor(ReadOnlySpan<double> eta)
    {
        var t = (double[])@base.Clone();
        for (var i = 0; i < moves.Length; i++)
            for (var c = 0; c < t.Length; c++) t[c] += eta[i] * moves[i][c];
        return t;
    }

    public double[] Covariance(ReadOnlySpan<double> eta)
    {
        var t = Factor(eta);
        return Product(t, t);
    }

    /// <summary>∂D/∂η_i for every entry of <see cref="RandomPairs"/>.</summary>
    public double[][] Jacobian(ReadOnlySpan<double> eta)
    {
        var t = Factor(eta);
        return [.. moves.Select(m => Entries(Twice(m, t)))];
    }

    /// <summary>∂²D/∂η_i∂η_j for every entry; the same everywhere.</summary>
    public double[] Curvature(int i, int j) => Entries(Twice(moves[i], moves[j]));

    private double[] Twice(double[] a, double[] b)
    {
        var (ab, ba) = (Product(a, b), Product(b, a));
        for (var c = 0; c < ab.Length; c++) ab[c] += ba[c];
        return ab;
    }

    private double[] Entries(double[] m) => [.. RandomPairs.All(q).Select(p => m[(p.I * q) + p.J])];

    private double[] Product(double[] a, double[] b)
    {
        var d = new double[q * q];
        for (var i = 0; i < q; i++)
            for (var j = 0; j < q; j++)
                for (var k = 0; k < q; k++) d[(i * q) + j] += a[(i * q) + k] * b[(j * q) + k];
        return d;
    }
}
