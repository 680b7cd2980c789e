namespace Analytics.Statistics.MixedModels.Criterion;

/// <summary>
/// First and second derivatives of the parts of the criterion by the entries of D₀, exact. With E_a = ∂D₀/∂a, P₀ = V₀⁻¹ − V₀⁻¹X(X'V₀⁻¹X)⁻¹X'V₀⁻¹:
/// ∂ log det = tr(P₀ Z E_a Z') and ∂ y'P₀y = −y'P₀ Z E_a Z' P₀y. Source: [harville1977].
/// </summary>
internal sealed class CriterionDerivatives
{
    private readonly int _p;
    private readonly int _q;

    private CriterionDerivatives(int p, int q)
    {
        (_p, _q, Pairs) = (p, q, RandomPairs.All(q));
        var n = Pairs.Length;
        (TraceV, TraceX, Square) = (new double[n], new double[n], new double[n]);
        (InfoV, InfoX, InfoSquare) = (new double[n, n], new double[n, n], new double[n, n]);
        Slopes = [.. Pairs.Select(_ => new double[p * p])];
    }

    public (int I, int J)[] Pairs { get; }

    /// <summary>tr(V₀⁻¹ Z E_a Z').</summary>
    public double[] TraceV { get; }

    /// <summary>What REML takes off: tr(P₀ Z E_a Z') = TraceV − TraceX.</summary>
    public double[] TraceX { get; }

    /// <summary>y'P₀ Z E_a Z'P₀y.</summary>
    public double[] Square { get; }

    /// <summary>tr(V₀⁻¹ Z E_a Z' V₀⁻¹ Z E_b Z').</summary>
    public double[,] InfoV { get; }

    /// <summary>What REML takes off: tr(P₀ Z E_a Z' P₀ Z E_b Z') = InfoV − InfoX.</summary>
    public double[,] InfoX { get; }

    /// <summary>y'P₀ Z E_a Z' P₀ Z E_b Z'P₀y.</summary>
    public double[,] InfoSquare { get; }

    /// <summary>L⁻¹ X'V₀⁻¹ Z E_a Z' V₀⁻¹X L'⁻¹ with L L' = X'V₀⁻¹X, full p × p.</summary>
    public double[][] Slopes { get; }

    /// <summary>Derivatives at the point the criterion was evaluated last.</summary>
    public static CriterionDerivatives At(VarianceCriterion criterion)
    {
        var (p, q) = (criterion.Data.P, criterion.Data.Q);
        var result = new CriterionDerivatives(p, q);
        var turn = new double[result.Pairs.Length * p];
        var (h, v) = (new double[q * p], new double[q]);
        foreach (var part in criterion.Loadings)
        {
            var (g, vv) = (new double[q * q], new double[q * q]);
            foreach (var loading in part.H)
            {
                result.Unfold(criterion, loading, h, v);
                result.Add(h, v, g, vv, turn);
            }

            result.Close(part.K(q), g, vv, part.Pattern.Count);
        }

        result.Finish(turn);
        return result;
    }

    // h := H_x L'⁻¹ and v := H_y − H_x β = R'P₀y, both from the factor at hand.
    private void Unfold(VarianceCriterion criterion, double[] loading, double[] h, double[] v)
    {
        var p1 = _p + 1;
        var last = criterion.Information.AsSpan(_p * p1, _p);
        for (var k = 0; k < _q; k++)
        {
            var row = h.AsSpan(k * _p, _p);
            loading.AsSpan(k * p1, _p).CopyTo(row);
            criterion.Whiten(row);
            v[k] = loading[(k * p1) + _p];
            for (var j = 0; j < _p; j++) v[k] -= row[j] * last[j];
        }
    }

    private void Add(double[] h, double[] v, double[] g, double[] vv, double[] turn)
    {
        for (var a = 0; a < Pairs.Length; a++)
        {
            var (k, l) = Pairs[a];
            var hk = h.AsSpan(k * _p, _p);
            var hl = h.AsSpan(l * _p, _p);
            var t = turn.AsSpan(a * _p, _p);
            var dot = 0.0;
            for (var i = 0; i < _p; i++)
            {
                dot += hk[i] * hl[i];
                t[i] += k == l ? hk[i] * v[k] : (hk[i] * v[l]) + (hl[i] * v[k]);
                var (x, z) = (hk[i], k == l ? 0 : hl[i]);
                var slope = Slopes[a].AsSpan(i * _p, _p);
                for (var j = 0; j < _p; j++) slope[j] += (x * hl[j]) + (z * hk[j]);
            }

            g[(k * _q) + l] += dot;
            vv[(k * _q) + l] += v[k] * v[l];
            if (k == l) continue;
            g[(l * _q) + k] += dot;
            vv[(l * _q) + k] += v[k] * v[l];
        }
    }

    private void Close(double[] k, double[] g, double[] vv, int count)
    {
        for (var a = 0; a < Pairs.Length; a++)
        {
            TraceV[a] += count * RandomPairs.Trace(k, _q, Pairs[a]);
            TraceX[a] += RandomPairs.Trace(g, _q, Pairs[a]);
            Square[a] += RandomPairs.Trace(vv, _q, Pairs[a]);
            for (var b = 0; b <= a; b++)
            {
                InfoV[a, b] += count * RandomPairs.Trace(k, k, _q, Pairs[a], Pairs[b]);
                // Both orders of the two factors, half each: the sum over a block is symmetric, its halves are not.
                InfoX[a, b] += RandomPairs.Trace(k, g, _q, Pairs[a], Pairs[b]) + RandomPairs.Trace(g, k, _q, Pairs[a], Pairs[b]);
                InfoSquare[a, b] += (RandomPairs.Trace(k, vv, _q, Pairs[a], Pairs[b]) + RandomPairs.Trace(vv, k, _q, Pairs[a], Pairs[b])) / 2;
            }
        }
    }

    private void Finish(double[] turn)
    {
        for (var a = 0; a < Pairs.Length; a++)
            for (var b = 0; b <= a; b++)
            {
                for (var i = 0; i < Slopes[a].Length; i++) InfoX[a, b] -= Slopes[a][i] * Slopes[b][i];
                for (var i = 0; i < _p; i++) InfoSquare[a, b] -= turn[(a * _p) + i] * turn[(b * _p) + i];
                (InfoV[b, a], InfoX[b, a], InfoSquare[b, a]) = (InfoV[a, b], InfoX[a, b], InfoSquare[a, b]);
            }
    }
}
