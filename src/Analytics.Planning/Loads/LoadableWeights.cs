using System.Runtime.CompilerServices;
using Analytics.Planning.Rooms;
using Analytics.Quantities;

namespace Analytics.Planning.Loads;

/// <summary>Pairs of one plate on a bar.</summary>
/// <param name="Weight">Of one plate.</param>
/// <param name="Pairs">Pairs, 1 or more.</param>
public sealed record PlateCount(Mass Weight, int Pairs);

/// <summary>The loads that can really be put on: what bar and plates add up to, or the single weights of an implement.</summary>
public sealed class LoadableWeights
{
    /// <summary>The implement whose load is bar and plates.</summary>
    public const string Barbell = "barbell";

    private static readonly ConditionalWeakTable<WeightStock, Dictionary<string, LoadableWeights>> s_known = [];

    private readonly List<long> _sums;
    private readonly Dictionary<long, IReadOnlyList<PlateCount>> _plates;

    private LoadableWeights(string unit, IReadOnlyDictionary<long, IReadOnlyList<PlateCount>> loads, string? problem)
    {
        _plates = new(loads);
        _sums = [.. _plates.Keys.Order()];
        All = [.. _sums.Select(s => ExactMass.ToMass(s, unit))];
        Problem = problem;
    }

    /// <summary>Every load, lightest first, bar included; empty when there is nothing to load.</summary>
    public IReadOnlyList<Mass> All { get; }

    /// <summary>What is missing among the weights, in words; null when nothing is.</summary>
    public string? Problem { get; }

    /// <summary>The loads of an implement. Sums of more than 1000 kg are left away.</summary>
    /// <param name="stock">Bars, plates and other weights.</param>
    /// <param name="implement"><c>barbell</c>, or a key of <see cref="WeightStock.Singles"/>.</param>
    public static LoadableWeights Of(WeightStock stock, string implement)
    {
        ArgumentNullException.ThrowIfNull(stock);
        ArgumentNullException.ThrowIfNull(implement);
        // A squad asks for the same stock hundreds of times.
        var known = s_known.GetOrCreateValue(stock);
        lock (known)
        {
            if (!known.TryGetValue(implement, out var weights))
                known[implement] = weights = implement == Barbell ? OfBar(stock) : OfSingles(stock, implement);
            return weights;
        }
    }

    /// <summary>The heaviest load not above the one wanted; null when even the lightest is.</summary>
    /// <param name="wanted">Load wanted, bar included.</param>
    public Mass? Down(Mass wanted)
    {
        var at = _sums.BinarySearch(ExactMass.Of(wanted));
        if (at < 0) at = ~at - 1;
        return at < 0 ? null : All[at];
    }

    /// <summary>The plates of a load: the fewest, of these the heaviest, heaviest first; none for the empty bar and for a single weight; null when it cannot be put on.</summary>
    /// <param name="load">Load, bar included.</param>
    public IReadOnlyList<PlateCount>? PlatesFor(Mass load) => _plates.GetValueOrDefault(ExactMass.Of(load));

    private static LoadableWeights OfBar(WeightStock stock)
        => stock.Bar is not { } bar ? new(stock.Unit, new Dictionary<long, IReadOnlyList<PlateCount>>(), "no bar is listed among the weights")
            : new(stock.Unit, PlateSums.Of(bar, stock.Plates), stock.Plates.Count == 0 ? "no plates are listed among the weights" : null);

    private static LoadableWeights OfSingles(WeightStock stock, string implement)
    {
        var singles = stock.Singles.GetValueOrDefault(implement) ?? [];
        return new(stock.Unit, singles.Select(ExactMass.Of).Distinct().ToDictionary(u => u, _ => (IReadOnlyList<PlateCount>)[]),
            singles.Count == 0 ? $"no {implement.Replace('_', ' ')} is listed among the weights" : null);
    }
}
