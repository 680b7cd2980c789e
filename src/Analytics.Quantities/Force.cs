using System.Globalization;

namespace Analytics.Quantities;

/// <summary>Force, held in newtons.</summary>
public readonly record struct Force : IQuantity<Force>
{
    private Force(double si) => Si = si;

    /// <inheritdoc/>
    public double Si { get; }

    /// <inheritdoc/>
    public string SiUnit => "N";

    /// <inheritdoc/>
    public static Force Zero => default;

    /// <inheritdoc/>
    public static IReadOnlyList<Unit> Units { get; } =
    [
        new("N", 1),
        new("kN", 1e3),
        new("lbf", UnitFactors.KilogramsPerPound * UnitFactors.StandardGravity),
        new("kgf", UnitFactors.StandardGravity),
    ];

    /// <inheritdoc/>
    public static Force FromSi(double si) => new(Guard.Finite(si, "force", "N"));

    /// <summary>Makes a force from newtons.</summary>
    /// <param name="newtons">Finite; in N.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Force FromNewtons(double newtons) => FromSi(newtons);

    /// <summary>Makes a force from kilonewtons.</summary>
    /// <param name="kilonewtons">Finite; in kN.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Force FromKilonewtons(double kilonewtons) => FromSi(Guard.Finite(kilonewtons, "force", "kN") * 1e3);

    /// <summary>Makes a force from pounds force.</summary>
    /// <param name="poundsForce">Finite; in lbf.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Force FromPoundsForce(double poundsForce) => FromSi(Guard.Finite(poundsForce, "force", "lbf") * (UnitFactors.KilogramsPerPound * UnitFactors.StandardGravity));

    /// <summary>Makes a force from kilograms force.</summary>
    /// <param name="kilogramsForce">Finite; in kgf.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Force FromKilogramsForce(double kilogramsForce) => FromSi(Guard.Finite(kilogramsForce, "force", "kgf") * UnitFactors.StandardGravity);

    /// <summary>The force in newtons (N).</summary>
    public double Newtons => Si;

    /// <summary>The force in kilonewtons (kN).</summary>
    public double Kilonewtons => Si / 1e3;

    /// <summary>The force in pounds force (lbf).</summary>
    public double PoundsForce => Si / (UnitFactors.KilogramsPerPound * UnitFactors.StandardGravity);

    /// <summary>The force in kilograms force (kgf).</summary>
    public double KilogramsForce => Si / UnitFactors.StandardGravity;

    /// <summary>Sum.</summary>
    public static Force operator +(Force left, Force right) => FromSi(left.Si + right.Si);

    /// <summary>Difference.</summary>
    public static Force operator -(Force left, Force right) => FromSi(left.Si - right.Si);

    /// <summary>Opposite direction.</summary>
    public static Force operator -(Force value) => FromSi(-value.Si);

    /// <summary>Multiple.</summary>
    public static Force operator *(Force left, double right) => FromSi(left.Si * right);

    /// <summary>Multiple.</summary>
    public static Force operator *(double left, Force right) => FromSi(left * right.Si);

    /// <summary>Fraction.</summary>
    public static Force operator /(Force left, double right) => FromSi(left.Si / right);

    /// <summary>Ratio of two of the same kind, without unit.</summary>
    public static double operator /(Force left, Force right) => left.Si / right.Si;

    /// <summary>Power from force times speed.</summary>
    public static Power operator *(Force left, Speed right) => Power.FromWatts(left.Newtons * right.MetresPerSecond);

    /// <summary>Energy from force times length.</summary>
    public static Energy operator *(Force left, Length right) => Energy.FromJoules(left.Newtons * right.Metres);

    /// <summary>Impulse from force times duration.</summary>
    public static Impulse operator *(Force left, Duration right) => Impulse.FromNewtonSeconds(left.Newtons * right.Seconds);

    /// <summary>Acceleration from force over mass.</summary>
    public static Acceleration operator /(Force left, Mass right) => Acceleration.FromMetresPerSecondSquared(left.Newtons / right.Kilograms);

    /// <summary>The same force per kilogram of body mass.</summary>
    public ForcePerMass Per(Mass bodyMass) => ForcePerMass.FromNewtonsPerKilogram(Newtons / bodyMass.Kilograms);

    /// <summary>Less.</summary>
    public static bool operator <(Force left, Force right) => left.Si < right.Si;

    /// <summary>Greater.</summary>
    public static bool operator >(Force left, Force right) => left.Si > right.Si;

    /// <summary>Less or equal.</summary>
    public static bool operator <=(Force left, Force right) => left.Si <= right.Si;

    /// <summary>Greater or equal.</summary>
    public static bool operator >=(Force left, Force right) => left.Si >= right.Si;

    /// <inheritdoc/>
    public int CompareTo(Force other) => Si.CompareTo(other.Si);

    /// <summary>Number and SI unit, invariant culture.</summary>
    public override string ToString() => ToString(null, CultureInfo.InvariantCulture);

    /// <summary>Number and unit; <paramref name="format"/> is a unit symbol, then an optional number format after a bar: <c>"kgf|0.0"</c>.</summary>
    public string ToString(string? format, IFormatProvider? formatProvider) => QuantityText.Format(Si, Units, format, formatProvider);
}
