using System.Globalization;
using System.Numerics;

namespace Analytics.Quantities;

/// <summary>Angle, held in radians.</summary>
public readonly record struct Angle : IQuantity<Angle>, IUnaryNegationOperators<Angle, Angle>
{
    private static readonly Unit InRadians = new("rad", 1);
    private static readonly Unit InDegrees = new("°", double.Pi / 180.0);

    private Angle(double si) => Si = si;

    /// <inheritdoc/>
    public double Si { get; }

    /// <inheritdoc/>
    public string SiUnit => InRadians.Symbol;

    /// <inheritdoc/>
    public static Angle Zero => default;

    /// <inheritdoc/>
    public static IReadOnlyList<Unit> Units { get; } = [InRadians, InDegrees];

    /// <inheritdoc/>
    public static Angle FromSi(double si) => new(Guard.Finite(si, InRadians, "angle"));

    /// <summary>An angle from radians.</summary>
    /// <param name="radians">Finite; in rad.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Angle FromRadians(double radians) => new(Guard.Finite(radians, InRadians, "angle"));

    /// <summary>An angle from degrees.</summary>
    /// <param name="degrees">Finite; in °.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Angle FromDegrees(double degrees) => new(Guard.Finite(degrees, InDegrees, "angle"));

    /// <summary>The angle in radians (rad).</summary>
    public double Radians => Si;

    /// <summary>The angle in degrees (°).</summary>
    public double Degrees => InDegrees.NumberOf(Si);

    /// <summary>Sum.</summary>
    public static Angle operator +(Angle left, Angle right) => FromSi(left.Si + right.Si);

    /// <summary>Difference.</summary>
    public static Angle operator -(Angle left, Angle right) => FromSi(left.Si - right.Si);

    /// <summary>Opposite direction.</summary>
    public static Angle operator -(Angle value) => FromSi(-value.Si);

    /// <summary>Multiple.</summary>
    public static Angle operator *(Angle left, double right) => FromSi(left.Si * right);

    /// <summary>Multiple.</summary>
    public static Angle operator *(double left, Angle right) => right * left;

    /// <summary>Fraction.</summary>
    public static Angle operator /(Angle left, double right) => FromSi(left.Si / right);

    /// <summary>Ratio of two of the same kind, without unit; refused when the divisor is 0.</summary>
    public static double operator /(Angle left, Angle right) => Guard.Ratio(left.Si, right.Si, "angle");

    /// <summary>Less.</summary>
    public static bool operator <(Angle left, Angle right) => left.Si < right.Si;

    /// <summary>Greater.</summary>
    public static bool operator >(Angle left, Angle right) => left.Si > right.Si;

    /// <summary>Less or equal.</summary>
    public static bool operator <=(Angle left, Angle right) => left.Si <= right.Si;

    /// <summary>Greater or equal.</summary>
    public static bool operator >=(Angle left, Angle right) => left.Si >= right.Si;

    /// <inheritdoc/>
    public int CompareTo(Angle other) => Si.CompareTo(other.Si);

    /// <summary>Number and SI unit, invariant culture.</summary>
    public override string ToString() => ToString(null, CultureInfo.InvariantCulture);

    /// <summary>Number and unit; <paramref name="format"/> is a unit symbol, then an optional number format after a bar: <c>"°|0.0"</c>.</summary>
    /// <exception cref="FormatException">Not a unit of this quantity.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => QuantityText.Format(Si, Units, format, formatProvider);
}
