using Analytics.Statistics.MixedModels.Algebra;
using Analytics.Statistics.MixedModels.Criterion;

namespace Analytics.Statistics.MixedModels.Inference;

/// <summary>
/// Curvature of minus twice the log-likelihood by (η, λ = ln σ²) at the maximum, and with it the covariance of the variance parameters,
/// 2 H⁻¹. Directions without curvature (a correlation of effects that do not vary) carry nothing and are left out.
/// </summary>
internal sealed class VarianceInformation
{
    private readonly SymmetricEigen _eigen;
    private readonly double[] _unit;
    private readonly double _least;

    public VarianceInformation(FitState state)
    {
        var (by, s, nu, map) = (state.Derivatives, state.Variance, state.Nu, state.Map);
        Jacobian = map.Jacobian(state.Eta);
        var (n, pairs) = (map.Count + 1, by.Pairs.Length);
        var h = new double[n * n];
        for (var i = 0; i < map.Count; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var curvature = map.Curvature(i, j);
                var sum = 0.0;
                for (var a = 0; a < pairs; a++)
                {
                    sum += curvature[a] * (by.TraceV[a] - (state.Reml ? by.TraceX[a] : 0) - (by.Square[a] / s));
                    for (var b = 0; b < pairs; b++)
                        sum += Jacobian[i][a] * Jacobian[j][b] * (-by.InfoV[a, b] + (state.Reml ? by.InfoX[a, b] : 0) + (2 * by.InfoSquare[a, b] / s));
                }

                h[(i * n) + j] = h[(j * n) + i] = sum;
            }

            for (var a = 0; a < pairs; a++) h[(i * n) + n - 1] += Jacobian[i][a] * by.Square[a] / s;
            h[((n - 1) * n) + i] = h[(i * n) + n - 1];
        }

        h[^1] = nu;
        _unit = [.. Enumerable.Range(0, n).Select(i => Math.Sqrt(Math.Max(Math.Abs(h[(i * n) + i]), 1e-12 * nu)))];
        for (var i = 0; i < n; i++)
            for (var j = 0; j < n; j++) h[(i * n) + j] /= _unit[i] * _unit[j];
        _eigen = SymmetricEigen.Of(h, n);
        _least = 1e-8 * _eigen.Values.Max();
    }

    /// <summary>∂D₀/∂η_i by the entries of <see cref="RandomPairs"/>.</summary>
    public double[][] Jacobian { get; }

    /// <summary>g' H⁻¹ g for a gradient by (η, λ).</summary>
    public double Form(ReadOnlySpan<double> gradient)
    {
        var scaled = gradient.ToArray();
        for (var i = 0; i < scaled.Length; i++) scaled[i] /= _unit[i];
        var solved = _eigen.Apply(v => v > _least ? 1 / v : 0, scaled);
        var sum = 0.0;
        for (var i = 0; i < scaled.Length; i++) sum += scaled[i] * solved[i];
        return sum;
    }
}
