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

    /// <summary>Per cent.</summary>
    public static string Percent(double percent) => percent.ToString("0.#", CultureInfo.InvariantCulture) + " %";
}
