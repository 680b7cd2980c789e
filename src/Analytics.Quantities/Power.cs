using System.Globalization;
using System.Numerics;

namespace Analytics.Quantities;

/// <summary>Power, held in watts.</summary>
public readonly record struct Power : IQuantity<Power>, IUnaryNegationOperators<Power, Power>
{
    private static readonly Unit InWatts = new("W", 1);
    private static readonly Unit InKilowatts = new("kW", 1e3);
    private static readonly Unit InHorsepower = new("hp", 550 * UnitFactors.MetresPerFoot * UnitFactors.KilogramsPerPound * UnitFactors.StandardGravity);

    private Power(double si) => Si = si;

    /// <inheritdoc/>
    public double Si { get; }

    /// <inheritdoc/>
    public string SiUnit => InWatts.Symbol;

    /// <inheritdoc/>
    public static Power Zero => default;

    /// <inheritdoc/>
    public static IReadOnlyList<Unit> Units { get; } = [InWatts, InKilowatts, InHorsepower];

    /// <inheritdoc/>
    public static Power FromSi(double si) => new(Guard.Finite(si, InWatts, "power"));

    /// <summary>A power from watts.</summary>
    /// <param name="watts">Finite; in W.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Power FromWatts(double watts) => new(Guard.Finite(watts, InWatts, "power"));

    /// <summary>A power from kilowatts.</summary>
    /// <param name="kilowatts">Finite; in kW.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Power FromKilowatts(double kilowatts) => new(Guard.Finite(kilowatts, InKilowatts, "power"));

    /// <summary>A power from horsepower.</summary>
    /// <param name="horsepower">Finite; in hp.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Power FromHorsepower(double horsepower) => new(Guard.Finite(horsepower, InHorsepower, "power"));

    /// <summary>The power in watts (W).</summary>
    public double Watts => Si;

    /// <summary>The power in kilowatts (kW).</summary>
    public double Kilowatts => InKilowatts.NumberOf(Si);

    /// <summary>The power in horsepower (hp).</summary>
    public double Horsepower => InHorsepower.NumberOf(Si);

    /// <summary>Sum.</summary>
    public static Power operator +(Power left, Power right) => FromSi(left.Si + right.Si);

    /// <summary>Difference.</summary>
    public static Power operator -(Power left, Power right) => FromSi(left.Si - right.Si);

    /// <summary>Opposite direction.</summary>
    public static Power operator -(Power value) => FromSi(-value.Si);

    /// <summary>Multiple.</summary>
    public static Power operator *(Power left, double right) => FromSi(left.Si * right);

    /// <summary>Multiple.</summary>
    public static Power operator *(double left, Power right) => right * left;

    /// <summary>Fraction.</summary>
    public static Power operator /(Power left, double right) => FromSi(left.Si / right);

    /// <summary>Ratio of two of the same kind, without unit; refused when the divisor is 0.</summary>
    public static double operator /(Power left, Power right) => Guard.Ratio(left.Si, right.Si, "power");

    /// <summary>Power per body mass.</summary>
    public static PowerPerMass operator /(Power left, Mass right) => PowerPerMass.FromSi(left.Si / right.Si);

    /// <summary>Energy from power times duration.</summary>
    public static Energy operator *(Power left, Duration right) => Energy.FromSi(left.Si * right.Si);

    /// <summary>Less.</summary>
    public static bool operator <(Power left, Power right) => left.Si < right.Si;

    /// <summary>Greater.</summary>
    public static bool operator >(Power left, Power right) => left.Si > right.Si;

    /// <summary>Less or equal.</summary>
    public static bool operator <=(Power left, Power right) => left.Si <= right.Si;

    /// <summary>Greater or equal.</summary>
    public static bool operator >=(Power left, Power right) => left.Si >= right.Si;

    /// <inheritdoc/>
    public int CompareTo(Power other) => Si.CompareTo(other.Si);

    /// <summary>Number and SI unit, invariant culture.</summary>
    public override string ToString() => ToString(null, CultureInfo.InvariantCulture);

    /// <summary>Number and unit; <paramref name="format"/> is a unit symbol, then an optional number format after a bar: <c>"hp|0.0"</c>.</summary>
    /// <exception cref="FormatException">Not a unit of this quantity.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => QuantityText.Format(Si, Units, format, formatProvider);
}
