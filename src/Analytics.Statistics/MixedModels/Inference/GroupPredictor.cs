using Analytics.Statistics.MixedModels.Algebra;
using Analytics.Statistics.MixedModels.Criterion;

namespace Analytics.Statistics.MixedModels.Inference;

/// <summary>
/// Random effects of groups and what follows from them, in the units of the search. With T T' = D₀ and R the triangle of the group,
/// the conditional covariance is σ² T(I + T'R'RT)⁻¹T', which cannot cancel; the fixed effects add σ²(D₀h')(D₀h')'. Source: [henderson1975].
/// </summary>
internal sealed class GroupPredictor(FitState state)
{
    private readonly int _q = state.Q;
    private readonly int _p = state.P;

    /// <summary>Random effects b, the columns of D₀h' (q × p) and the conditional covariance without σ².</summary>
    public (double[] Effects, double[] ByFixed, double[] Conditional) Of(int group)
    {
        var (pattern, block) = (state.Criterion.Data.OfGroup[group], state.Criterion.Data.BlockOfGroup[group]);
        var t = state.Map.Factor(state.Eta);
        var root = Product(pattern.Triangle, pattern.Rows, t); // R T
        var inner = new double[_q * _q];
        for (var i = 0; i < _q; i++)
            for (var j = 0; j <= i; j++)
            {
                inner[(i * _q) + j] = i == j ? 1 : 0;
                for (var k = 0; k < pattern.Rows; k++) inner[(i * _q) + j] += root[(k * _q) + i] * root[(k * _q) + j];
            }

        Cholesky.Factor(inner, _q);
        // D₀R'(I + R D₀R')⁻¹ c = T (I + T'R'RT)⁻¹ T'R' c for the columns c of the block.
        var columns = new double[_p + 1][];
        for (var c = 0; c <= _p; c++)
        {
            var x = new double[_q];
            for (var k = 0; k < pattern.Rows; k++)
                for (var i = 0; i < _q; i++) x[i] += root[(k * _q) + i] * block[(k * (_p + 1)) + c];
            columns[c] = Solve(inner, t, x);
        }

        var beta = state.Criterion.FixedEffects();
        var effects = columns[_p];
        for (var j = 0; j < _p; j++)
            for (var i = 0; i < _q; i++) effects[i] -= columns[j][i] * beta[j];

        var byFixed = new double[_q * _p];
        for (var i = 0; i < _q; i++)
        {
            for (var j = 0; j < _p; j++) byFixed[(i * _p) + j] = columns[j][i];
            state.Criterion.Whiten(byFixed.AsSpan(i * _p, _p));
        }

        return (effects, byFixed, Conditional(inner, t));
    }

    /// <summary>Everything about one group in the units of the data.</summary>
    public GroupEffect Describe(int group, int rows)
    {
        var (effects, byFixed, conditional) = Of(group);
        var full = (double[])conditional.Clone();
        for (var i = 0; i < _q; i++)
            for (var j = 0; j < _q; j++)
                for (var k = 0; k < _p; k++) full[(i * _q) + j] += byFixed[(i * _p) + k] * byFixed[(j * _p) + k];
        state.Random.ToEffects(effects);
        var (plain, withFixed, unit) = (state.Random.ToEffectCovariance(conditional), state.Random.ToEffectCovariance(full), state.Scale * Math.Sqrt(state.Variance));
        return new(state.GroupNames[group], rows,
        [
            .. state.Design.RandomNames.Select((name, i) => new RandomEffect(
                name, state.Scale * effects[i], unit * Math.Sqrt(Math.Max(0, plain[(i * _q) + i])), unit * Math.Sqrt(Math.Max(0, withFixed[(i * _q) + i])))),
        ]);
    }

    private double[] Conditional(double[] inner, double[] t)
    {
        var result = new double[_q * _q];
        for (var j = 0; j < _q; j++)
        {
            // T' e_j, so that the solution is column j of T inner⁻¹ T'.
            var x = new double[_q];
            for (var k = 0; k < _q; k++) x[k] = t[(j * _q) + k];
            var column = Solve(inner, t, x);
            for (var i = 0; i < _q; i++) result[(i * _q) + j] = column[i];
        }

        return result;
    }

    private double[] Solve(double[] inner, double[] t, double[] x)
    {
        Cholesky.Forward(inner, _q, x);
        Cholesky.Backward(inner, _q, x);
        return Product(t, _q, x, 1);
    }

    private double[] Product(double[] a, int rows, double[] b) => Product(a, rows, b, _q);

    private double[] Product(double[] a, int rows, double[] b, int width)
    {
        var result = new double[rows * width];
        for (var i = 0; i < rows; i++)
            for (var k = 0; k < _q; k++)
                for (var j = 0; j < width; j++) result[(i * width) + j] += a[(i * _q) + k] * b[(k * width) + j];
        return result;
    }
}
