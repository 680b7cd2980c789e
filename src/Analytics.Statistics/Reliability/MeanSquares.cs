using Analytics.Statistics.Results;

namespace Analytics.Statistics.Reliability;

/// <summary>Mean squares of a complete athletes × trials table (two-way analysis of variance without replication).</summary>
/// <param name="Athletes">Rows, n.</param>
/// <param name="Trials">Columns, k.</param>
/// <param name="BetweenAthletes">Mean square of rows, df n − 1.</param>
/// <param name="BetweenTrials">Mean square of columns, df k − 1.</param>
/// <param name="Residual">Mean square of what rows and columns leave, df (n − 1)(k − 1).</param>
/// <param name="WithinAthletes">Mean square within rows, columns and residual pooled, df n(k − 1).</param>
public sealed record MeanSquares(
    int Athletes, int Trials, double BetweenAthletes, double BetweenTrials, double Residual, double WithinAthletes) : Result
{
    /// <summary>n − 1.</summary>
    public int DfBetweenAthletes => Athletes - 1;

    /// <summary>k − 1.</summary>
    public int DfBetweenTrials => Trials - 1;

    /// <summary>(n − 1)(k − 1).</summary>
    public int DfResidual => (Athletes - 1) * (Trials - 1);

    /// <summary>n(k − 1).</summary>
    public int DfWithin => Athletes * (Trials - 1);

    /// <summary>Do athletes differ, trial means taken out? Infinite when the residual is 0.</summary>
    public double FBetweenAthletes => Ratio(BetweenAthletes, Residual);

    /// <summary>Do athletes differ, trial means counted as error? Infinite when trials repeat exactly.</summary>
    public double FOneWay => Ratio(BetweenAthletes, WithinAthletes);

    /// <summary>Do trial means differ (learning, fatigue)? Infinite when the residual is 0.</summary>
    public double FBetweenTrials => Ratio(BetweenTrials, Residual);

    /// <summary>
    /// Variance between athletes freed of trial error: (between − residual)/k. It may come out negative, which says that
    /// no difference between athletes was found; it is never set to 0.
    /// </summary>
    public double TrueVariance => (BetweenAthletes - Residual) / Trials;

    /// <summary>SD between athletes freed of trial error; null when no between-athlete variance was found.</summary>
    public double? TrueStandardDeviation => TrueVariance > 0 ? Math.Sqrt(TrueVariance) : null;

    /// <summary>SD of all values about the grand mean, divisor nk − 1.</summary>
    public double TotalStandardDeviation
        => Math.Sqrt((DfBetweenAthletes * BetweenAthletes + DfWithin * WithinAthletes) / (Athletes * Trials - 1));

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

        var largest = Enumerable.Range(0, n).Max(i => Enumerable.Range(0, k).Max(j => Math.Abs(table[i, j]!.Value)));
        residual = Rounding.Dropped(residual, n * k, largest);
        within = Rounding.Dropped(within, n * k, largest);
        return new(
            n, k,
            k * rowMeans.Sum(m => (m - grand) * (m - grand)) / (n - 1),
            n * columnMeans.Sum(m => (m - grand) * (m - grand)) / (k - 1),
            residual / ((n - 1) * (k - 1)),
            within / (n * (k - 1)));
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Mean squares", "two-way analysis of variance without replication",
        [
            new("between athletes", BetweenAthletes) { DegreesOfFreedom = DfBetweenAthletes, Note = Test(FBetweenAthletes, DfBetweenAthletes) },
            new("between trials", BetweenTrials) { DegreesOfFreedom = DfBetweenTrials, Note = Test(FBetweenTrials, DfBetweenTrials) },
            new("residual", Residual) { DegreesOfFreedom = DfResidual },
            new("within athletes", WithinAthletes) { DegreesOfFreedom = DfWithin, Note = "trials and residual pooled" },
            new("SD between athletes, error taken off", TrueStandardDeviation)
            {
                Note = TrueStandardDeviation is null ? FormattableString.Invariant($"no between-athlete variance was found (estimate {TrueVariance:0.####})") : string.Empty,
            },
        ])
    { Basis = $"{Athletes} athletes, {Trials} trials" };

    private string Test(double f, int df)
        => FormattableString.Invariant($"F {f:0.###}, {SheetProbability.Of(Distributions.FisherLaw.UpperTail(f, df, DfResidual))}");

    private static double Ratio(double numerator, double denominator)
        => denominator > 0 ? numerator / denominator : numerator > 0 ? double.PositiveInfinity : 0;
}
