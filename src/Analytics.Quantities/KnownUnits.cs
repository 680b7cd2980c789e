namespace Analytics.Quantities;

/// <summary>The unit symbols that larger units are written with.</summary>
internal static class KnownUnits
{
    private static readonly Dictionary<string, (double Factor, Dimension Dimension)> s_all = Make();

    public static IEnumerable<string> Symbols => s_all.Keys;

    public static (double Factor, Dimension Dimension)? Find(string symbol) => s_all.TryGetValue(symbol, out var unit) ? unit : null;

    private static Dictionary<string, (double, Dimension)> Make()
    {
        var all = new Dictionary<string, (double, Dimension)>(StringComparer.Ordinal) { ["1"] = (1, Dimension.None), ["%"] = (0.01, Dimension.None) };
        Add(all, Dimensions.Mass, Mass.Units);
        Add(all, Dimensions.Length, Length.Units);
        Add(all, Dimensions.Duration, Duration.Units);
        Add(all, Dimensions.Angle, Angle.Units);
        Add(all, Dimensions.Speed, Speed.Units);
        Add(all, Dimensions.Acceleration, Acceleration.Units);
        Add(all, Dimensions.Force, Force.Units);
        Add(all, Dimensions.Energy, Energy.Units);
        Add(all, Dimensions.Power, Power.Units);
        Add(all, Dimensions.Frequency, Frequency.Units);
        all["deg"] = all["°"];
        return all;
    }

    // A symbol that is itself written out of others, such as m/s, is read by its parts.
    private static void Add(Dictionary<string, (double, Dimension)> all, Dimension dimension, IReadOnlyList<Unit> units)
    {
        foreach (var unit in units)
            if (unit.Symbol.AsSpan().IndexOfAny("·/²") < 0) all[unit.Symbol] = (unit.ToSi, dimension);
    }
}
