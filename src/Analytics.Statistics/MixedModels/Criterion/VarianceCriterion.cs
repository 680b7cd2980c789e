using Analytics.Statistics.MixedModels.Algebra;

namespace Analytics.Statistics.MixedModels.Criterion;

/// <summary>
/// The parts of minus twice the log-likelihood at one relative covariance D₀ of the random effects, V = σ²(I + Z D₀ Z').
/// Sums run over patterns of groups. Sources: [bates2015] for the profiled criterion, [pinheirobates2000, ch. 2].
/// </summary>
internal sealed class VarianceCriterion
{
    private readonly GroupReduction _data;
    private readonly double[] _chol;
    private readonly double[] _white;

    public VarianceCriterion(GroupReduction data)
    {
        _data = data;
        var (p, q) = (data.P, data.Q);
        Information = new double[(p + 1) * (p + 1)];
        (_chol, _white) = (new double[Math.Max(1, q * q)], new double[Math.Max(1, q) * (p + 1)]);
        Loadings = [.. data.Patterns.Select(k => new PatternLoadings(k, q, p))];
        D0 = new double[q * q];
    }

    /// <summary>The data.</summary>
    public GroupReduction Data => _data;

    /// <summary>The relative covariance last evaluated.</summary>
    public double[] D0 { get; }

    /// <summary>Σ log det V₀ over groups.</summary>
    public double LogDetV { get; private set; }

    /// <summary>log det X'V₀⁻¹X.</summary>
    public double LogDetX { get; private set; }

    /// <summary>Residual sum of squares y'P₀y.</summary>
    public double Rss { get; private set; }

    /// <summary>Cholesky factor of [X y]'V₀⁻¹[X y], (p + 1) × (p + 1), lower triangle.</summary>
    public double[] Information { get; }

    /// <summary>What each pattern contributed.</summary>
    public PatternLoadings[] Loadings { get; }

    /// <summary>Evaluates at D₀. False when the arithmetic breaks down: the point is no candidate.</summary>
    public bool Evaluate(ReadOnlySpan<double> d0)
    {
        var (p1, q) = (_data.P + 1, _data.Q);
        d0.CopyTo(D0);
        _data.Within.CopyTo(Information, 0);
        LogDetV = 0;
        foreach (var part in Loadings)
        {
            var (r, triangle) = (part.Pattern.Rows, part.Pattern.Triangle);
            if (r == 0) continue;
            Covariance(triangle, d0, r, q);
            if (!Cholesky.Factor(_chol, r)) return false;
            for (var i = 0; i < r; i++) LogDetV += 2 * part.Pattern.Count * Math.Log(_chol[(i * r) + i]);
            triangle.CopyTo(part.Root, 0);
            ForwardRows(part.Root, r, q);
            for (var b = 0; b < part.Pattern.Blocks.Count; b++)
            {
                part.Pattern.Blocks[b].CopyTo(_white, 0);
                ForwardRows(_white, r, p1);
                AddProducts(r, p1);
                part.Project(_white, b, q, p1);
            }
        }

        if (!Cholesky.Factor(Information, p1)) return false;
        LogDetX = 0;
        for (var j = 0; j < p1 - 1; j++) LogDetX += 2 * Math.Log(Information[(j * p1) + j]);
        Rss = Information[^1] * Information[^1];
        return double.IsFinite(LogDetV + LogDetX + Rss);
    }

    /// <summary>Fixed effects: the solution of the generalised normal equations.</summary>
    public double[] FixedEffects()
    {
        var (p, p1) = (_data.P, _data.P + 1);
        var beta = Information.AsSpan(p * p1, p).ToArray();
        for (var i = p - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < p; k++) beta[i] -= Information[(k * p1) + i] * beta[k];
            beta[i] /= Information[(i * p1) + i];
        }

        return beta;
    }

    /// <summary>x := L⁻¹ x, where L L' = X'V₀⁻¹X.</summary>
    public void Whiten(Span<double> x)
    {
        var p1 = _data.P + 1;
        for (var i = 0; i < _data.P; i++)
        {
            var row = Information.AsSpan(i * p1, i + 1);
            var sum = x[i];
            for (var k = 0; k < i; k++) sum -= row[k] * x[k];
            x[i] = sum / row[i];
        }
    }

    private void Covariance(double[] triangle, ReadOnlySpan<double> d0, int r, int q)
    {
        for (var i = 0; i < r; i++)
            for (var j = 0; j <= i; j++)
            {
                var sum = i == j ? 1.0 : 0;
                for (var k = 0; k < q; k++)
                    for (var l = 0; l < q; l++) sum += triangle[(i * q) + k] * d0[(k * q) + l] * triangle[(j * q) + l];
                _chol[(i * r) + j] = sum;
            }
    }

    private void ForwardRows(double[] rows, int r, int width)
    {
        for (var i = 0; i < r; i++)
        {
            var row = rows.AsSpan(i * width, width);
            for (var k = 0; k < i; k++)
            {
                var factor = _chol[(i * r) + k];
                var above = rows.AsSpan(k * width, width);
                for (var j = 0; j < width; j++) row[j] -= factor * above[j];
            }

            var pivot = _chol[(i * r) + i];
            for (var j = 0; j < width; j++) row[j] /= pivot;
        }
    }

    private void AddProducts(int r, int p1)
    {
        for (var k = 0; k < r; k++)
        {
            var row = _white.AsSpan(k * p1, p1);
            for (var i = 0; i < p1; i++)
            {
                var x = row[i];
                if (x == 0) continue;
                var sums = Information.AsSpan(i * p1, i + 1);
                for (var j = 0; j < sums.Length; j++) sums[j] += x * row[j];
            }
        }
    }
}
