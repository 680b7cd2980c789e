using System.Globalization;

namespace Analytics.Quantities;

/// <summary>Momentum, held in kilogram metres per second.</summary>
public readonly record struct Momentum : IQuantity<Momentum>
{
    private Momentum(double si) => Si = si;

    /// <inheritdoc/>
    public double Si { get; }

    /// <inheritdoc/>
    public string SiUnit => "kg·m/s";

    /// <inheritdoc/>
    public static Momentum Zero => default;

    /// <inheritdoc/>
    public static IReadOnlyList<Unit> Units { get; } =
    [
        new("kg·m/s", 1),
        new("lb·ft/s", UnitFactors.KilogramsPerPound * UnitFactors.MetresPerFoot),
    ];

    /// <inheritdoc/>
    public static Momentum FromSi(double si) => new(Guard.Finite(si, "momentum", "kg·m/s"));

    /// <summary>Makes a momentum from kilogram metres per second.</summary>
    /// <param name="kilogramMetresPerSecond">Finite; in kg·m/s.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Momentum FromKilogramMetresPerSecond(double kilogramMetresPerSecond) => FromSi(kilogramMetresPerSecond);

    /// <summary>Makes a momentum from pound feet per second.</summary>
    /// <param name="poundFeetPerSecond">Finite; in lb·ft/s.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Momentum FromPoundFeetPerSecond(double poundFeetPerSecond) => FromSi(Guard.Finite(poundFeetPerSecond, "momentum", "lb·ft/s") * (UnitFactors.KilogramsPerPound * UnitFactors.MetresPerFoot));

    /// <summary>The momentum in kilogram metres per second (kg·m/s).</summary>
    public double KilogramMetresPerSecond => Si;

    /// <summary>The momentum in pound feet per second (lb·ft/s).</summary>
    public double PoundFeetPerSecond => Si / (UnitFactors.KilogramsPerPound * UnitFactors.MetresPerFoot);

    /// <summary>Sum.</summary>
    public static Momentum operator +(Momentum left, Momentum right) => FromSi(left.Si + right.Si);

    /// <summary>Difference.</summary>
    public static Momentum operator -(Momentum left, Momentum right) => FromSi(left.Si - right.Si);

    /// <summary>Opposite direction.</summary>
    public static Momentum operator -(Momentum value) => FromSi(-value.Si);

    /// <summary>Multiple.</summary>
    public static Momentum operator *(Momentum left, double right) => FromSi(left.Si * right);

    /// <summary>Multiple.</summary>
    public static Momentum operator *(double left, Momentum right) => FromSi(left * right.Si);

    /// <summary>Fraction.</summary>
    public static Momentum operator /(Momentum left, double right) => FromSi(left.Si / right);

    /// <summary>Ratio of two of the same kind, without unit.</summary>
    public static double operator /(Momentum left, Momentum right) => left.Si / right.Si;

    /// <summary>Speed from momentum over mass.</summary>
    public static Speed operator /(Momentum left, Mass right) => Speed.FromMetresPerSecond(left.KilogramMetresPerSecond / right.Kilograms);

    /// <summary>Force from momentum over duration.</summary>
    public static Force operator /(Momentum left, Duration right) => Force.FromNewtons(left.KilogramMetresPerSecond / right.Seconds);

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
    public string ToString(string? format, IFormatProvider? formatProvider) => QuantityText.Format(Si, Units, format, formatProvider);
}
