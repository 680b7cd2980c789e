using System.Globalization;
using System.Numerics;

namespace Analytics.Quantities;

/// <summary>Acceleration, held in metres per second squared.</summary>
public readonly record struct Acceleration : IQuantity<Acceleration>, IUnaryNegationOperators<Acceleration, Acceleration>
{
    private static readonly Unit InMetresPerSecondSquared = new("m/s²", 1);
    private static readonly Unit InStandardGravities = new("g₀", UnitFactors.StandardGravity);

    private Acceleration(double si) => Si = si;

    /// <inheritdoc/>
    public double Si { get; }

    /// <inheritdoc/>
    public string SiUnit => InMetresPerSecondSquared.Symbol;

    /// <inheritdoc/>
    public static Acceleration Zero => default;

    /// <inheritdoc/>
    public static IReadOnlyList<Unit> Units { get; } = [InMetresPerSecondSquared, InStandardGravities];

    /// <inheritdoc/>
    public static Acceleration FromSi(double si) => new(Guard.Finite(si, InMetresPerSecondSquared, "acceleration"));

    /// <summary>An acceleration from metres per second squared.</summary>
    /// <param name="metresPerSecondSquared">Finite; in m/s².</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Acceleration FromMetresPerSecondSquared(double metresPerSecondSquared) => new(Guard.Finite(metresPerSecondSquared, InMetresPerSecondSquared, "acceleration"));

    /// <summary>An acceleration from standard gravities.</summary>
    /// <param name="standardGravities">Finite; in g₀.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Acceleration FromStandardGravities(double standardGravities) => new(Guard.Finite(standardGravities, InStandardGravities, "acceleration"));

    /// <summary>The acceleration in metres per second squared (m/s²).</summary>
    public double MetresPerSecondSquared => Si;

    /// <summary>The acceleration in standard gravities (g₀).</summary>
    public double StandardGravities => InStandardGravities.NumberOf(Si);

    /// <summary>Sum.</summary>
    public static Acceleration operator +(Acceleration left, Acceleration right) => FromSi(left.Si + right.Si);

    /// <summary>Difference.</summary>
    public static Acceleration operator -(Acceleration left, Acceleration right) => FromSi(left.Si - right.Si);

    /// <summary>Opposite direction.</summary>
    public static Acceleration operator -(Acceleration value) => FromSi(-value.Si);

    /// <summary>Multiple.</summary>
    public static Acceleration operator *(Acceleration left, double right) => FromSi(left.Si * right);

    /// <summary>Multiple.</summary>
    public static Acceleration operator *(double left, Acceleration right) => right * left;

    /// <summary>Fraction.</summary>
    public static Acceleration operator /(Acceleration left, double right) => FromSi(left.Si / right);

    /// <summary>Ratio of two of the same kind, without unit; refused when the divisor is 0.</summary>
    public static double operator /(Acceleration left, Acceleration right) => Guard.Ratio(left.Si, right.Si, "acceleration");

    /// <summary>Speed from acceleration times duration.</summary>
    public static Speed operator *(Acceleration left, Duration right) => Speed.FromSi(left.Si * right.Si);

    /// <summary>Force from acceleration times mass.</summary>
    public static Force operator *(Acceleration left, Mass right) => Force.FromSi(left.Si * right.Si);

    /// <summary>Less.</summary>
    public static bool operator <(Acceleration left, Acceleration right) => left.Si < right.Si;

    /// <summary>Greater.</summary>
    public static bool operator >(Acceleration left, Acceleration right) => left.Si > right.Si;

    /// <summary>Less or equal.</summary>
    public static bool operator <=(Acceleration left, Acceleration right) => left.Si <= right.Si;

    /// <summary>Greater or equal.</summary>
    public static bool operator >=(Acceleration left, Acceleration right) => left.Si >= right.Si;

    /// <inheritdoc/>
    public int CompareTo(Acceleration other) => Si.CompareTo(other.Si);

    /// <summary>Number and SI unit, invariant culture.</summary>
    public override string ToString() => ToString(null, CultureInfo.InvariantCulture);

    /// <summary>Number and unit; <paramref name="format"/> is a unit symbol, then an optional number format after a bar: <c>"g₀|0.0"</c>.</summary>
    /// <exception cref="FormatException">Not a unit of this quantity.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => QuantityText.Format(Si, Units, format, formatProvider);
}
