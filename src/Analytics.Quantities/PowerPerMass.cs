using System.Globalization;
using System.Numerics;

namespace Analytics.Quantities;

/// <summary>Power per body mass, held in watts per kilogram.</summary>
public readonly record struct PowerPerMass : IQuantity<PowerPerMass>, IUnaryNegationOperators<PowerPerMass, PowerPerMass>
{
    private static readonly Unit InWattsPerKilogram = new("W/kg", 1);

    private PowerPerMass(double si) => Si = si;

    /// <inheritdoc/>
    public double Si { get; }

    /// <inheritdoc/>
    public string SiUnit => InWattsPerKilogram.Symbol;

    /// <inheritdoc/>
    public static PowerPerMass Zero => default;

    /// <inheritdoc/>
    public static IReadOnlyList<Unit> Units { get; } = [InWattsPerKilogram];

    /// <inheritdoc/>
    public static PowerPerMass FromSi(double si) => new(Guard.Finite(si, InWattsPerKilogram, "power per body mass"));

    /// <summary>A power per body mass from watts per kilogram.</summary>
    /// <param name="wattsPerKilogram">Finite; in W/kg.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static PowerPerMass FromWattsPerKilogram(double wattsPerKilogram) => new(Guard.Finite(wattsPerKilogram, InWattsPerKilogram, "power per body mass"));

    /// <summary>The power per body mass in watts per kilogram (W/kg).</summary>
    public double WattsPerKilogram => Si;

    /// <summary>Sum.</summary>
    public static PowerPerMass operator +(PowerPerMass left, PowerPerMass right) => FromSi(left.Si + right.Si);

    /// <summary>Difference.</summary>
    public static PowerPerMass operator -(PowerPerMass left, PowerPerMass right) => FromSi(left.Si - right.Si);

    /// <summary>Opposite direction.</summary>
    public static PowerPerMass operator -(PowerPerMass value) => FromSi(-value.Si);

    /// <summary>Multiple.</summary>
    public static PowerPerMass operator *(PowerPerMass left, double right) => FromSi(left.Si * right);

    /// <summary>Multiple.</summary>
    public static PowerPerMass operator *(double left, PowerPerMass right) => right * left;

    /// <summary>Fraction.</summary>
    public static PowerPerMass operator /(PowerPerMass left, double right) => FromSi(left.Si / right);

    /// <summary>Ratio of two of the same kind, without unit; refused when the divisor is 0.</summary>
    public static double operator /(PowerPerMass left, PowerPerMass right) => Guard.Ratio(left.Si, right.Si, "power per body mass");

    /// <summary>Power from power per body mass times mass.</summary>
    public static Power operator *(PowerPerMass left, Mass right) => Power.FromSi(left.Si * right.Si);

    /// <summary>Less.</summary>
    public static bool operator <(PowerPerMass left, PowerPerMass right) => left.Si < right.Si;

    /// <summary>Greater.</summary>
    public static bool operator >(PowerPerMass left, PowerPerMass right) => left.Si > right.Si;

    /// <summary>Less or equal.</summary>
    public static bool operator <=(PowerPerMass left, PowerPerMass right) => left.Si <= right.Si;

    /// <summary>Greater or equal.</summary>
    public static bool operator >=(PowerPerMass left, PowerPerMass right) => left.Si >= right.Si;

    /// <inheritdoc/>
    public int CompareTo(PowerPerMass other) => Si.CompareTo(other.Si);

    /// <summary>Number and SI unit, invariant culture.</summary>
    public override string ToString() => ToString(null, CultureInfo.InvariantCulture);

    /// <summary>Number and unit; <paramref name="format"/> is a unit symbol, then an optional number format after a bar: <c>"W/kg|0.0"</c>.</summary>
    /// <exception cref="FormatException">Not a unit of this quantity.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => QuantityText.Format(Si, Units, format, formatProvider);
}
