namespace Analytics.Statistics.MixedModels.Criterion;

/// <summary>
/// Minus twice the log-likelihood with σ² and the fixed effects at their best for each relative covariance, without its constants:
/// ν ln(RSS/ν) + log det V₀ (+ log det X'V₀⁻¹X for REML), ν = N − p for REML and N for ML. Source: [bates2015].
/// </summary>
internal sealed class ProfiledObjective(VarianceCriterion criterion, FactorMap map, bool reml) : IObjective
{
    public int Count => map.Count;

    private int Nu => reml ? criterion.Data.Rows - criterion.Data.P : criterion.Data.Rows;

    public double Value(ReadOnlySpan<double> x)
        => criterion.Evaluate(map.Covariance(x))
            ? (Nu * Math.Log(criterion.Rss / Nu)) + criterion.LogDetV + (reml ? criterion.LogDetX : 0)
            : double.PositiveInfinity;

    public (double[] Gradient, double[] Hessian) Derivatives(ReadOnlySpan<double> x)
    {
        var by = CriterionDerivatives.At(criterion);
        var (jacobian, s, n) = (map.Jacobian(x), criterion.Rss / Nu, map.Count);
        var first = Enumerable.Range(0, by.Pairs.Length).Select(a => by.TraceV[a] - (reml ? by.TraceX[a] : 0) - (by.Square[a] / s)).ToArray();
        var (gradient, hessian) = (new double[n], new double[n * n]);
        for (var i = 0; i < n; i++)
        {
            gradient[i] = Dot(first, jacobian[i]);
            for (var j = 0; j <= i; j++)
            {
                var sum = Dot(first, map.Curvature(i, j));
                for (var a = 0; a < first.Length; a++)
                    for (var b = 0; b < first.Length; b++) sum += jacobian[i][a] * jacobian[j][b] * Second(by, a, b, s);
                hessian[(i * n) + j] = hessian[(j * n) + i] = sum;
            }
        }

        return (gradient, hessian);
    }

    private double Second(CriterionDerivatives by, int a, int b, double s)
        => -by.InfoV[a, b] + (reml ? by.InfoX[a, b] : 0) + (2 * by.InfoSquare[a, b] / s) - (by.Square[a] * by.Square[b] / (s * s * Nu));

    private static double Dot(double[] x, double[] y)
    {
        var sum = 0.0;
        for (var i = 0; i < x.Length; i++) sum += x[i] * y[i];
        return sum;
    }
}
