using System.Globalization;

namespace Analytics.Quantities;

/// <summary>Mass, held in kilograms. Never negative.</summary>
public readonly record struct Mass : IQuantity<Mass>
{
    private Mass(double si) => Si = si;

    /// <inheritdoc/>
    public double Si { get; }

    /// <inheritdoc/>
    public string SiUnit => "kg";

    /// <inheritdoc/>
    public static Mass Zero => default;

    /// <inheritdoc/>
    public static IReadOnlyList<Unit> Units { get; } =
    [
        new("kg", 1),
        new("g", 1e-3),
        new("lb", UnitFactors.KilogramsPerPound),
    ];

    /// <inheritdoc/>
    public static Mass FromSi(double si) => new(Guard.NotNegative(si, "mass", "kg"));

    /// <summary>Makes a mass from kilograms.</summary>
    /// <param name="kilograms">Finite, 0 or more; in kg.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Mass FromKilograms(double kilograms) => FromSi(kilograms);

    /// <summary>Makes a mass from grams.</summary>
    /// <param name="grams">Finite, 0 or more; in g.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Mass FromGrams(double grams) => FromSi(Guard.NotNegative(grams, "mass", "g") * 1e-3);

    /// <summary>Makes a mass from pounds.</summary>
    /// <param name="pounds">Finite, 0 or more; in lb.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Mass FromPounds(double pounds) => FromSi(Guard.NotNegative(pounds, "mass", "lb") * UnitFactors.KilogramsPerPound);

    /// <summary>The mass in kilograms (kg).</summary>
    public double Kilograms => Si;

    /// <summary>The mass in grams (g).</summary>
    public double Grams => Si / 1e-3;

    /// <summary>The mass in pounds (lb).</summary>
    public double Pounds => Si / UnitFactors.KilogramsPerPound;

    /// <summary>Sum.</summary>
    public static Mass operator +(Mass left, Mass right) => FromSi(left.Si + right.Si);

    /// <summary>Difference; refused when it would be negative.</summary>
    public static Mass operator -(Mass left, Mass right) => FromSi(left.Si - right.Si);

    /// <summary>Multiple.</summary>
    public static Mass operator *(Mass left, double right) => FromSi(left.Si * right);

    /// <summary>Multiple.</summary>
    public static Mass operator *(double left, Mass right) => FromSi(left * right.Si);

    /// <summary>Fraction.</summary>
    public static Mass operator /(Mass left, double right) => FromSi(left.Si / right);

    /// <summary>Ratio of two of the same kind, without unit.</summary>
    public static double operator /(Mass left, Mass right) => left.Si / right.Si;

    /// <summary>Momentum from mass times speed.</summary>
    public static Momentum operator *(Mass left, Speed right) => Momentum.FromKilogramMetresPerSecond(left.Kilograms * right.MetresPerSecond);

    /// <summary>Force from mass times acceleration.</summary>
    public static Force operator *(Mass left, Acceleration right) => Force.FromNewtons(left.Kilograms * right.MetresPerSecondSquared);

    /// <summary>Less.</summary>
    public static bool operator <(Mass left, Mass right) => left.Si < right.Si;

    /// <summary>Greater.</summary>
    public static bool operator >(Mass left, Mass right) => left.Si > right.Si;

    /// <summary>Less or equal.</summary>
    public static bool operator <=(Mass left, Mass right) => left.Si <= right.Si;

    /// <summary>Greater or equal.</summary>
    public static bool operator >=(Mass left, Mass right) => left.Si >= right.Si;

    /// <inheritdoc/>
    public int CompareTo(Mass other) => Si.CompareTo(other.Si);

    /// <summary>Number and SI unit, invariant culture.</summary>
    public override string ToString() => ToString(null, CultureInfo.InvariantCulture);

    /// <summary>Number and unit; <paramref name="format"/> is a unit symbol, then an optional number format after a bar: <c>"lb|0.0"</c>.</summary>
    public string ToString(string? format, IFormatProvider? formatProvider) => QuantityText.Format(Si, Units, format, formatProvider);
}
