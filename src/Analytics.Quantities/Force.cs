using System.Globalization;
using System.Numerics;

namespace Analytics.Quantities;

/// <summary>Force, held in newtons.</summary>
public readonly record struct Force : IQuantity<Force>, IUnaryNegationOperators<Force, Force>
{
    private static readonly Unit InNewtons = new("N", 1);
    private static readonly Unit InKilonewtons = new("kN", 1e3);
    private static readonly Unit InPoundsForce = new("lbf", UnitFactors.KilogramsPerPound * UnitFactors.StandardGravity);
    private static readonly Unit InKilogramsForce = new("kgf", UnitFactors.StandardGravity);

    private Force(double si) => Si = si;

    /// <inheritdoc/>
    public double Si { get; }

    /// <inheritdoc/>
    public string SiUnit => InNewtons.Symbol;

    /// <inheritdoc/>
    public static Force Zero => default;

    /// <inheritdoc/>
    public static IReadOnlyList<Unit> Units { get; } = [InNewtons, InKilonewtons, InPoundsForce, InKilogramsForce];

    /// <inheritdoc/>
    public static Force FromSi(double si) => new(Guard.Finite(si, InNewtons, "force"));

    /// <summary>A force from newtons.</summary>
    /// <param name="newtons">Finite; in N.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Force FromNewtons(double newtons) => new(Guard.Finite(newtons, InNewtons, "force"));

    /// <summary>A force from kilonewtons.</summary>
    /// <param name="kilonewtons">Finite; in kN.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Force FromKilonewtons(double kilonewtons) => new(Guard.Finite(kilonewtons, InKilonewtons, "force"));

    /// <summary>A force from pounds force.</summary>
    /// <param name="poundsForce">Finite; in lbf.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Force FromPoundsForce(double poundsForce) => new(Guard.Finite(poundsForce, InPoundsForce, "force"));

    /// <summary>A force from kilograms force.</summary>
    /// <param name="kilogramsForce">Finite; in kgf.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Force FromKilogramsForce(double kilogramsForce) => new(Guard.Finite(kilogramsForce, InKilogramsForce, "force"));

    /// <summary>The force in newtons (N).</summary>
    public double Newtons => Si;

    /// <summary>The force in kilonewtons (kN).</summary>
    public double Kilonewtons => InKilonewtons.NumberOf(Si);

    /// <summary>The force in pounds force (lbf).</summary>
    public double PoundsForce => InPoundsForce.NumberOf(Si);

    /// <summary>The force in kilograms force (kgf).</summary>
    public double KilogramsForce => InKilogramsForce.NumberOf(Si);

    /// <summary>Sum.</summary>
    public static Force operator +(Force left, Force right) => FromSi(left.Si + right.Si);

    /// <summary>Difference.</summary>
    public static Force operator -(Force left, Force right) => FromSi(left.Si - right.Si);

    /// <summary>Opposite direction.</summary>
    public static Force operator -(Force value) => FromSi(-value.Si);

    /// <summary>Multiple.</summary>
    public static Force operator *(Force left, double right) => FromSi(left.Si * right);

    /// <summary>Multiple.</summary>
    public static Force operator *(double left, Force right) => right * left;

    /// <summary>Fraction.</summary>
    public static Force operator /(Force left, double right) => FromSi(left.Si / right);

    /// <summary>Ratio of two of the same kind, without unit; refused when the divisor is 0.</summary>
    public static double operator /(Force left, Force right) => Guard.Ratio(left.Si, right.Si, "force");

    /// <summary>Power from force times speed.</summary>
    public static Power operator *(Force left, Speed right) => Power.FromSi(left.Si * right.Si);

    /// <summary>Energy from force times length.</summary>
    public static Energy operator *(Force left, Length right) => Energy.FromSi(left.Si * right.Si);

    /// <summary>Impulse from force times duration.</summary>
    public static Impulse operator *(Force left, Duration right) => Impulse.FromSi(left.Si * right.Si);

    /// <summary>Acceleration from force over mass.</summary>
    public static Acceleration operator /(Force left, Mass right) => Acceleration.FromSi(left.Si / right.Si);

    /// <summary>The same force per kilogram of body mass.</summary>
    /// <param name="bodyMass">Body mass, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Body mass is 0.</exception>
    public ForcePerMass Per(Mass bodyMass) => bodyMass > Mass.Zero ? ForcePerMass.FromSi(Si / bodyMass.Si)
        : throw Guard.Out(nameof(bodyMass), bodyMass.Si, "body mass must be above 0 kg");

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
    /// <exception cref="FormatException">Not a unit of this quantity.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => QuantityText.Format(Si, Units, format, formatProvider);
}
