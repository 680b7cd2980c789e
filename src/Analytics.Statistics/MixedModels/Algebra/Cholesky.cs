namespace Analytics.Statistics.MixedModels.Algebra;

/// <summary>Lower Cholesky factors of small matrices, row by row in caller-owned memory. Source: [golub2013, ch. 4].</summary>
internal static class Cholesky
{
    /// <summary>Replaces the lower triangle of a matrix by its factor; the upper triangle is neither read nor written.</summary>
    /// <returns>False when the matrix is not positive definite.</returns>
    public static bool Factor(Span<double> a, int n)
    {
        for (var j = 0; j < n; j++)
        {
            var row = a.Slice(j * n, j + 1);
            var pivot = row[j];
            for (var k = 0; k < j; k++) pivot -= row[k] * row[k];
            if (!(pivot > 0) || double.IsPositiveInfinity(pivot)) return false;
            row[j] = Math.Sqrt(pivot);
            for (var i = j + 1; i < n; i++)
            {
                var below = a.Slice(i * n, j + 1);
                var sum = below[j];
                for (var k = 0; k < j; k++) sum -= below[k] * row[k];
                below[j] = sum / row[j];
            }
        }

        return true;
    }

    /// <summary>x := L⁻¹ x.</summary>
    public static void Forward(ReadOnlySpan<double> l, int n, Span<double> x)
    {
        for (var i = 0; i < n; i++)
        {
            var row = l.Slice(i * n, i + 1);
            var sum = x[i];
            for (var k = 0; k < i; k++) sum -= row[k] * x[k];
            x[i] = sum / row[i];
        }
    }

    /// <summary>x := L'⁻¹ x.</summary>
    public static void Backward(ReadOnlySpan<double> l, int n, Span<double> x)
    {
        for (var i = n - 1; i >= 0; i--)
        {
            var sum = x[i];
            for (var k = i + 1; k < n; k++) sum -= l[(k * n) + i] * x[k];
            x[i] = sum / l[(i * n) + i];
        }
    }
}
