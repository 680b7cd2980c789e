using Analytics.Statistics.MixedModels.Algebra;
using Analytics.Statistics.MixedModels.Criterion;

namespace Analytics.Statistics.MixedModels.Inference;

/// <summary>
/// Kenward and Roger's covariance of the fixed effects, made larger for the doubt of the variances, and their degrees of freedom of one
/// contrast [kenwardroger1997]. V is linear in its parameters, so terms with second derivatives of V vanish. The directions used are E_a
/// (entries of D₀) and V₀ itself (σ²): any other choice of linear parameters gives the same result.
/// </summary>
internal sealed class KenwardRoger
{
    private readonly FitState _state;
    private readonly double[] _covariance;
    private readonly double[][] _slopes;
    private readonly double[] _adjustment;

    public KenwardRoger(FitState state)
    {
        _state = state;
        var (by, p, q) = (state.Derivatives, state.P, state.Q);
        // Entries of D that the model holds at 0 are no parameters.
        var used = Enumerable.Range(0, by.Pairs.Length).Where(a => state.Design.IsCorrelated || by.Pairs[a].I == by.Pairs[a].J).ToArray();
        var n = used.Length + 1;
        var information = new double[n * n];
        for (var a = 0; a < n; a++)
            for (var b = 0; b < n; b++)
                information[(a * n) + b] = (a == n - 1, b == n - 1) switch
                {
                    (true, true) => state.Rows - p,
                    (true, false) => by.TraceV[used[b]] - by.TraceX[used[b]],
                    (false, true) => by.TraceV[used[a]] - by.TraceX[used[a]],
                    _ => by.InfoV[used[a], used[b]] - by.InfoX[used[a], used[b]],
                };
        // W = 2 (tr P V_a P V_b)⁻¹.
        _covariance = Inverse(information, n, 2);
        _slopes = [.. used.Select(a => by.Slopes[a]), Identity(p)];
        _adjustment = new double[p * p];
        for (var a = 0; a < n; a++)
            for (var b = 0; b < n; b++)
            {
                var w = _covariance[(a * n) + b];
                if (a == n - 1 || b == n - 1) continue; // Q_ab = P_a Φ P_b there: V₀⁻¹ V₀ cancels.
                var second = SecondOrder(state, by.Pairs[used[a]], by.Pairs[used[b]], q, p);
                for (var i = 0; i < p; i++)
                    for (var j = 0; j < p; j++)
                    {
                        var product = 0.0;
                        for (var k = 0; k < p; k++) product += _slopes[a][(i * p) + k] * _slopes[b][(k * p) + j];
                        _adjustment[(i * p) + j] += 2 * w * (second[(i * p) + j] - product);
                    }
            }
    }

    /// <summary>Variance, in units of the search, and degrees of freedom of a whitened contrast.</summary>
    public (double Variance, double DegreesOfFreedom) Of(double[] white)
    {
        var (n, plain) = (_slopes.Length, ContrastCalculator.Dot(white, white));
        var slopes = _slopes.Select(m => ContrastCalculator.Form(m, white) / plain).ToArray();
        var sum = 0.0;
        for (var a = 0; a < n; a++)
            for (var b = 0; b < n; b++) sum += _covariance[(a * n) + b] * slopes[a] * slopes[b];
        return (_state.Variance * (plain + ContrastCalculator.Form(_adjustment, white)), 2 / sum);
    }

    // L⁻¹ X'V₀⁻¹E_aV₀⁻¹E_bV₀⁻¹X L'⁻¹ = Σ h'E_a K E_b h.
    private static double[] SecondOrder(FitState state, (int I, int J) a, (int I, int J) b, int q, int p)
    {
        var result = new double[p * p];
        var h = new double[q * p];
        foreach (var part in state.Criterion.Loadings)
        {
            var k = part.K(q);
            foreach (var loading in part.H)
            {
                for (var i = 0; i < q; i++)
                {
                    loading.AsSpan(i * (p + 1), p).CopyTo(h.AsSpan(i * p));
                    state.Criterion.Whiten(h.AsSpan(i * p, p));
                }

                Add(a.I, a.J, b.I, b.J);
                if (a.I != a.J) Add(a.J, a.I, b.I, b.J);
                if (b.I != b.J) Add(a.I, a.J, b.J, b.I);
                if (a.I != a.J && b.I != b.J) Add(a.J, a.I, b.J, b.I);
            }

            void Add(int i, int j, int l, int m)
            {
                var factor = k[(j * q) + l];
                for (var r = 0; r < p; r++)
                    for (var c = 0; c < p; c++) result[(r * p) + c] += h[(i * p) + r] * factor * h[(m * p) + c];
            }
        }

        return result;
    }

    private static double[] Identity(int p)
    {
        var m = new double[p * p];
        for (var i = 0; i < p; i++) m[(i * p) + i] = 1;
        return m;
    }

    private static double[] Inverse(double[] m, int n, double times)
    {
        var scaled = new double[n * n];
        for (var i = 0; i < n; i++)
            for (var j = 0; j < n; j++) scaled[(i * n) + j] = m[(i * n) + j] / Math.Sqrt(m[(i * n) + i] * m[(j * n) + j]);
        var eigen = SymmetricEigen.Of(scaled, n);
        var least = 1e-12 * eigen.Values.Max();
        var inverse = new double[n * n];
        for (var j = 0; j < n; j++)
        {
            var unit = new double[n];
            unit[j] = 1;
            var column = eigen.Apply(v => v > least ? 1 / v : 0, unit);
            for (var i = 0; i < n; i++) inverse[(i * n) + j] = times * column[i] / Math.Sqrt(m[(i * n) + i] * m[(j * n) + j]);
        }

        return inverse;
    }
}
