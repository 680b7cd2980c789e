namespace Analytics.Statistics.MixedModels.Criterion;

/// <summary>
/// The same criterion of the covariance itself, D = T T' (not relative to σ²), and of λ = ln σ²: ν λ + RSS/σ² + log determinants at D₀ = D/σ².
/// Used where a constraint is put on D or σ. The variables are η, and λ last unless it is held.
/// </summary>
internal sealed class AbsoluteObjective(VarianceCriterion criterion, FactorMap map, bool reml, double? heldLogVariance = null) : IObjective
{
    public int Count => map.Count + (heldLogVariance is null ? 1 : 0);

    private int Nu => reml ? criterion.Data.Rows - criterion.Data.P : criterion.Data.Rows;

    public double Value(ReadOnlySpan<double> x)
    {
        var (scale, d) = (Math.Exp(-Lambda(x)), map.Covariance(x[..map.Count]));
        for (var c = 0; c < d.Length; c++) d[c] *= scale;
        return double.IsFinite(scale) && scale > 0 && criterion.Evaluate(d)
            ? (Nu * Lambda(x)) + (criterion.Rss * scale) + criterion.LogDetV + (reml ? criterion.LogDetX : 0)
            : double.PositiveInfinity;
    }

    public (double[] Gradient, double[] Hessian) Derivatives(ReadOnlySpan<double> x)
    {
        var by = CriterionDerivatives.At(criterion);
        var (s, free, n, pairs) = (Math.Exp(Lambda(x)), map.Count, Count, by.Pairs.Length);
        var d0 = by.Pairs.Select(p => criterion.D0[(p.I * map.Q) + p.J]).ToArray();
        // ∂D₀ by the variables: D₀ = T T' exp(−λ).
        double[][] jacobian = [.. map.Jacobian(x[..free]).Select(j => Times(j, 1 / s)), Times(d0, -1)];
        var first = Enumerable.Range(0, pairs).Select(a => by.TraceV[a] - (reml ? by.TraceX[a] : 0) - (by.Square[a] / s)).ToArray();
        var (gradient, hessian) = (new double[n], new double[n * n]);
        for (var i = 0; i < n; i++)
        {
            gradient[i] = Dot(first, jacobian[i]) + (i == free ? Nu - (criterion.Rss / s) : 0);
            for (var j = 0; j <= i; j++)
            {
                var curvature = i < free ? Times(map.Curvature(i, j), 1 / s) : j < free ? Times(jacobian[j], -1) : d0;
                var sum = Dot(first, curvature);
                for (var a = 0; a < pairs; a++)
                {
                    for (var b = 0; b < pairs; b++) sum += jacobian[i][a] * jacobian[j][b] * Second(by, a, b, s);
                    if (i == free) sum += jacobian[j][a] * by.Square[a] / s;
                    if (j == free) sum += jacobian[i][a] * by.Square[a] / s;
                }

                if (i == free && j == free) sum += criterion.Rss / s;
                hessian[(i * n) + j] = hessian[(j * n) + i] = sum;
            }
        }

        return (gradient, hessian);
    }

    private double Lambda(ReadOnlySpan<double> x) => heldLogVariance ?? x[map.Count];

    private double Second(CriterionDerivatives by, int a, int b, double s)
        => -by.InfoV[a, b] + (reml ? by.InfoX[a, b] : 0) + (2 * by.InfoSquare[a, b] / s);

    private static double[] Times(double[] x, double by) => Array.ConvertAll(x, v => v * by);

    private static double Dot(double[] x, double[] y)
    {
        var sum = 0.0;
        for (var i = 0; i < x.Length; i++) sum += x[i] * y[i];
        return sum;
    }
}
