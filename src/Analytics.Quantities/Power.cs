using System.Globalization;

namespace Analytics.Quantities;

/// <summary>Power, held in watts.</summary>
public readonly record struct Power : IQuantity<Power>
{
    private Power(double si) => Si = si;

    /// <inheritdoc/>
    public double Si { get; }

    /// <inheritdoc/>
    public string SiUnit => "W";

    /// <inheritdoc/>
    public static Power Zero => default;

    /// <inheritdoc/>
    public static IReadOnlyList<Unit> Units { get; } =
    [
        new("W", 1),
        new("kW", 1e3),
        new("hp", 550 * UnitFactors.MetresPerFoot * UnitFactors.KilogramsPerPound * UnitFactors.StandardGravity),
    ];

    /// <inheritdoc/>
    public static Power FromSi(double si) => new(Guard.Finite(si, "power", "W"));

    /// <summary>Makes a power from watts.</summary>
    /// <param name="watts">Finite; in W.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Power FromWatts(double watts) => FromSi(watts);

    /// <summary>Makes a power from kilowatts.</summary>
    /// <param name="kilowatts">Finite; in kW.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Power FromKilowatts(double kilowatts) => FromSi(Guard.Finite(kilowatts, "power", "kW") * 1e3);

    /// <summary>Makes a power from horsepower.</summary>
    /// <param name="horsepower">Finite; in hp.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Power FromHorsepower(double horsepower) => FromSi(Guard.Finite(horsepower, "power", "hp") * (550 * UnitFactors.MetresPerFoot * UnitFactors.KilogramsPerPound * UnitFactors.StandardGravity));

    /// <summary>The power in watts (W).</summary>
    public double Watts => Si;

    /// <summary>The power in kilowatts (kW).</summary>
    public double Kilowatts => Si / 1e3;

    /// <summary>The power in horsepower (hp).</summary>
    public double Horsepower => Si / (550 * UnitFactors.MetresPerFoot * UnitFactors.KilogramsPerPound * UnitFactors.StandardGravity);

    /// <summary>Sum.</summary>
    public static Power operator +(Power left, Power right) => FromSi(left.Si + right.Si);

    /// <summary>Difference.</summary>
    public static Power operator -(Power left, Power right) => FromSi(left.Si - right.Si);

    /// <summary>Opposite direction.</summary>
    public static Power operator -(Power value) => FromSi(-value.Si);

    /// <summary>Multiple.</summary>
    public static Power operator *(Power left, double right) => FromSi(left.Si * right);

    /// <summary>Multiple.</summary>
    public static Power operator *(double left, Power right) => FromSi(left * right.Si);

    /// <summary>Fraction.</summary>
    public static Power operator /(Power left, double right) => FromSi(left.Si / right);

    /// <summary>Ratio of two of the same kind, without unit.</summary>
    public static double operator /(Power left, Power right) => left.Si / right.Si;

    /// <summary>Power per body mass.</summary>
    public static PowerPerMass operator /(Power left, Mass right) => PowerPerMass.FromWattsPerKilogram(left.Watts / right.Kilograms);

    /// <summary>Energy from power times duration.</summary>
    public static Energy operator *(Power left, Duration right) => Energy.FromJoules(left.Watts * right.Seconds);

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
    public string ToString(string? format, IFormatProvider? formatProvider) => QuantityText.Format(Si, Units, format, formatProvider);
}
