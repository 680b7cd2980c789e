using System.Globalization;

namespace Analytics.Quantities;

/// <summary>Text of a quantity: number, space, unit; invariant unless a culture is asked for.</summary>
internal static class QuantityText
{
    public static string Format(double si, IReadOnlyList<Unit> units, string? format, IFormatProvider? provider)
    {
        // "lb" or "lb|0.0": a unit symbol, then an optional number format.
        var parts = (format ?? string.Empty).Split('|', 2);
        var unit = parts[0].Length is 0 || parts[0] == "G" ? units[0] : Find(parts[0], units);
        var number = (si / unit.ToSi).ToString(parts.Length > 1 ? parts[1] : "0.######", provider ?? CultureInfo.InvariantCulture);
        return $"{number} {unit.Symbol}";
    }

    private static Unit Find(string symbol, IReadOnlyList<Unit> units)
        => units.FirstOrDefault(u => u.Symbol == symbol)
           ?? throw new FormatException($"'{symbol}' is not a unit of this quantity; known: {string.Join(", ", units.Select(u => u.Symbol))}.");
}
