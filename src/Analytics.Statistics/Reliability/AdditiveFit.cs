using MathNet.Numerics.LinearAlgebra;

namespace Analytics.Statistics.Reliability;

/// <summary>Least-squares fit of value = athlete + trial + error to a table with gaps.</summary>
/// <param name="ResidualSquares">Sum of squared residuals.</param>
/// <param name="DegreesOfFreedom">Values used less free parameters.</param>
/// <param name="WithRepeat">Athletes with two values or more; the others fit exactly and say nothing about error.</param>
/// <param name="Effects">Trial effects; only their differences mean anything. 0 for a trial nobody repeated.</param>
internal sealed record AdditiveFit(double ResidualSquares, int DegreesOfFreedom, int WithRepeat, IReadOnlyList<double> Effects)
{
    private Matrix<double>? Normal { get; init; }

    private Matrix<double>? Inverse { get; init; }

    /// <summary>Variance of the difference of two trial effects in error variances; null when no athlete, by way of others, links the two.</summary>
    public double? VarianceOfDifference(int first, int second)
    {
        if (Normal is null || Inverse is null) return null;
        var contrast = Vector<double>.Build.Dense(Normal.RowCount);
        contrast[second] += 1;
        contrast[first] -= 1;
        var solved = Inverse * contrast;
        // A contrast the data determine is reproduced by the normal equations; another is not.
        return (Normal * solved - contrast).AbsoluteMaximum() < 1e-6 ? contrast * solved : null;
    }

    public static AdditiveFit Of(TrialTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        var rows = Enumerable.Range(0, table.Athletes)
            .Select(i => Enumerable.Range(0, table.Trials).Where(j => table[i, j].HasValue).Select(j => (Trial: j, Value: table[i, j]!.Value)).ToArray())
            .Where(r => r.Length > 1).ToArray();
        if (rows.Length == 0) return new(0, 0, 0, new double[table.Trials]);

        // Sweeping out each athlete's mean leaves a k × k system for the trial effects. It is singular by one for every
        // set of trials no athlete links to another; the smallest solution is taken and the rank counted.
        var k = table.Trials;
        var normal = Matrix<double>.Build.Dense(k, k);
        var right = Vector<double>.Build.Dense(k);
        foreach (var row in rows)
        {
            var mean = row.Average(c => c.Value);
            foreach (var a in row)
            {
                normal[a.Trial, a.Trial] += 1;
                right[a.Trial] += a.Value - mean;
                foreach (var b in row) normal[a.Trial, b.Trial] -= 1.0 / row.Length;
            }
        }

        var svd = normal.Svd();
        var tolerance = 1e-10 * svd.S[0];
        var scaled = svd.U.TransposeThisAndMultiply(right);
        var rank = 0;
        for (var s = 0; s < k; s++)
        {
            var keep = svd.S[s] > tolerance;
            scaled[s] = keep ? scaled[s] / svd.S[s] : 0;
            if (keep) rank++;
        }

        var effects = svd.VT.TransposeThisAndMultiply(scaled);
        double squares = 0;
        foreach (var row in rows)
        {
            var level = row.Average(c => c.Value - effects[c.Trial]);
            squares += row.Sum(c => Math.Pow(c.Value - effects[c.Trial] - level, 2));
        }

        squares = Rounding.Dropped(squares, rows.Sum(r => r.Length), rows.Max(r => r.Max(c => Math.Abs(c.Value))));
        var inverted = Matrix<double>.Build.DenseOfDiagonalVector(svd.S.Map(v => v > tolerance ? 1 / v : 0));
        return new(squares, rows.Sum(r => r.Length) - rows.Length - rank, rows.Length, [.. effects])
        {
            Normal = normal,
            Inverse = svd.VT.Transpose() * inverted * svd.U.Transpose(),
        };
    }
}
