using Analytics.Statistics.MixedModels.Inference;

namespace Analytics.Statistics.MixedModels;

/// <summary>
/// What a model says of some of its groups (athletes) themselves, and of their mean, where a fixed effect speaks of the population they come from. Their
/// spread is no error of their own mean: only the residual is, and what is not known of those who missed a day [henderson1975].
/// </summary>
/// <remarks>
/// Of a mean the error is w'(β̂ − β) with w = x − mean(Bᵢ'z), Bᵢ = DZᵢ'Vᵢ⁻¹Xᵢ, plus that of the best predictors with known β, which are independent of it and
/// of each other. Variances are taken as known; degrees of freedom are those of the residual variance, which carries nearly all of the error.
/// </remarks>
public sealed class OwnLevels
{
    private readonly MixedModel _model;
    private readonly List<double[]> _effects = [];
    private readonly double[] _byFixed;
    private readonly double[] _conditional;

    private OwnLevels(MixedModel model, IReadOnlyList<string> groups)
    {
        var (state, q, p) = (model.State, model.State.Q, model.State.P);
        (_model, Groups, _byFixed, _conditional) = (model, groups, new double[q * p], new double[q * q]);
        var (predictor, numbers) = (new GroupPredictor(state), state.GroupNames.Select((name, i) => (name, i)).ToDictionary(x => x.name, x => x.i, StringComparer.Ordinal));
        foreach (var group in groups)
        {
            if (!numbers.TryGetValue(group, out var number))
                throw new ArgumentException($"'{group}' is not among the {model.Groups} {model.Design.GroupName}s of the model.", nameof(groups));
            var (effects, byFixed, conditional) = predictor.Of(number);
            _effects.Add(effects);
            for (var i = 0; i < _byFixed.Length; i++) _byFixed[i] += byFixed[i] / groups.Count;
            for (var i = 0; i < _conditional.Length; i++) _conditional[i] += conditional[i] / groups.Count / groups.Count;
        }

        // The last variance parameter is the logarithm of the residual variance, so df = 2 σ⁴/Var(σ̂²) = 1/(H⁻¹)ₗₗ.
        var last = new double[state.Map.Count + 1];
        last[^1] = 1;
        DegreesOfFreedom = 1 / model.Contrasts.Information.Form(last);
    }

    /// <summary>The groups, in the order of the lists below.</summary>
    public IReadOnlyList<string> Groups { get; }

    /// <summary>Degrees of freedom of the residual variance, 2 σ⁴/Var(σ̂²).</summary>
    public double DegreesOfFreedom { get; }

    /// <summary>Prepares the groups.</summary>
    /// <param name="model">A model with random effects.</param>
    /// <param name="groups">Names of at least one of its groups, each once.</param>
    /// <exception cref="ArgumentException">No group, one twice, or one that is not in the model.</exception>
    public static OwnLevels Of(MixedModel model, IReadOnlyList<string> groups)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(groups);
        if (model.State.Q == 0) throw new ArgumentException("The model has no random effects, so its groups have no levels of their own.", nameof(model));
        if (groups.Count == 0) throw new ArgumentException("No group is named; name at least one.", nameof(groups));
        if (groups.Distinct(StringComparer.Ordinal).Count() < groups.Count) throw new ArgumentException("A group is named twice; name each once.", nameof(groups));
        return new(model, groups);
    }

    /// <summary>Predicted true level of every group at a point, in the unit of the response.</summary>
    /// <param name="point">A value for every term of the design.</param>
    public IReadOnlyList<double> At(ModelPoint point)
    {
        var (fixedPart, z) = (FixedPart(_model.Design.FixedRow(point)), RandomRow(point));
        return [.. _effects.Select(b => fixedPart + (_model.State.Scale * Dot(z, b)))];
    }

    /// <summary>Mean true level of these groups at a point; never an interval of where another group of the population may lie.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="point">A value for every term of the design.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    public OwnMean MeanAt(string name, ModelPoint point, double level = 0.95)
        => Of(name, _model.Design.FixedRow(point), RandomRow(point), level);

    /// <summary>Mean true change of these groups from one point to another.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="to">The point whose mean counts positive.</param>
    /// <param name="from">The point it is compared with.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    public OwnMean Difference(string name, ModelPoint to, ModelPoint from, double level = 0.95)
        => Of(name, Less(_model.Design.FixedRow(to), _model.Design.FixedRow(from)), Less(RandomRow(to), RandomRow(from)), level);

    private OwnMean Of(string name, double[] x, double[] z, double level)
    {
        Require.Share(level, nameof(level));
        var state = _model.State;
        var value = FixedPart(x) + (state.Scale * _effects.Average(b => Dot(z, b)));
        var white = state.White(x);
        for (var k = 0; k < z.Length; k++)
            for (var j = 0; j < state.P; j++) white[j] -= z[k] * _byFixed[(k * state.P) + j];
        var variance = ContrastCalculator.Dot(white, white) + ContrastCalculator.Form(_conditional, z);
        var se = state.Scale * Math.Sqrt(state.Variance * variance);
        return new(name, value, se, DegreesOfFreedom, ContrastCalculator.Around(value, se, DegreesOfFreedom, level), Groups.Count);
    }

    private double FixedPart(double[] x) => Dot(x, (double[])_model.Coefficients);

    private double[] RandomRow(ModelPoint point)
    {
        var z = _model.Design.RandomRow(point);
        _model.State.Random.ToRow(z);
        return z;
    }

    private static double[] Less(double[] a, double[] b) => [.. a.Zip(b, (x, y) => x - y)];

    private static double Dot(double[] a, double[] b) => ContrastCalculator.Dot(a, b);
}
