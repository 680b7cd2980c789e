namespace Analytics.Statistics.Reliability;

/// <summary>Mean squares of a complete athletes × trials table (two-way analysis of variance without replication).</summary>
/// <param name="Athletes">Rows, n.</param>
/// <param name="Trials">Columns, k.</param>
/// <param name="BetweenAthletes">Mean square of rows, df n − 1.</param>
/// <param name="BetweenTrials">Mean square of columns, df k − 1.</param>
/// <param name="Residual">Mean square of what rows and columns leave, df (n − 1)(k − 1).</param>
/// <param name="WithinAthletes">Mean square within rows, columns and residual pooled, df n(k − 1).</param>
public sealed record MeanSquares(
    int Athletes, int Trials, double BetweenAthletes, double BetweenTrials, double Residual, double WithinAthletes)
{
    /// <summary>
    /// Variance between athletes freed of trial error: (between − residual)/k. It may come out negative, which says that
    /// no difference between athletes was found; it is never set to 0.
    /// </summary>
    public double TrueVariance => (BetweenAthletes - Residual) / Trials;

    /// <summary>Mean squares of a complete table.</summary>
    /// <param name="table">At least 2 athletes, no missing trial.</param>
    /// <exception cref="ArgumentException">A trial is missing or there is one athlete only.</exception>
    public static MeanSquares Of(TrialTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        if (!table.IsComplete)
        {
            throw new ArgumentException(
                $"{table.Athletes * table.Trials - table.Observations} of {table.Athletes * table.Trials} trials are missing; use {nameof(TrialTable.CompleteRows)} first and say how many athletes it left out.",
                nameof(table));
        }

        Require.AtLeast(table.Athletes, 2, nameof(table));
        int n = table.Athletes, k = table.Trials;
        var rowMeans = new double[n];
        var columnMeans = new double[k];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < k; j++)
            {
                rowMeans[i] += table[i, j]!.Value / k;
                columnMeans[j] += table[i, j]!.Value / n;
            }
        }

        var grand = rowMeans.Average();
        double residual = 0, within = 0;
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < k; j++)
            {
                var left = table[i, j]!.Value - rowMeans[i];
                within += left * left;
                left -= columnMeans[j] - grand;
                residual += left * left;
            }
        }

        return new(
            n, k,
            k * rowMeans.Sum(m => (m - grand) * (m - grand)) / (n - 1),
            n * columnMeans.Sum(m => (m - grand) * (m - grand)) / (k - 1),
            residual / ((n - 1) * (k - 1)),
            within / (n * (k - 1)));
    }
}
