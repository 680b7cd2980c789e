using System.Globalization;
using System.Numerics;

namespace Analytics.Quantities;

/// <summary>Force per body mass, held in newtons per kilogram.</summary>
public readonly record struct ForcePerMass : IQuantity<ForcePerMass>, IUnaryNegationOperators<ForcePerMass, ForcePerMass>
{
    private static readonly Unit InNewtonsPerKilogram = new("N/kg", 1);

    private ForcePerMass(double si) => Si = si;

    /// <inheritdoc/>
    public double Si { get; }

    /// <inheritdoc/>
    public string SiUnit => InNewtonsPerKilogram.Symbol;

    /// <inheritdoc/>
    public static ForcePerMass Zero => default;

    /// <inheritdoc/>
    public static IReadOnlyList<Unit> Units { get; } = [InNewtonsPerKilogram];

    /// <inheritdoc/>
    public static ForcePerMass FromSi(double si) => new(Guard.Finite(si, InNewtonsPerKilogram, "force per body mass"));

    /// <summary>A force per body mass from newtons per kilogram.</summary>
    /// <param name="newtonsPerKilogram">Finite; in N/kg.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static ForcePerMass FromNewtonsPerKilogram(double newtonsPerKilogram) => new(Guard.Finite(newtonsPerKilogram, InNewtonsPerKilogram, "force per body mass"));

    /// <summary>The force per body mass in newtons per kilogram (N/kg).</summary>
    public double NewtonsPerKilogram => Si;

    /// <summary>Sum.</summary>
    public static ForcePerMass operator +(ForcePerMass left, ForcePerMass right) => FromSi(left.Si + right.Si);

    /// <summary>Difference.</summary>
    public static ForcePerMass operator -(ForcePerMass left, ForcePerMass right) => FromSi(left.Si - right.Si);

    /// <summary>Opposite direction.</summary>
    public static ForcePerMass operator -(ForcePerMass value) => FromSi(-value.Si);

    /// <summary>Multiple.</summary>
    public static ForcePerMass operator *(ForcePerMass left, double right) => FromSi(left.Si * right);

    /// <summary>Multiple.</summary>
    public static ForcePerMass operator *(double left, ForcePerMass right) => right * left;

    /// <summary>Fraction.</summary>
    public static ForcePerMass operator /(ForcePerMass left, double right) => FromSi(left.Si / right);

    /// <summary>Ratio of two of the same kind, without unit; refused when the divisor is 0.</summary>
    public static double operator /(ForcePerMass left, ForcePerMass right) => Guard.Ratio(left.Si, right.Si, "force per body mass");

    /// <summary>Force from force per body mass times mass.</summary>
    public static Force operator *(ForcePerMass left, Mass right) => Force.FromSi(left.Si * right.Si);

    /// <summary>Less.</summary>
    public static bool operator <(ForcePerMass left, ForcePerMass right) => left.Si < right.Si;

    /// <summary>Greater.</summary>
    public static bool operator >(ForcePerMass left, ForcePerMass right) => left.Si > right.Si;

    /// <summary>Less or equal.</summary>
    public static bool operator <=(ForcePerMass left, ForcePerMass right) => left.Si <= right.Si;

    /// <summary>Greater or equal.</summary>
    public static bool operator >=(ForcePerMass left, ForcePerMass right) => left.Si >= right.Si;

    /// <inheritdoc/>
    public int CompareTo(ForcePerMass other) => Si.CompareTo(other.Si);

    /// <summary>Number and SI unit, invariant culture.</summary>
    public override string ToString() => ToString(null, CultureInfo.InvariantCulture);

    /// <summary>Number and unit; <paramref name="format"/> is a unit symbol, then an optional number format after a bar: <c>"N/kg|0.0"</c>.</summary>
    /// <exception cref="FormatException">Not a unit of this quantity.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => QuantityText.Format(Si, Units, format, formatProvider);
}
