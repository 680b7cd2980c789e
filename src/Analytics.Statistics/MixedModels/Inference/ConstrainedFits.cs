using Analytics.Statistics.MixedModels.Algebra;
using Analytics.Statistics.MixedModels.Criterion;

namespace Analytics.Statistics.MixedModels.Inference;

/// <summary>
/// The best criterion when one thing is held. D = T T' with the held effect first: a standard deviation is T₁₁, a correlation ties T₂₁ to T₂₂.
/// Each search starts where the last one ended.
/// </summary>
internal sealed class ConstrainedFits(FitState state)
{
    private readonly VarianceCriterion _criterion = new(state.Criterion.Data);

    /// <summary>The best of all, in the terms of the searches here.</summary>
    public double Best { get; } = (state.Nu * Math.Log(state.Variance)) + state.Criterion.LogDetV + (state.Reml ? state.Criterion.LogDetX : 0) + state.Nu;

    /// <summary>Criterion by the residual standard deviation, in units of the data.</summary>
    public Func<double, double> ByResidual()
    {
        var start = Array.ConvertAll(state.Eta, e => e * Math.Sqrt(state.Variance));
        return sigma => Minimum(new AbsoluteObjective(_criterion, state.Map, state.Reml, 2 * Math.Log(sigma / state.Scale)), ref start);
    }

    /// <summary>Criterion by the standard deviation of a random effect, in units of the data.</summary>
    public Func<double, double> ByStandardDeviation(int effect)
    {
        var (cells, order, factor) = Start([effect]);
        var free = cells.Where(c => (c.I, c.J) != (0, 0)).ToArray();
        double[] start = [.. free.Select(c => Away(factor[(c.I * state.Q) + c.J], c)), Math.Log(state.Variance)];
        return sd =>
        {
            var map = Map(order, [(0, 0, sd / state.Scale)], [.. free.Select(c => new[] { (c.I, c.J, 1.0) })]);
            return Minimum(new AbsoluteObjective(_criterion, map, state.Reml), ref start);
        };
    }

    /// <summary>Criterion by the correlation of two random effects.</summary>
    public Func<double, double> ByCorrelation(int first, int second)
    {
        var (cells, order, factor) = Start([first, second]);
        var q = state.Q;
        var rest = cells.Where(c => c.I > 1).ToArray();
        var length = Math.Sqrt((factor[q] * factor[q]) + (factor[q + 1] * factor[q + 1]));
        double[] start = [factor[0], length, .. rest.Select(c => Away(factor[(c.I * q) + c.J], c)), Math.Log(state.Variance)];
        return rho =>
        {
            var map = Map(order, [], [[(0, 0, 1)], [(1, 0, rho), (1, 1, Math.Sqrt(Math.Max(0, 1 - (rho * rho))))], .. rest.Select(c => new[] { (c.I, c.J, 1.0) })]);
            return Minimum(new AbsoluteObjective(_criterion, map, state.Reml), ref start);
        };
    }

    /// <summary>Criterion by one fixed effect, in units of the data. Full likelihood only.</summary>
    public Func<double, double> ByFixedEffect(int column)
    {
        var columns = state.Design.FixedColumns.ToList();
        var moved = columns[column];
        columns.RemoveAt(column);
        var x = OrthonormalColumns.Of([.. columns, moved]);
        var y = Array.ConvertAll(state.Design.Response, v => v / state.Scale);
        var last = x.TakeOut(y)[^1];
        var data = GroupReduction.Of(x.Q, state.Random.Columns, y, state.GroupOfRow, state.GroupNames.Count);
        var start = state.Eta;
        return beta =>
        {
            var held = data.WithLastHeld((beta * x.R[^1] / state.Scale) - last);
            return Minimum(new ProfiledObjective(new VarianceCriterion(held), state.Map, reml: false), ref start) + state.Nu;
        };
    }

    private static double Minimum(IObjective objective, ref double[] start)
    {
        var end = NewtonSearch.Minimise(objective, start);
        if (end.Converged) start = end.X;
        return end.Value;
    }

    // A variance that starts at 0 would stay there: it is a flat spot of the factor.
    private static double Away(double value, (int I, int J) cell) => cell.I == cell.J && Math.Abs(value) < 1e-3 ? 1e-3 : value;

    private ((int I, int J)[] Cells, int[] Order, double[] Factor) Start(int[] first)
    {
        var q = state.Q;
        int[] order = [.. first, .. Enumerable.Range(0, q).Except(first)];
        var d = state.Random.ToEffectCovariance(state.Map.Covariance(state.Eta));
        var factor = new double[q * q];
        for (var i = 0; i < q; i++)
            for (var j = 0; j <= i; j++) factor[(i * q) + j] = (state.Variance * d[(order[i] * q) + order[j]]) + (i == j ? 1e-12 + (1e-9 * state.Variance * d[(order[i] * q) + order[i]]) : 0);
        Cholesky.Factor(factor, q);
        return (RandomPairs.All(q).Where(c => state.Design.IsCorrelated || c.I == c.J).ToArray(), order, factor);
    }

    // Cells of the factor in the held-first order become moves of the factor the criterion knows.
    private FactorMap Map(int[] order, (int I, int J, double Value)[] held, (int I, int J, double Value)[][] moves)
    {
        var q = state.Q;
        return new(q, Placed(held), [.. moves.Select(Placed)]);

        double[] Placed((int I, int J, double Value)[] cells)
        {
            var m = new double[q * q];
            foreach (var (i, j, value) in cells) m[(order[i] * q) + j] += value;
            return state.Random.Times(m);
        }
    }
}
