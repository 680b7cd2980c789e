using System.Globalization;

namespace Analytics.Quantities;

/// <summary>Length, held in metres.</summary>
public readonly record struct Length : IQuantity<Length>
{
    private Length(double si) => Si = si;

    /// <inheritdoc/>
    public double Si { get; }

    /// <inheritdoc/>
    public string SiUnit => "m";

    /// <inheritdoc/>
    public static Length Zero => default;

    /// <inheritdoc/>
    public static IReadOnlyList<Unit> Units { get; } =
    [
        new("m", 1),
        new("cm", 1e-2),
        new("mm", 1e-3),
        new("km", 1e3),
        new("in", UnitFactors.MetresPerInch),
        new("ft", UnitFactors.MetresPerFoot),
        new("yd", UnitFactors.MetresPerYard),
        new("mi", UnitFactors.MetresPerMile),
    ];

    /// <inheritdoc/>
    public static Length FromSi(double si) => new(Guard.Finite(si, "length", "m"));

    /// <summary>Makes a length from metres.</summary>
    /// <param name="metres">Finite; in m.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Length FromMetres(double metres) => FromSi(metres);

    /// <summary>Makes a length from centimetres.</summary>
    /// <param name="centimetres">Finite; in cm.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Length FromCentimetres(double centimetres) => FromSi(Guard.Finite(centimetres, "length", "cm") * 1e-2);

    /// <summary>Makes a length from millimetres.</summary>
    /// <param name="millimetres">Finite; in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Length FromMillimetres(double millimetres) => FromSi(Guard.Finite(millimetres, "length", "mm") * 1e-3);

    /// <summary>Makes a length from kilometres.</summary>
    /// <param name="kilometres">Finite; in km.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Length FromKilometres(double kilometres) => FromSi(Guard.Finite(kilometres, "length", "km") * 1e3);

    /// <summary>Makes a length from inches.</summary>
    /// <param name="inches">Finite; in in.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Length FromInches(double inches) => FromSi(Guard.Finite(inches, "length", "in") * UnitFactors.MetresPerInch);

    /// <summary>Makes a length from feet.</summary>
    /// <param name="feet">Finite; in ft.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Length FromFeet(double feet) => FromSi(Guard.Finite(feet, "length", "ft") * UnitFactors.MetresPerFoot);

    /// <summary>Makes a length from yards.</summary>
    /// <param name="yards">Finite; in yd.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Length FromYards(double yards) => FromSi(Guard.Finite(yards, "length", "yd") * UnitFactors.MetresPerYard);

    /// <summary>Makes a length from miles.</summary>
    /// <param name="miles">Finite; in mi.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Length FromMiles(double miles) => FromSi(Guard.Finite(miles, "length", "mi") * UnitFactors.MetresPerMile);

    /// <summary>The length in metres (m).</summary>
    public double Metres => Si;

    /// <summary>The length in centimetres (cm).</summary>
    public double Centimetres => Si / 1e-2;

    /// <summary>The length in millimetres (mm).</summary>
    public double Millimetres => Si / 1e-3;

    /// <summary>The length in kilometres (km).</summary>
    public double Kilometres => Si / 1e3;

    /// <summary>The length in inches (in).</summary>
    public double Inches => Si / UnitFactors.MetresPerInch;

    /// <summary>The length in feet (ft).</summary>
    public double Feet => Si / UnitFactors.MetresPerFoot;

    /// <summary>The length in yards (yd).</summary>
    public double Yards => Si / UnitFactors.MetresPerYard;

    /// <summary>The length in miles (mi).</summary>
    public double Miles => Si / UnitFactors.MetresPerMile;

    /// <summary>Sum.</summary>
    public static Length operator +(Length left, Length right) => FromSi(left.Si + right.Si);

    /// <summary>Difference.</summary>
    public static Length operator -(Length left, Length right) => FromSi(left.Si - right.Si);

    /// <summary>Opposite direction.</summary>
    public static Length operator -(Length value) => FromSi(-value.Si);

    /// <summary>Multiple.</summary>
    public static Length operator *(Length left, double right) => FromSi(left.Si * right);

    /// <summary>Multiple.</summary>
    public static Length operator *(double left, Length right) => FromSi(left * right.Si);

    /// <summary>Fraction.</summary>
    public static Length operator /(Length left, double right) => FromSi(left.Si / right);

    /// <summary>Ratio of two of the same kind, without unit.</summary>
    public static double operator /(Length left, Length right) => left.Si / right.Si;

    /// <summary>Speed from length over duration.</summary>
    public static Speed operator /(Length left, Duration right) => Speed.FromMetresPerSecond(left.Metres / right.Seconds);

    /// <summary>Duration from length over speed.</summary>
    public static Duration operator /(Length left, Speed right) => Duration.FromSeconds(left.Metres / right.MetresPerSecond);

    /// <summary>Less.</summary>
    public static bool operator <(Length left, Length right) => left.Si < right.Si;

    /// <summary>Greater.</summary>
    public static bool operator >(Length left, Length right) => left.Si > right.Si;

    /// <summary>Less or equal.</summary>
    public static bool operator <=(Length left, Length right) => left.Si <= right.Si;

    /// <summary>Greater or equal.</summary>
    public static bool operator >=(Length left, Length right) => left.Si >= right.Si;

    /// <inheritdoc/>
    public int CompareTo(Length other) => Si.CompareTo(other.Si);

    /// <summary>Number and SI unit, invariant culture.</summary>
    public override string ToString() => ToString(null, CultureInfo.InvariantCulture);

    /// <summary>Number and unit; <paramref name="format"/> is a unit symbol, then an optional number format after a bar: <c>"mi|0.0"</c>.</summary>
    public string ToString(string? format, IFormatProvider? formatProvider) => QuantityText.Format(Si, Units, format, formatProvider);
}
