using System.Globalization;
using System.Numerics;

namespace Analytics.Quantities;

/// <summary>Energy, held in joules.</summary>
public readonly record struct Energy : IQuantity<Energy>, IUnaryNegationOperators<Energy, Energy>
{
    private static readonly Unit InJoules = new("J", 1);
    private static readonly Unit InKilojoules = new("kJ", 1e3);
    private static readonly Unit InFootPounds = new("ft·lbf", UnitFactors.MetresPerFoot * UnitFactors.KilogramsPerPound * UnitFactors.StandardGravity);

    private Energy(double si) => Si = si;

    /// <inheritdoc/>
    public double Si { get; }

    /// <inheritdoc/>
    public string SiUnit => InJoules.Symbol;

    /// <inheritdoc/>
    public static Energy Zero => default;

    /// <inheritdoc/>
    public static IReadOnlyList<Unit> Units { get; } = [InJoules, InKilojoules, InFootPounds];

    /// <inheritdoc/>
    public static Energy FromSi(double si) => new(Guard.Finite(si, InJoules, "energy"));

    /// <summary>An energy from joules.</summary>
    /// <param name="joules">Finite; in J.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Energy FromJoules(double joules) => new(Guard.Finite(joules, InJoules, "energy"));

    /// <summary>An energy from kilojoules.</summary>
    /// <param name="kilojoules">Finite; in kJ.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Energy FromKilojoules(double kilojoules) => new(Guard.Finite(kilojoules, InKilojoules, "energy"));

    /// <summary>An energy from foot pounds.</summary>
    /// <param name="footPounds">Finite; in ft·lbf.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Energy FromFootPounds(double footPounds) => new(Guard.Finite(footPounds, InFootPounds, "energy"));

    /// <summary>The energy in joules (J).</summary>
    public double Joules => Si;

    /// <summary>The energy in kilojoules (kJ).</summary>
    public double Kilojoules => InKilojoules.NumberOf(Si);

    /// <summary>The energy in foot pounds (ft·lbf).</summary>
    public double FootPounds => InFootPounds.NumberOf(Si);

    /// <summary>Sum.</summary>
    public static Energy operator +(Energy left, Energy right) => FromSi(left.Si + right.Si);

    /// <summary>Difference.</summary>
    public static Energy operator -(Energy left, Energy right) => FromSi(left.Si - right.Si);

    /// <summary>Opposite direction.</summary>
    public static Energy operator -(Energy value) => FromSi(-value.Si);

    /// <summary>Multiple.</summary>
    public static Energy operator *(Energy left, double right) => FromSi(left.Si * right);

    /// <summary>Multiple.</summary>
    public static Energy operator *(double left, Energy right) => right * left;

    /// <summary>Fraction.</summary>
    public static Energy operator /(Energy left, double right) => FromSi(left.Si / right);

    /// <summary>Ratio of two of the same kind, without unit; refused when the divisor is 0.</summary>
    public static double operator /(Energy left, Energy right) => Guard.Ratio(left.Si, right.Si, "energy");

    /// <summary>Power from energy over duration.</summary>
    public static Power operator /(Energy left, Duration right) => Power.FromSi(left.Si / right.Si);

    /// <summary>Force from energy over length.</summary>
    public static Force operator /(Energy left, Length right) => Force.FromSi(left.Si / right.Si);

    /// <summary>Less.</summary>
    public static bool operator <(Energy left, Energy right) => left.Si < right.Si;

    /// <summary>Greater.</summary>
    public static bool operator >(Energy left, Energy right) => left.Si > right.Si;

    /// <summary>Less or equal.</summary>
    public static bool operator <=(Energy left, Energy right) => left.Si <= right.Si;

    /// <summary>Greater or equal.</summary>
    public static bool operator >=(Energy left, Energy right) => left.Si >= right.Si;

    /// <inheritdoc/>
    public int CompareTo(Energy other) => Si.CompareTo(other.Si);

    /// <summary>Number and SI unit, invariant culture.</summary>
    public override string ToString() => ToString(null, CultureInfo.InvariantCulture);

    /// <summary>Number and unit; <paramref name="format"/> is a unit symbol, then an optional number format after a bar: <c>"ft·lbf|0.0"</c>.</summary>
    /// <exception cref="FormatException">Not a unit of this quantity.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => QuantityText.Format(Si, Units, format, formatProvider);
}
