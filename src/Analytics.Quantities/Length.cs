using System.Globalization;
using System.Numerics;

namespace Analytics.Quantities;

/// <summary>Length, held in metres.</summary>
public readonly record struct Length : IQuantity<Length>, IUnaryNegationOperators<Length, Length>
{
    private static readonly Unit InMetres = new("m", 1);
    private static readonly Unit InCentimetres = new("cm", 1e-2);
    private static readonly Unit InMillimetres = new("mm", 1e-3);
    private static readonly Unit InKilometres = new("km", 1e3);
    private static readonly Unit InInches = new("in", UnitFactors.MetresPerInch);
    private static readonly Unit InFeet = new("ft", UnitFactors.MetresPerFoot);
    private static readonly Unit InYards = new("yd", UnitFactors.MetresPerYard);
    private static readonly Unit InMiles = new("mi", UnitFactors.MetresPerMile);

    private Length(double si) => Si = si;

    /// <inheritdoc/>
    public double Si { get; }

    /// <inheritdoc/>
    public string SiUnit => InMetres.Symbol;

    /// <inheritdoc/>
    public static Length Zero => default;

    /// <inheritdoc/>
    public static IReadOnlyList<Unit> Units { get; } = [InMetres, InCentimetres, InMillimetres, InKilometres, InInches, InFeet, InYards, InMiles];

    /// <inheritdoc/>
    public static Length FromSi(double si) => new(Guard.Finite(si, InMetres, "length"));

    /// <summary>A length from metres.</summary>
    /// <param name="metres">Finite; in m.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Length FromMetres(double metres) => new(Guard.Finite(metres, InMetres, "length"));

    /// <summary>A length from centimetres.</summary>
    /// <param name="centimetres">Finite; in cm.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Length FromCentimetres(double centimetres) => new(Guard.Finite(centimetres, InCentimetres, "length"));

    /// <summary>A length from millimetres.</summary>
    /// <param name="millimetres">Finite; in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Length FromMillimetres(double millimetres) => new(Guard.Finite(millimetres, InMillimetres, "length"));

    /// <summary>A length from kilometres.</summary>
    /// <param name="kilometres">Finite; in km.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Length FromKilometres(double kilometres) => new(Guard.Finite(kilometres, InKilometres, "length"));

    /// <summary>A length from inches.</summary>
    /// <param name="inches">Finite; in in.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Length FromInches(double inches) => new(Guard.Finite(inches, InInches, "length"));

    /// <summary>A length from feet.</summary>
    /// <param name="feet">Finite; in ft.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Length FromFeet(double feet) => new(Guard.Finite(feet, InFeet, "length"));

    /// <summary>A length from yards.</summary>
    /// <param name="yards">Finite; in yd.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Length FromYards(double yards) => new(Guard.Finite(yards, InYards, "length"));

    /// <summary>A length from miles.</summary>
    /// <param name="miles">Finite; in mi.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Length FromMiles(double miles) => new(Guard.Finite(miles, InMiles, "length"));

    /// <summary>The length in metres (m).</summary>
    public double Metres => Si;

    /// <summary>The length in centimetres (cm).</summary>
    public double Centimetres => InCentimetres.NumberOf(Si);

    /// <summary>The length in millimetres (mm).</summary>
    public double Millimetres => InMillimetres.NumberOf(Si);

    /// <summary>The length in kilometres (km).</summary>
    public double Kilometres => InKilometres.NumberOf(Si);

    /// <summary>The length in inches (in).</summary>
    public double Inches => InInches.NumberOf(Si);

    /// <summary>The length in feet (ft).</summary>
    public double Feet => InFeet.NumberOf(Si);

    /// <summary>The length in yards (yd).</summary>
    public double Yards => InYards.NumberOf(Si);

    /// <summary>The length in miles (mi).</summary>
    public double Miles => InMiles.NumberOf(Si);

    /// <summary>Sum.</summary>
    public static Length operator +(Length left, Length right) => FromSi(left.Si + right.Si);

    /// <summary>Difference.</summary>
    public static Length operator -(Length left, Length right) => FromSi(left.Si - right.Si);

    /// <summary>Opposite direction.</summary>
    public static Length operator -(Length value) => FromSi(-value.Si);

    /// <summary>Multiple.</summary>
    public static Length operator *(Length left, double right) => FromSi(left.Si * right);

    /// <summary>Multiple.</summary>
    public static Length operator *(double left, Length right) => right * left;

    /// <summary>Fraction.</summary>
    public static Length operator /(Length left, double right) => FromSi(left.Si / right);

    /// <summary>Ratio of two of the same kind, without unit; refused when the divisor is 0.</summary>
    public static double operator /(Length left, Length right) => Guard.Ratio(left.Si, right.Si, "length");

    /// <summary>Speed from length over duration.</summary>
    public static Speed operator /(Length left, Duration right) => Speed.FromSi(left.Si / right.Si);

    /// <summary>Duration from length over speed.</summary>
    public static Duration operator /(Length left, Speed right) => Duration.FromSi(left.Si / right.Si);

    /// <summary>Energy from length times force.</summary>
    public static Energy operator *(Length left, Force right) => right * left;

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
    /// <exception cref="FormatException">Not a unit of this quantity.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => QuantityText.Format(Si, Units, format, formatProvider);
}
