using System.Globalization;

namespace Analytics.Quantities;

/// <summary>Mass, held in kilograms. Never negative.</summary>
public readonly record struct Mass : IQuantity<Mass>
{
    private static readonly Unit InKilograms = new("kg", 1);
    private static readonly Unit InGrams = new("g", 1e-3);
    private static readonly Unit InPounds = new("lb", UnitFactors.KilogramsPerPound);

    private Mass(double si) => Si = si;

    /// <inheritdoc/>
    public double Si { get; }

    /// <inheritdoc/>
    public string SiUnit => InKilograms.Symbol;

    /// <inheritdoc/>
    public static Mass Zero => default;

    /// <inheritdoc/>
    public static IReadOnlyList<Unit> Units { get; } = [InKilograms, InGrams, InPounds];

    /// <inheritdoc/>
    public static Mass FromSi(double si) => new(Guard.NotNegative(si, InKilograms, "mass"));

    /// <summary>A mass from kilograms.</summary>
    /// <param name="kilograms">Finite, 0 or more; in kg.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Mass FromKilograms(double kilograms) => new(Guard.NotNegative(kilograms, InKilograms, "mass"));

    /// <summary>A mass from grams.</summary>
    /// <param name="grams">Finite, 0 or more; in g.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Mass FromGrams(double grams) => new(Guard.NotNegative(grams, InGrams, "mass"));

    /// <summary>A mass from pounds.</summary>
    /// <param name="pounds">Finite, 0 or more; in lb.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Mass FromPounds(double pounds) => new(Guard.NotNegative(pounds, InPounds, "mass"));

    /// <summary>The mass in kilograms (kg).</summary>
    public double Kilograms => Si;

    /// <summary>The mass in grams (g).</summary>
    public double Grams => InGrams.NumberOf(Si);

    /// <summary>The mass in pounds (lb).</summary>
    public double Pounds => InPounds.NumberOf(Si);

    /// <summary>Sum.</summary>
    public static Mass operator +(Mass left, Mass right) => FromSi(left.Si + right.Si);

    /// <summary>Difference; refused when it would be negative.</summary>
    public static Mass operator -(Mass left, Mass right) => FromSi(left.Si - right.Si);

    /// <summary>Multiple.</summary>
    public static Mass operator *(Mass left, double right) => FromSi(left.Si * right);

    /// <summary>Multiple.</summary>
    public static Mass operator *(double left, Mass right) => right * left;

    /// <summary>Fraction.</summary>
    public static Mass operator /(Mass left, double right) => FromSi(left.Si / right);

    /// <summary>Ratio of two of the same kind, without unit; refused when the divisor is 0.</summary>
    public static double operator /(Mass left, Mass right) => Guard.Ratio(left.Si, right.Si, "mass");

    /// <summary>Momentum from mass times speed.</summary>
    public static Momentum operator *(Mass left, Speed right) => Momentum.FromSi(left.Si * right.Si);

    /// <summary>Force from mass times acceleration.</summary>
    public static Force operator *(Mass left, Acceleration right) => Force.FromSi(left.Si * right.Si);

    /// <summary>Force from mass times force per body mass.</summary>
    public static Force operator *(Mass left, ForcePerMass right) => right * left;

    /// <summary>Power from mass times power per body mass.</summary>
    public static Power operator *(Mass left, PowerPerMass right) => right * left;

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
    /// <exception cref="FormatException">Not a unit of this quantity.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => QuantityText.Format(Si, Units, format, formatProvider);
}
