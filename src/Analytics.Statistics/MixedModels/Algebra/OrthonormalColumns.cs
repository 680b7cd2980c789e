namespace Analytics.Statistics.MixedModels.Algebra;

/// <summary>
/// Columns X = Q R with Q'Q = I, by Gram-Schmidt done twice, which is orthogonal to the last digit. Working with Q makes a fit
/// blind to where the covariates have their zero and how they are scaled. Source: [golub2013, ch. 5].
/// </summary>
internal sealed class OrthonormalColumns
{
    // A column that keeps less than this part of its length off the columns before it adds nothing to them.
    private const double Collinear = 1e-8;

    private OrthonormalColumns(double[][] q, double[] r, int dependent, double[] share) => (Q, R, Dependent, DependsOn) = (q, r, dependent, share);

    /// <summary>The orthonormal columns.</summary>
    public double[][] Q { get; }

    /// <summary>Upper triangle R, p × p row by row.</summary>
    public double[] R { get; }

    /// <summary>First column that the ones before it already span; −1 when there is none.</summary>
    public int Dependent { get; }

    /// <summary>Its coefficients on the columns before it.</summary>
    public double[] DependsOn { get; }

    public int Count => Q.Length;

    public static OrthonormalColumns Of(IReadOnlyList<double[]> columns)
    {
        var p = columns.Count;
        var q = new double[p][];
        var r = new double[p * p];
        for (var j = 0; j < p; j++)
        {
            var x = (double[])columns[j].Clone();
            var length = Norm(x);
            for (var pass = 0; pass < 2; pass++)
                for (var i = 0; i < j; i++) r[(i * p) + j] += Remove(q[i], x);
            var left = Norm(x);
            if (!(left > Collinear * length)) return new(q, r, j, Coefficients(r, p, j));
            r[(j * p) + j] = left;
            for (var i = 0; i < x.Length; i++) x[i] /= left;
            q[j] = x;
        }

        return new(q, r, -1, []);
    }

    /// <summary>Takes the columns out of y, in place; returns their coefficients in terms of Q.</summary>
    public double[] TakeOut(double[] y)
    {
        var coefficients = new double[Count];
        for (var pass = 0; pass < 2; pass++)
            for (var j = 0; j < Count; j++) coefficients[j] += Remove(Q[j], y);
        return coefficients;
    }

    /// <summary>x := R⁻¹ x, from coefficients of Q to coefficients of X.</summary>
    public void Back(Span<double> x) => Back(R, Count, Count, x);

    /// <summary>x := R'⁻¹ x, from weights of the coefficients of X to weights of those of Q.</summary>
    public void ToQ(Span<double> x)
    {
        for (var i = 0; i < Count; i++)
        {
            for (var k = 0; k < i; k++) x[i] -= R[(k * Count) + i] * x[k];
            x[i] /= R[(i * Count) + i];
        }
    }

    private static double[] Coefficients(double[] r, int p, int column)
    {
        var x = new double[column];
        for (var i = 0; i < column; i++) x[i] = r[(i * p) + column];
        Back(r, p, column, x);
        return x;
    }

    private static void Back(double[] r, int p, int n, Span<double> x)
    {
        for (var i = n - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < n; k++) x[i] -= r[(i * p) + k] * x[k];
            x[i] /= r[(i * p) + i];
        }
    }

    private static double Remove(double[] q, double[] x)
    {
        var dot = 0.0;
        for (var i = 0; i < x.Length; i++) dot += q[i] * x[i];
        for (var i = 0; i < x.Length; i++) x[i] -= dot * q[i];
        return dot;
    }

    private static double Norm(double[] x)
    {
        var largest = 0.0;
        foreach (var v in x) largest = Math.Max(largest, Math.Abs(v));
        if (largest == 0) return 0;
        var sum = 0.0;
        foreach (var v in x) sum += v / largest * (v / largest);
        return largest * Math.Sqrt(sum);
    }
}
