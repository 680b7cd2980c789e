using System.Globalization;
using System.Numerics;

namespace Analytics.Quantities;

/// <summary>Impulse, held in newton seconds.</summary>
public readonly record struct Impulse : IQuantity<Impulse>, IUnaryNegationOperators<Impulse, Impulse>
{
    private static readonly Unit InNewtonSeconds = new("N·s", 1);
    private static readonly Unit InPoundForceSeconds = new("lbf·s", UnitFactors.KilogramsPerPound * UnitFactors.StandardGravity);

    private Impulse(double si) => Si = si;

    /// <inheritdoc/>
    public double Si { get; }

    /// <inheritdoc/>
    public string SiUnit => InNewtonSeconds.Symbol;

    /// <inheritdoc/>
    public static Impulse Zero => default;

    /// <inheritdoc/>
    public static IReadOnlyList<Unit> Units { get; } = [InNewtonSeconds, InPoundForceSeconds];

    /// <inheritdoc/>
    public static Impulse FromSi(double si) => new(Guard.Finite(si, InNewtonSeconds, "impulse"));

    /// <summary>An impulse from newton seconds.</summary>
    /// <param name="newtonSeconds">Finite; in N·s.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Impulse FromNewtonSeconds(double newtonSeconds) => new(Guard.Finite(newtonSeconds, InNewtonSeconds, "impulse"));

    /// <summary>An impulse from pound force seconds.</summary>
    /// <param name="poundForceSeconds">Finite; in lbf·s.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Impulse FromPoundForceSeconds(double poundForceSeconds) => new(Guard.Finite(poundForceSeconds, InPoundForceSeconds, "impulse"));

    /// <summary>The impulse in newton seconds (N·s).</summary>
    public double NewtonSeconds => Si;

    /// <summary>The impulse in pound force seconds (lbf·s).</summary>
    public double PoundForceSeconds => InPoundForceSeconds.NumberOf(Si);

    /// <summary>Sum.</summary>
    public static Impulse operator +(Impulse left, Impulse right) => FromSi(left.Si + right.Si);

    /// <summary>Difference.</summary>
    public static Impulse operator -(Impulse left, Impulse right) => FromSi(left.Si - right.Si);

    /// <summary>Opposite direction.</summary>
    public static Impulse operator -(Impulse value) => FromSi(-value.Si);

    /// <summary>Multiple.</summary>
    public static Impulse operator *(Impulse left, double right) => FromSi(left.Si * right);

    /// <summary>Multiple.</summary>
    public static Impulse operator *(double left, Impulse right) => right * left;

    /// <summary>Fraction.</summary>
    public static Impulse operator /(Impulse left, double right) => FromSi(left.Si / right);

    /// <summary>Ratio of two of the same kind, without unit; refused when the divisor is 0.</summary>
    public static double operator /(Impulse left, Impulse right) => Guard.Ratio(left.Si, right.Si, "impulse");

    /// <summary>Force from impulse over duration.</summary>
    public static Force operator /(Impulse left, Duration right) => Force.FromSi(left.Si / right.Si);

    /// <summary>Speed from impulse over mass.</summary>
    public static Speed operator /(Impulse left, Mass right) => Speed.FromSi(left.Si / right.Si);

    /// <summary>Less.</summary>
    public static bool operator <(Impulse left, Impulse right) => left.Si < right.Si;

    /// <summary>Greater.</summary>
    public static bool operator >(Impulse left, Impulse right) => left.Si > right.Si;

    /// <summary>Less or equal.</summary>
    public static bool operator <=(Impulse left, Impulse right) => left.Si <= right.Si;

    /// <summary>Greater or equal.</summary>
    public static bool operator >=(Impulse left, Impulse right) => left.Si >= right.Si;

    /// <inheritdoc/>
    public int CompareTo(Impulse other) => Si.CompareTo(other.Si);

    /// <summary>Number and SI unit, invariant culture.</summary>
    public override string ToString() => ToString(null, CultureInfo.InvariantCulture);

    /// <summary>Number and unit; <paramref name="format"/> is a unit symbol, then an optional number format after a bar: <c>"lbf·s|0.0"</c>.</summary>
    /// <exception cref="FormatException">Not a unit of this quantity.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => QuantityText.Format(Si, Units, format, formatProvider);
}
