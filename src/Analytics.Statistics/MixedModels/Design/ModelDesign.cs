using System.Collections.Immutable;
using Analytics.Statistics.MixedModels.Design;

namespace Analytics.Statistics.MixedModels;

/// <summary>
/// What a mixed model is fitted to: one response a row, the group (athlete) of each row, the fixed effects everybody shares and the random
/// effects in which groups differ. Immutable; every call returns a new design. Rows may be unbalanced and in any order.
/// </summary>
public sealed class ModelDesign
{
    /// <summary>Name of the column of ones, in the fixed and in the random part.</summary>
    public const string InterceptName = "(Intercept)";

    private readonly ImmutableList<DesignTerm> _terms;
    private readonly ImmutableList<(string Name, double[] Values)> _random;
    private readonly double[]? _roots;

    private ModelDesign(ModelDesign from, ImmutableList<DesignTerm> terms, ImmutableList<(string, double[])> random, bool correlated)
        : this(from.Observed, from.Groups, from.ResponseName, from.GroupName, terms, random, correlated) => _roots = from._roots;

    private ModelDesign(ModelDesign from, double[] roots) : this(from, from._terms, from._random, from.IsCorrelated) => _roots = roots;

    private ModelDesign(
        double[] response, string[] groups, string responseName, string groupName,
        ImmutableList<DesignTerm> terms, ImmutableList<(string, double[])> random, bool correlated)
    {
        (Observed, Groups, ResponseName, GroupName) = (response, groups, responseName, groupName);
        (_terms, _random, IsCorrelated) = (terms, random, correlated);
    }

    /// <summary>What the response is called.</summary>
    public string ResponseName { get; }

    /// <summary>What a group is called, such as "athlete".</summary>
    public string GroupName { get; }

    /// <summary>Whether the random effects of a group may correlate.</summary>
    public bool IsCorrelated { get; }

    /// <summary>Rows.</summary>
    public int Rows => Observed.Length;

    /// <summary>Names of the columns of the fixed effects, in order.</summary>
    public IReadOnlyList<string> FixedNames => [.. _terms.SelectMany(t => t.ColumnNames)];

    /// <summary>Names of the random effects, in order; empty for a model without any.</summary>
    public IReadOnlyList<string> RandomNames => [.. _random.Select(r => r.Name)];

    /// <summary>The response as given.</summary>
    internal double[] Observed { get; }

    /// <summary>The response times the roots of the weights, as the columns are: then all residuals have one variance.</summary>
    internal double[] Response => ByRoot(Observed);

    /// <summary>Sum of the logarithms of the weights, 0 without any.</summary>
    internal double LogWeights => _roots?.Sum(r => 2 * Math.Log(r)) ?? 0;

    internal string[] Groups { get; }

    internal IReadOnlyList<double[]> FixedColumns => [.. _terms.SelectMany(t => t.Columns).Select(ByRoot)];

    internal IReadOnlyList<double[]> RandomColumns => [.. _random.Select(r => ByRoot(r.Values))];

    private bool HasIntercept => _terms.Any(t => t is InterceptTerm);

    /// <summary>A design with an intercept and no random effects yet.</summary>
    /// <param name="response">One finite number a row, in the unit of the data.</param>
    /// <param name="groups">The group of each row; not empty.</param>
    /// <param name="responseName">What the response is called.</param>
    /// <param name="groupName">What a group is called.</param>
    /// <exception cref="ArgumentException">No rows, lists of different length, a value that is not finite or a group without a name.</exception>
    public static ModelDesign Of(IReadOnlyList<double> response, IReadOnlyList<string> groups, string responseName = "response", string groupName = "group")
    {
        Require.Sample(response, 1, nameof(response));
        var labels = DesignChecks.Labels(groups, response.Count, nameof(groups));
        return new([.. response], labels, responseName, groupName, [new InterceptTerm(response.Count)], [], true);
    }

    /// <summary>Adds a number as a fixed effect.</summary>
    /// <param name="name">Its name, not used yet.</param>
    /// <param name="values">One finite number a row.</param>
    public ModelDesign Covariate(string name, IReadOnlyList<double> values)
        => Add(new CovariateTerm(NewName(name), DesignChecks.Numbers(values, Rows, name)));

    /// <summary>Adds a label as a fixed effect: one column a level but the reference; all levels for the first factor of a design without intercept.</summary>
    /// <param name="name">Its name, not used yet.</param>
    /// <param name="values">One level a row.</param>
    /// <param name="reference">The level the others are compared with; null for the first by ordinal order.</param>
    public ModelDesign Factor(string name, IReadOnlyList<string> values, string? reference = null)
    {
        var labels = DesignChecks.Labels(values, Rows, NewName(name));
        var levels = labels.Distinct().Order(StringComparer.Ordinal).ToList();
        reference ??= levels[0];
        if (!levels.Contains(reference))
            throw new ArgumentException($"The reference '{reference}' of '{name}' is in no row; levels: {string.Join(", ", levels)}.", nameof(reference));
        var all = !HasIntercept && !_terms.Any(t => t is FactorTerm);
        return Add(new FactorTerm(name, labels, levels, [.. levels.Where(l => all || l != reference)]));
    }

    /// <summary>Adds the products of two terms that are in the design.</summary>
    /// <param name="first">Name of a covariate or factor.</param>
    /// <param name="second">Name of another.</param>
    public ModelDesign Interaction(string first, string second) => Add(new ProductTerm(Term(first), Term(second)));

    /// <summary>Takes the intercept out. Call it before the first factor, which then shows all its levels.</summary>
    public ModelDesign WithoutIntercept()
    {
        if (_terms.Any(t => t is FactorTerm))
            throw new InvalidOperationException($"{nameof(WithoutIntercept)} must come before the first factor: it decides which levels the factor shows.");
        return new(this, _terms.RemoveAll(t => t is InterceptTerm), _random, IsCorrelated);
    }

    /// <summary>Lets the groups differ in level.</summary>
    public ModelDesign RandomIntercept() => AddRandom(InterceptName, [.. Enumerable.Repeat(1.0, Rows)]);

    /// <summary>Lets the groups differ in their slope on a covariate of the design.</summary>
    /// <param name="covariate">Its name.</param>
    public ModelDesign RandomSlope(string covariate)
        => Term(covariate) is CovariateTerm term
            ? AddRandom(covariate, term.Values)
            : throw new ArgumentException($"'{covariate}' is a factor; a random slope needs a covariate.", nameof(covariate));

    /// <summary>Lets the groups differ in their slope on a covariate that is not among the fixed effects.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="values">One finite number a row.</param>
    public ModelDesign RandomSlope(string name, IReadOnlyList<double> values) => AddRandom(name, DesignChecks.Numbers(values, Rows, name));

    /// <summary>Lets rows be known unequally well: the residual variance of a row is σ² over its weight. Predictions and differences speak of true levels as before.</summary>
    /// <param name="weights">One positive, finite number a row; 1 for a row whose residual variance is σ².</param>
    public ModelDesign Weighted(IReadOnlyList<double> weights)
    {
        var roots = DesignChecks.Numbers(weights, Rows, nameof(weights));
        foreach (var weight in roots) Require.Positive(weight, nameof(weights));
        return new(this, Array.ConvertAll(roots, Math.Sqrt));
    }

    /// <summary>Holds the correlations between random effects at 0. Then it matters where a covariate has its zero.</summary>
    public ModelDesign Uncorrelated() => new(this, _terms, _random, false);

    /// <summary>Fits the model.</summary>
    /// <param name="criterion">REML, the default, for variances and for tests of fixed effects; ML to compare different fixed effects.</param>
    public MixedFit Fit(LikelihoodCriterion criterion = LikelihoodCriterion.Reml) => MixedFit.Of(this, criterion);

    /// <summary>The row of the fixed effects at a point.</summary>
    internal double[] FixedRow(ModelPoint point)
    {
        ArgumentNullException.ThrowIfNull(point);
        return [.. _terms.SelectMany(t => t.At(point))];
    }

    /// <summary>The row of the random effects at a point.</summary>
    internal double[] RandomRow(ModelPoint point) => [.. _random.Select(r => r.Name == InterceptName ? 1 : point.Number(r.Name))];

    /// <summary>A value of a row of the weighted data in the unit of the response.</summary>
    internal double Unweighted(double value, int row) => _roots is null ? value : value / _roots[row];

    private double[] ByRoot(double[] column) => _roots is null ? column : [.. column.Zip(_roots, (v, r) => v * r)];

    private ModelDesign Add(DesignTerm term) => new(this, _terms.Add(term), _random, IsCorrelated);

    private ModelDesign AddRandom(string name, double[] values)
    {
        if (_random.Any(r => r.Name == name)) throw new ArgumentException($"'{name}' is among the random effects already.", nameof(name));
        if (_random.Count == 3) throw new ArgumentException($"'{name}' would be the fourth random effect; at most 3 are possible.", nameof(name));
        return new(this, _terms, _random.Add((name, values)), IsCorrelated);
    }

    private DesignTerm Term(string name)
        => _terms.FirstOrDefault(t => t.Name == name)
            ?? throw new ArgumentException($"'{name}' is not in the design; there are: {string.Join(", ", _terms.Select(t => t.Name))}.", nameof(name));

    private string NewName(string name)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        return _terms.Any(t => t.Name == name) ? throw new ArgumentException($"'{name}' is in the design already.", nameof(name)) : name;
    }
}
