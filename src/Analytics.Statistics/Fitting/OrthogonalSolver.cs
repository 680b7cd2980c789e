namespace Analytics.Statistics.Fitting;

/// <summary>
/// Least squares by orthogonal transformations on caller-owned memory. Matrices are row by row.
/// Orthogonal steps keep twice the digits of normal equations. Source: [golub2013, ch. 5].
/// </summary>
internal static class OrthogonalSolver
{
    // A column that keeps less than this part of its length off the columns before it adds nothing in double precision.
    private const double Singular = 1e-13;

    /// <summary>Householder triangularisation of <paramref name="matrix"/> (n rows, p columns, n ≥ p) in place, the same done to <paramref name="right"/>.</summary>
    public static void Triangularise(Span<double> matrix, Span<double> right, int p)
    {
        var n = right.Length;
        for (var k = 0; k < p; k++)
        {
            var norm = 0.0;
            for (var i = k; i < n; i++) norm += matrix[(i * p) + k] * matrix[(i * p) + k];
            norm = Math.Sqrt(norm);
            if (norm == 0) continue;

            // v = column + sign·norm·e1, so that no cancellation happens in its first entry.
            var head = matrix[(k * p) + k];
            var diagonal = head > 0 ? -norm : norm;
            head -= diagonal;
            var factor = -1 / (diagonal * head); // 2/(v'v)
            for (var j = k + 1; j < p; j++)
            {
                var dot = head * matrix[(k * p) + j];
                for (var i = k + 1; i < n; i++) dot += matrix[(i * p) + k] * matrix[(i * p) + j];
                dot *= factor;
                matrix[(k * p) + j] -= dot * head;
                for (var i = k + 1; i < n; i++) matrix[(i * p) + j] -= dot * matrix[(i * p) + k];
            }
            var dotRight = head * right[k];
            for (var i = k + 1; i < n; i++) dotRight += matrix[(i * p) + k] * right[i];
            dotRight *= factor;
            right[k] -= dotRight * head;
            for (var i = k + 1; i < n; i++) right[i] -= dotRight * matrix[(i * p) + k];
            matrix[(k * p) + k] = diagonal;
        }
    }

    /// <summary>
    /// Solves min |R d - c|² + damping·|d|² by turning the damping rows into R with Givens rotations.
    /// </summary>
    /// <param name="upper">R, p rows and columns; only the upper triangle is read.</param>
    /// <param name="right">c, first p entries.</param>
    /// <param name="damping">Above 0.</param>
    /// <param name="work">p·p + 2p cells.</param>
    /// <param name="step">Receives d.</param>
    public static void SolveDamped(ReadOnlySpan<double> upper, ReadOnlySpan<double> right, double damping, Span<double> work, Span<double> step)
    {
        var p = step.Length;
        var triangle = work[..(p * p)];
        var rhs = work.Slice(p * p, p);
        var row = work.Slice((p * p) + p, p);
        upper[..(p * p)].CopyTo(triangle);
        right[..p].CopyTo(rhs);
        var root = Math.Sqrt(damping);
        for (var j = 0; j < p; j++)
        {
            row.Clear();
            row[j] = root;
            var rowRight = 0.0;
            for (var k = j; k < p; k++)
            {
                if (row[k] == 0) continue;
                var a = triangle[(k * p) + k];
                var length = Math.Sqrt((a * a) + (row[k] * row[k]));
                var (c, s) = (a / length, row[k] / length);
                for (var m = k; m < p; m++)
                {
                    var old = triangle[(k * p) + m];
                    triangle[(k * p) + m] = (c * old) + (s * row[m]);
                    row[m] = (c * row[m]) - (s * old);
                }
                row[k] = 0;
                (rhs[k], rowRight) = ((c * rhs[k]) + (s * rowRight), (c * rowRight) - (s * rhs[k]));
            }
        }
        for (var k = p - 1; k >= 0; k--)
        {
            var sum = rhs[k];
            for (var m = k + 1; m < p; m++) sum -= triangle[(k * p) + m] * step[m];
            step[k] = sum / triangle[(k * p) + k];
        }
    }

    /// <summary>A = D⁻¹ R⁻¹ with D the scales, so that (D R'R D)⁻¹ = A A'; null when R, its columns brought to length 1, is singular to working precision.</summary>
    public static double[]? InverseFactor(ReadOnlySpan<double> upper, ReadOnlySpan<double> scale)
    {
        var p = scale.Length;
        for (var j = 0; j < p; j++)
        {
            var square = 0.0;
            for (var i = 0; i <= j; i++) square += upper[(i * p) + j] * upper[(i * p) + j];
            if (!(Math.Abs(upper[(j * p) + j]) > Singular * Math.Sqrt(square))) return null;
        }

        // R⁻¹ row by row from the last: row j needs R to its right and the rows below.
        var inverse = new double[p * p];
        for (var j = p - 1; j >= 0; j--)
        {
            var diagonal = 1 / upper[(j * p) + j];
            inverse[(j * p) + j] = diagonal;
            for (var column = j + 1; column < p; column++)
            {
                var sum = 0.0;
                for (var m = j + 1; m <= column; m++) sum -= upper[(j * p) + m] * inverse[(m * p) + column];
                inverse[(j * p) + column] = sum * diagonal;
            }
        }
        for (var i = 0; i < p; i++)
            for (var j = i; j < p; j++) inverse[(i * p) + j] /= scale[i];
        return inverse;
    }
}
