using System.Globalization;
using Analytics.Quantities;

namespace Analytics.Planning.Loads;

/// <summary>Words of loads.</summary>
internal static class LoadWords
{
    /// <summary>An identifier in words.</summary>
    public static string Lift(string id) => id.Replace('_', ' ');

    /// <summary>A mass in the unit the weights are marked in.</summary>
    public static string Of(Mass mass, string unit) => mass.ToString(unit == "lb" ? "lb|0.##" : "kg|0.##", CultureInfo.InvariantCulture);

    /// <summary>Why there is no load where even the lightest is too much. What stands before the colon stands in a cell: it must not read like a load.</summary>
    public static string TooHeavy(string implement, Mass lightest, string unit)
        => $"{(implement == LoadableWeights.Barbell ? "bar" : "lightest " + Lift(implement))} too heavy: {Of(lightest, unit)} is the least there is, more than the per cent; take a lighter weight or another exercise";

    /// <summary>Per cent.</summary>
    public static string Percent(double percent) => percent.ToString("0.#", CultureInfo.InvariantCulture) + " %";
}
