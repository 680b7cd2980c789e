using Analytics.Statistics.Fitting;
using Analytics.Statistics.MixedModels.Criterion;
using Analytics.Statistics.MixedModels.Inference;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.MixedModels;

/// <summary>
/// A fitted linear mixed model of one grouping factor, y = Xβ + Zb + e with b ~ N(0, D) in every group and independent errors e ~ N(0, σ²).
/// Units are those of the response. Sources: [lairdware1982; pinheirobates2000; bates2015].
/// </summary>
public sealed record MixedModel : Result
{
    private readonly Lazy<IReadOnlyList<FixedEffect>> _fixed;
    private readonly Lazy<IReadOnlyList<VarianceComponent>> _variances;
    private readonly Lazy<IReadOnlyList<GroupEffect>> _groups;

    internal MixedModel(FitState state)
    {
        State = state;
        Coefficients = state.FixedEffects();
        Contrasts = new(state, (double[])Coefficients);
        (RandomCovariance, Boundary) = BoundaryWords.Of(state);
        ResidualVariance = state.Variance * state.Scale * state.Scale;
        _fixed = new(() => FixedEffectsBy(DegreesOfFreedomMethod.Satterthwaite));
        _variances = new(() => VarianceIntervals.Of(this, 0.95));
        _groups = new(() => GroupEffects(state));
    }

    /// <summary>Which likelihood was made largest.</summary>
    public LikelihoodCriterion Criterion => State.Reml ? LikelihoodCriterion.Reml : LikelihoodCriterion.Ml;

    /// <summary>Rows.</summary>
    public int Rows => State.Rows;

    /// <summary>Groups.</summary>
    public int Groups => State.GroupNames.Count;

    /// <summary>Fixed effects β̂ in the order of <see cref="ModelDesign.FixedNames"/>.</summary>
    public IReadOnlyList<double> Coefficients { get; }

    /// <summary>Fixed effects with Satterthwaite degrees of freedom and 95 % intervals.</summary>
    public IReadOnlyList<FixedEffect> FixedEffects => _fixed.Value;

    /// <summary>Covariance of the fixed effects, variances taken as known.</summary>
    public SymmetricMatrix FixedCovariance => FixedEffectCovariance.Of(State);

    /// <summary>Residual variance σ², squared units.</summary>
    public double ResidualVariance { get; }

    /// <summary>Covariance D of the random effects, in the order of <see cref="ModelDesign.RandomNames"/>; null without random effects.</summary>
    public SymmetricMatrix? RandomCovariance { get; }

    /// <summary>Variances with approximate 95 % intervals of the standard deviations: the random effects in order, the residual last.</summary>
    public IReadOnlyList<VarianceComponent> Variances => _variances.Value;

    /// <summary>Random effects of every group, in order of first appearance; empty without random effects.</summary>
    public IReadOnlyList<GroupEffect> Effects => _groups.Value;

    /// <summary>What lies on the boundary, one sentence each; empty when nothing does.</summary>
    public IReadOnlyList<string> Boundary { get; }

    /// <summary>Minus twice the log-likelihood, restricted or full: the criterion.</summary>
    public double MinusTwoLogLikelihood => State.MinusTwoLogLikelihood;

    /// <summary>Log-likelihood.</summary>
    public double LogLikelihood => -MinusTwoLogLikelihood / 2;

    /// <summary>Parameters counted by AIC and BIC: fixed effects, variances, covariances.</summary>
    public int Parameters => State.P + State.Map.Count + 1;

    /// <summary>Akaike's criterion, −2 log L + 2 parameters.</summary>
    public double Aic => MinusTwoLogLikelihood + (2 * Parameters);

    /// <summary>Schwarz's criterion, −2 log L + ln(rows) parameters.</summary>
    public double Bic => MinusTwoLogLikelihood + (Math.Log(Rows) * Parameters);

    /// <summary>Steps of the search.</summary>
    public int Iterations => State.Iterations;

    /// <summary>The design that was fitted.</summary>
    public ModelDesign Design => State.Design;

    internal FitState State { get; }

    internal ContrastCalculator Contrasts { get; }

    /// <summary>Correlation of two random effects; null where one of them does not vary.</summary>
    /// <param name="first">Position of one, from 0.</param>
    /// <param name="second">Position of the other.</param>
    public double? RandomCorrelation(int first, int second)
    {
        var d = RandomCovariance ?? throw new InvalidOperationException("The model has no random effects.");
        return d[first, first] > 0 && d[second, second] > 0 ? Math.Clamp(d.Correlation(first, second), -1, 1) : null;
    }

    /// <summary>All fixed effects.</summary>
    /// <param name="method">How degrees of freedom are found.</param>
    /// <param name="level">Coverage of the intervals, above 0 and below 1.</param>
    public IReadOnlyList<FixedEffect> FixedEffectsBy(DegreesOfFreedomMethod method, double level = 0.95)
        => [.. Design.FixedNames.Select((name, i) => Contrast(name, [.. Enumerable.Range(0, State.P).Select(j => i == j ? 1.0 : 0)], method, level))];

    /// <summary>A weighted sum of the fixed effects, such as the mean of a group on a day or a difference of two.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="weights">One finite weight a fixed effect, not all 0.</param>
    /// <param name="method">How degrees of freedom are found.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    public FixedEffect Contrast(
        string name, IReadOnlyList<double> weights, DegreesOfFreedomMethod method = DegreesOfFreedomMethod.Satterthwaite, double level = 0.95)
    {
        Require.Sample(weights, State.P, nameof(weights));
        Require.Share(level, nameof(level));
        if (weights.Count != State.P)
            throw new ArgumentException($"{weights.Count} weights for {State.P} fixed effects ({string.Join(", ", Design.FixedNames)}); one each is needed.", nameof(weights));
        if (weights.All(w => w == 0)) throw new ArgumentException($"All weights of '{name}' are 0; that is 0 without any doubt.", nameof(weights));
        if (method == DegreesOfFreedomMethod.KenwardRoger && !State.Reml)
            throw new InvalidOperationException("Kenward-Roger degrees of freedom need a REML fit; this is an ML fit.");
        return Contrasts.Of(name, weights, method, level);
    }

    /// <summary>The mean of all groups at a point.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="point">A value for every term of the fixed effects.</param>
    /// <param name="level">Coverage of the interval.</param>
    public FixedEffect MeanAt(string name, ModelPoint point, double level = 0.95) => Contrast(name, Design.FixedRow(point), level: level);

    /// <summary>Difference of the means at two points.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="to">The point whose mean counts positive.</param>
    /// <param name="from">The point it is compared with.</param>
    /// <param name="level">Coverage of the interval.</param>
    public FixedEffect Difference(string name, ModelPoint to, ModelPoint from, double level = 0.95)
        => Contrast(name, [.. Design.FixedRow(to).Zip(Design.FixedRow(from), (a, b) => a - b)], level: level);

    /// <inheritdoc/>
    public override ResultSheet Sheet() => MixedModelSheet.Of(this);

    private static IReadOnlyList<GroupEffect> GroupEffects(FitState state)
    {
        if (state.Q == 0) return [];
        var (predictor, sizes) = (new GroupPredictor(state), new int[state.GroupNames.Count]);
        foreach (var g in state.GroupOfRow) sizes[g]++;
        return [.. Enumerable.Range(0, sizes.Length).Select(g => predictor.Describe(g, sizes[g]))];
    }
}
