using Analytics.Statistics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace Analytics.Statistics.Reliability;

/// <summary>
/// Normal equations of the athletes, adjusted for trials (or for the grand mean only), as independent scores wᵢ with variance between × λᵢ + error.
/// </summary>
/// <param name="Eigenvalues">λᵢ above 0.</param>
/// <param name="Squares">wᵢ².</param>
/// <param name="ErrorSquares">Residual sum of squares, independent of the scores.</param>
/// <param name="DfError">Its degrees of freedom.</param>
/// <param name="Athletes">Athletes with a value.</param>
internal sealed record AthleteEquations(double[] Eigenvalues, double[] Squares, double ErrorSquares, int DfError, int Athletes)
{
    public int DfBetween => Eigenvalues.Length;

    public static AthleteEquations Of(TrialTable table, bool oneWay)
    {
        var cells = Enumerable.Range(0, table.Athletes)
            .Select(i => Enumerable.Range(0, table.Trials).Where(j => table[i, j].HasValue).Select(j => (Block: oneWay ? 0 : j, Value: table[i, j]!.Value)).ToArray())
            .Where(r => r.Length > 0).ToArray();
        var n = cells.Length;
        if (n == 0) return new([], [], 0, 0, 0);
        var blocks = oneWay ? 1 : table.Trials;
        var counts = new int[blocks];
        var means = new double[blocks];
        foreach (var cell in cells.SelectMany(r => r)) counts[cell.Block]++;
        foreach (var cell in cells.SelectMany(r => r)) means[cell.Block] += cell.Value / counts[cell.Block];

        var incidence = Matrix<double>.Build.Dense(n, blocks);
        var right = Vector<double>.Build.Dense(n);
        for (var i = 0; i < n; i++)
        {
            foreach (var (block, value) in cells[i])
            {
                incidence[i, block] += 1 / Math.Sqrt(counts[block]);
                right[i] += value - means[block];
            }
        }

        var adjusted = Matrix<double>.Build.DenseOfDiagonalArray([.. cells.Select(r => (double)r.Length)]) - incidence.TransposeAndMultiply(incidence);
        var parts = adjusted.Evd(Symmetricity.Symmetric);
        var scores = parts.EigenVectors.TransposeThisAndMultiply(right);
        // An eigenvalue of 0 stands for athletes that no trial links to the others.
        var kept = Enumerable.Range(0, n).Where(i => parts.EigenValues[i].Real > 1e-9 * table.Trials).ToArray();
        var lambda = kept.Select(i => parts.EigenValues[i].Real).ToArray();
        var squares = kept.Select((i, at) => scores[i] * scores[i] / lambda[at]).ToArray();

        if (!oneWay)
        {
            var fit = AdditiveFit.Of(table);
            return new(lambda, squares, fit.ResidualSquares, fit.DegreesOfFreedom, n);
        }

        var within = cells.Where(r => r.Length > 1).Sum(r => (r.Length - 1) * Summaries.Moments.Variance([.. r.Select(c => c.Value)]));
        return new(lambda, squares, within, cells.Sum(r => r.Length - 1), n);
    }

    public (double Between, double Error, double F) Estimate()
    {
        var error = ErrorSquares / DfError;
        var squares = Squares.Sum();
        var f = error > 0 ? squares / DfBetween / error : squares > 0 ? double.PositiveInfinity : 0;
        return ((squares - DfBetween * error) / Eigenvalues.Sum(), error, f);
    }

    public Interval IccInterval(double error, double level)
    {
        var low = Solve(FisherLaw.Quantile((1 + level) / 2, DfBetween, DfError) * error);
        var high = Solve(FisherLaw.Quantile((1 - level) / 2, DfBetween, DfError) * error);
        return new(low / (1 + low), high / (1 + high), level);
    }

    /// <summary>The θ at which the mean of wᵢ²/(1 + θ λᵢ) is the target; it falls from infinity at −1/λ of the largest λ to 0.</summary>
    private double Solve(double target)
    {
        var edge = -1 / Eigenvalues.Max();
        double low = -100, high = 100;
        for (var step = 0; step < 200 && high - low > 1e-14; step++)
        {
            var middle = (low + high) / 2;
            var theta = edge + Math.Exp(middle);
            var mean = 0.0;
            for (var i = 0; i < Squares.Length; i++) mean += Squares[i] / Math.Max(1 + theta * Eigenvalues[i], 1e-300);
            if (mean / Squares.Length > target) low = middle; else high = middle;
        }

        return edge + Math.Exp((low + high) / 2);
    }
}
