using System.Globalization;

namespace Analytics.Quantities;

/// <summary>Impulse, held in newton seconds.</summary>
public readonly record struct Impulse : IQuantity<Impulse>
{
    private Impulse(double si) => Si = si;

    /// <inheritdoc/>
    public double Si { get; }

    /// <inheritdoc/>
    public string SiUnit => "N·s";

    /// <inheritdoc/>
    public static Impulse Zero => default;

    /// <inheritdoc/>
    public static IReadOnlyList<Unit> Units { get; } =
    [
        new("N·s", 1),
        new("lbf·s", UnitFactors.KilogramsPerPound * UnitFactors.StandardGravity),
    ];

    /// <inheritdoc/>
    public static Impulse FromSi(double si) => new(Guard.Finite(si, "impulse", "N·s"));

    /// <summary>Makes a impulse from newton seconds.</summary>
    /// <param name="newtonSeconds">Finite; in N·s.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Impulse FromNewtonSeconds(double newtonSeconds) => FromSi(newtonSeconds);

    /// <summary>Makes a impulse from pound force seconds.</summary>
    /// <param name="poundForceSeconds">Finite; in lbf·s.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Impulse FromPoundForceSeconds(double poundForceSeconds) => FromSi(Guard.Finite(poundForceSeconds, "impulse", "lbf·s") * (UnitFactors.KilogramsPerPound * UnitFactors.StandardGravity));

    /// <summary>The impulse in newton seconds (N·s).</summary>
    public double NewtonSeconds => Si;

    /// <summary>The impulse in pound force seconds (lbf·s).</summary>
    public double PoundForceSeconds => Si / (UnitFactors.KilogramsPerPound * UnitFactors.StandardGravity);

    /// <summary>Sum.</summary>
    public static Impulse operator +(Impulse left, Impulse right) => FromSi(left.Si + right.Si);

    /// <summary>Difference.</summary>
    public static Impulse operator -(Impulse left, Impulse right) => FromSi(left.Si - right.Si);

    /// <summary>Opposite direction.</summary>
    public static Impulse operator -(Impulse value) => FromSi(-value.Si);

    /// <summary>Multiple.</summary>
    public static Impulse operator *(Impulse left, double right) => FromSi(left.Si * right);

    /// <summary>Multiple.</summary>
    public static Impulse operator *(double left, Impulse right) => FromSi(left * right.Si);

    /// <summary>Fraction.</summary>
    public static Impulse operator /(Impulse left, double right) => FromSi(left.Si / right);

    /// <summary>Ratio of two of the same kind, without unit.</summary>
    public static double operator /(Impulse left, Impulse right) => left.Si / right.Si;

    /// <summary>Force from impulse over duration.</summary>
    public static Force operator /(Impulse left, Duration right) => Force.FromNewtons(left.NewtonSeconds / right.Seconds);

    /// <summary>Speed from impulse over mass.</summary>
    public static Speed operator /(Impulse left, Mass right) => Speed.FromMetresPerSecond(left.NewtonSeconds / right.Kilograms);

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
    public string ToString(string? format, IFormatProvider? formatProvider) => QuantityText.Format(Si, Units, format, formatProvider);
}
