using System.Globalization;

namespace Analytics.Quantities;

/// <summary>Text of a quantity: number, space, unit; invariant unless a culture is asked for.</summary>
internal static class QuantityText
{
    // Seven digits hide the noise of a unit conversion (225 lb stays 225) and show every digit a coach can measure.
    private const string DefaultNumber = "G7";

    public static string Format(double si, IReadOnlyList<Unit> units, string? format, IFormatProvider? provider)
    {
        // "lb" or "lb|0.0": a unit symbol, then an optional number format.
        var parts = (format ?? string.Empty).Split('|', 2);
        var unit = parts[0].Length is 0 || parts[0] == "G" ? units[0] : Find(parts[0], units);
        var number = unit.NumberOf(si).ToString(parts.Length > 1 ? parts[1] : DefaultNumber, provider ?? CultureInfo.InvariantCulture);
        return unit.Symbol == "°" ? number + unit.Symbol : $"{number} {unit.Symbol}";
    }

    private static Unit Find(string symbol, IReadOnlyList<Unit> units)
        => units.FirstOrDefault(u => u.Symbol == symbol)
           ?? throw new FormatException($"'{symbol}' is not a unit of this quantity; known: {string.Join(", ", units.Select(u => u.Symbol))}.");
}
