using Analytics.Statistics.MixedModels.Algebra;

namespace Analytics.Statistics.MixedModels.Criterion;

/// <summary>
/// Random columns Z = Z̃ W, with Z̃ of mean square 1 and, when the effects may correlate, orthogonal: the search then does not feel where a
/// covariate has its zero or in which unit it is. D̃ = W D W'. Without correlations only the scale may change.
/// </summary>
internal sealed class RandomBasis
{
    private RandomBasis(double[][] columns, double[] w, OrthonormalColumns? collinear) => (Columns, W, Collinear) = (columns, w, collinear);

    /// <summary>Columns of Z̃.</summary>
    public double[][] Columns { get; }

    /// <summary>Upper triangle W, q × q row by row.</summary>
    public double[] W { get; }

    /// <summary>Set when a column is a combination of others.</summary>
    public OrthonormalColumns? Collinear { get; }

    public int Q => Columns.Length;

    public static RandomBasis Of(IReadOnlyList<double[]> columns, bool correlated)
    {
        var (n, q) = (columns.Count == 0 ? 0 : columns[0].Length, columns.Count);
        var orthonormal = OrthonormalColumns.Of(columns);
        if (orthonormal.Dependent >= 0) return new([], [], orthonormal);
        var (scale, w) = (Math.Sqrt(n), new double[q * q]);
        if (correlated)
        {
            for (var c = 0; c < w.Length; c++) w[c] = orthonormal.R[c] / scale;
            return new([.. orthonormal.Q.Select(c => Array.ConvertAll(c, v => v * scale))], w, null);
        }

        for (var j = 0; j < q; j++) w[(j * q) + j] = Math.Sqrt(columns[j].Sum(v => v * v) / n);
        return new([.. columns.Select((c, j) => Array.ConvertAll(c, v => v / w[(j * q) + j]))], w, null);
    }

    /// <summary>x := W⁻¹ x: effects of Z̃ to effects of Z.</summary>
    public void ToEffects(Span<double> x)
    {
        for (var i = Q - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < Q; k++) x[i] -= W[(i * Q) + k] * x[k];
            x[i] /= W[(i * Q) + i];
        }
    }

    /// <summary>x := W'⁻¹ x: a row of Z to a row of Z̃.</summary>
    public void ToRow(Span<double> x)
    {
        for (var i = 0; i < Q; i++)
        {
            for (var k = 0; k < i; k++) x[i] -= W[(k * Q) + i] * x[k];
            x[i] /= W[(i * Q) + i];
        }
    }

    /// <summary>W⁻¹ M W'⁻¹ of a symmetric M: a covariance of effects of Z̃ to one of effects of Z.</summary>
    public double[] ToEffectCovariance(double[] m) => InverseTimes(Transpose(InverseTimes(m)));

    /// <summary>W M: a factor of D to a factor of D̃.</summary>
    public double[] Times(double[] m)
    {
        var result = new double[Q * Q];
        for (var i = 0; i < Q; i++)
            for (var j = 0; j < Q; j++)
                for (var k = i; k < Q; k++) result[(i * Q) + j] += W[(i * Q) + k] * m[(k * Q) + j];
        return result;
    }

    private double[] Transpose(double[] a)
    {
        var t = new double[Q * Q];
        for (var i = 0; i < Q; i++)
            for (var j = 0; j < Q; j++) t[(j * Q) + i] = a[(i * Q) + j];
        return t;
    }

    private double[] InverseTimes(double[] m)
    {
        var columns = Transpose(m);
        for (var j = 0; j < Q; j++) ToEffects(columns.AsSpan(j * Q, Q));
        return Transpose(columns);
    }
}
