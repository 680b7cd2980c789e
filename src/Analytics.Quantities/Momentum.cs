using System.Globalization;
using System.Numerics;

namespace Analytics.Quantities;

/// <summary>Momentum, held in kilogram metres per second.</summary>
public readonly record struct Momentum : IQuantity<Momentum>, IUnaryNegationOperators<Momentum, Momentum>
{
    private static readonly Unit InKilogramMetresPerSecond = new("kg·m/s", 1);
    private static readonly Unit InPoundFeetPerSecond = new("lb·ft/s", UnitFactors.KilogramsPerPound * UnitFactors.MetresPerFoot);

    private Momentum(double si) => Si = si;

    /// <inheritdoc/>
    public double Si { get; }

    /// <inheritdoc/>
    public string SiUnit => InKilogramMetresPerSecond.Symbol;

    /// <inheritdoc/>
    public static Momentum Zero => default;

    /// <inheritdoc/>
    public static IReadOnlyList<Unit> Units { get; } = [InKilogramMetresPerSecond, InPoundFeetPerSecond];

    /// <inheritdoc/>
    public static Momentum FromSi(double si) => new(Guard.Finite(si, InKilogramMetresPerSecond, "momentum"));

    /// <summary>A momentum from kilogram metres per second.</summary>
    /// <param name="kilogramMetresPerSecond">Finite; in kg·m/s.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Momentum FromKilogramMetresPerSecond(double kilogramMetresPerSecond) => new(Guard.Finite(kilogramMetresPerSecond, InKilogramMetresPerSecond, "momentum"));

    /// <summary>A momentum from pound feet per second.</summary>
    /// <param name="poundFeetPerSecond">Finite; in lb·ft/s.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Momentum FromPoundFeetPerSecond(double poundFeetPerSecond) => new(Guard.Finite(poundFeetPerSecond, InPoundFeetPerSecond, "momentum"));

    /// <summary>The momentum in kilogram metres per second (kg·m/s).</summary>
    public double KilogramMetresPerSecond => Si;

    /// <summary>The momentum in pound feet per second (lb·ft/s).</summary>
    public double PoundFeetPerSecond => InPoundFeetPerSecond.NumberOf(Si);

    /// <summary>Sum.</summary>
    public static Momentum operator +(Momentum left, Momentum right) => FromSi(left.Si + right.Si);

    /// <summary>Difference.</summary>
    public static Momentum operator -(Momentum left, Momentum right) => FromSi(left.Si - right.Si);

    /// <summary>Opposite direction.</summary>
    public static Momentum operator -(Momentum value) => FromSi(-value.Si);

    /// <summary>Multiple.</summary>
    public static Momentum operator *(Momentum left, double right) => FromSi(left.Si * right);

    /// <summary>Multiple.</summary>
    public static Momentum operator *(double left, Momentum right) => right * left;

    /// <summary>Fraction.</summary>
    public static Momentum operator /(Momentum left, double right) => FromSi(left.Si / right);

    /// <summary>Ratio of two of the same kind, without unit; refused when the divisor is 0.</summary>
    public static double operator /(Momentum left, Momentum right) => Guard.Ratio(left.Si, right.Si, "momentum");

    /// <summary>Speed from momentum over mass.</summary>
    public static Speed operator /(Momentum left, Mass right) => Speed.FromSi(left.Si / right.Si);

    /// <summary>Force from momentum over duration.</summary>
    public static Force operator /(Momentum left, Duration right) => Force.FromSi(left.Si / right.Si);

    /// <summary>Less.</summary>
    public static bool operator <(Momentum left, Momentum right) => left.Si < right.Si;

    /// <summary>Greater.</summary>
    public static bool operator >(Momentum left, Momentum right) => left.Si > right.Si;

    /// <summary>Less or equal.</summary>
    public static bool operator <=(Momentum left, Momentum right) => left.Si <= right.Si;

    /// <summary>Greater or equal.</summary>
    public static bool operator >=(Momentum left, Momentum right) => left.Si >= right.Si;

    /// <inheritdoc/>
    public int CompareTo(Momentum other) => Si.CompareTo(other.Si);

    /// <summary>Number and SI unit, invariant culture.</summary>
    public override string ToString() => ToString(null, CultureInfo.InvariantCulture);

    /// <summary>Number and unit; <paramref name="format"/> is a unit symbol, then an optional number format after a bar: <c>"lb·ft/s|0.0"</c>.</summary>
    /// <exception cref="FormatException">Not a unit of this quantity.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => QuantityText.Format(Si, Units, format, formatProvider);
}
