using Analytics.Quantities;

namespace Analytics.Planning.Rooms;

/// <summary>A plate that goes on a bar in pairs.</summary>
/// <param name="Weight">Of one plate.</param>
/// <param name="PairsPerStation">Pairs at one bar, 1 or more.</param>
public sealed record PlatePair(Mass Weight, int PairsPerStation);

/// <summary>Bars, plates and other weights in the rooms.</summary>
public sealed record WeightStock
{
    /// <summary>The bar for barbell lifts; null when there is none.</summary>
    public Mass? Bar { get; init; }

    /// <summary>Plates, heaviest first.</summary>
    public IReadOnlyList<PlatePair> Plates { get; init; } = [];

    /// <summary>Single weights by implement, lightest first: dumbbells (one hand), medicine balls, kettlebells, sled plates.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<Mass>> Singles { get; init; } = new Dictionary<string, IReadOnlyList<Mass>>();

    /// <summary>Unit they are marked in: <c>lb</c> or <c>kg</c>.</summary>
    public string Unit { get; init; } = "lb";
}
