namespace Analytics.Statistics.MixedModels.Algebra;

/// <summary>Eigenvalues of a small symmetric matrix by cyclic Jacobi rotations, which keep small eigenvalues to full relative size. Source: [golub2013, ch. 8].</summary>
internal sealed class SymmetricEigen
{
    private SymmetricEigen(double[] values, double[] vectors) => (Values, Vectors) = (values, vectors);

    /// <summary>Eigenvalues, in no order.</summary>
    public double[] Values { get; }

    /// <summary>Eigenvectors as columns, row by row.</summary>
    public double[] Vectors { get; }

    public static SymmetricEigen Of(ReadOnlySpan<double> matrix, int n)
    {
        var a = matrix[..(n * n)].ToArray();
        var v = new double[n * n];
        for (var i = 0; i < n; i++) v[(i * n) + i] = 1;
        for (var sweep = 0; sweep < 60 && OffDiagonal(a, n); sweep++)
            for (var p = 0; p < n; p++)
                for (var q = p + 1; q < n; q++) Rotate(a, v, n, p, q);
        return new([.. Enumerable.Range(0, n).Select(i => a[(i * n) + i])], v);
    }

    /// <summary>Σ f(λ) (u'x) u: a function of the matrix applied to a vector.</summary>
    public double[] Apply(Func<double, double> function, ReadOnlySpan<double> x)
    {
        var n = Values.Length;
        var result = new double[n];
        for (var k = 0; k < n; k++)
        {
            var dot = 0.0;
            for (var i = 0; i < n; i++) dot += Vectors[(i * n) + k] * x[i];
            dot *= function(Values[k]);
            for (var i = 0; i < n; i++) result[i] += dot * Vectors[(i * n) + k];
        }

        return result;
    }

    private static bool OffDiagonal(double[] a, int n)
    {
        double off = 0, all = 0;
        for (var i = 0; i < n; i++)
            for (var j = 0; j < n; j++)
            {
                all += a[(i * n) + j] * a[(i * n) + j];
                if (i != j) off += a[(i * n) + j] * a[(i * n) + j];
            }

        return off > 1e-32 * all;
    }

    private static void Rotate(double[] a, double[] v, int n, int p, int q)
    {
        if (a[(p * n) + q] == 0) return;
        var tau = (a[(q * n) + q] - a[(p * n) + p]) / (2 * a[(p * n) + q]);
        var t = tau == 0 ? 1 : Math.Sign(tau) / (Math.Abs(tau) + Math.Sqrt(1 + (tau * tau)));
        var c = 1 / Math.Sqrt(1 + (t * t));
        var s = t * c;
        for (var k = 0; k < n; k++) Turn(a, (k * n) + p, (k * n) + q, c, s);
        for (var k = 0; k < n; k++) Turn(a, (p * n) + k, (q * n) + k, c, s);
        for (var k = 0; k < n; k++) Turn(v, (k * n) + p, (k * n) + q, c, s);
    }

    private static void Turn(double[] m, int i, int j, double c, double s)
        => (m[i], m[j]) = ((c * m[i]) - (s * m[j]), (s * m[i]) + (c * m[j]));
}
