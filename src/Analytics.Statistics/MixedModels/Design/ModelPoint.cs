using System.Collections.Immutable;

namespace Analytics.Statistics.MixedModels;

/// <summary>A point a fitted model is asked about: a number for every covariate and a level for every factor. Immutable.</summary>
public sealed class ModelPoint
{
    private readonly ImmutableDictionary<string, double> _numbers;
    private readonly ImmutableDictionary<string, string> _levels;

    /// <summary>A point with nothing set yet.</summary>
    public ModelPoint() : this(ImmutableDictionary<string, double>.Empty, ImmutableDictionary<string, string>.Empty)
    {
    }

    private ModelPoint(ImmutableDictionary<string, double> numbers, ImmutableDictionary<string, string> levels) => (_numbers, _levels) = (numbers, levels);

    /// <summary>The point with a covariate set.</summary>
    /// <param name="covariate">Its name.</param>
    /// <param name="value">A finite number.</param>
    public ModelPoint With(string covariate, double value) => new(_numbers.SetItem(covariate, Require.Finite(value, covariate)), _levels);

    /// <summary>The point with a factor set.</summary>
    /// <param name="factor">Its name.</param>
    /// <param name="level">One of its levels.</param>
    public ModelPoint With(string factor, string level) => new(_numbers, _levels.SetItem(factor, level));

    internal double Number(string name) => _numbers.TryGetValue(name, out var value) ? value : throw Missing(name, "covariate", "a number");

    internal string Level(string name) => _levels.TryGetValue(name, out var level) ? level : throw Missing(name, "factor", "a level");

    private static ArgumentException Missing(string name, string kind, string what)
        => new($"The point has no value for the {kind} '{name}'; add {what} with {nameof(With)}(\"{name}\", …).");
}
