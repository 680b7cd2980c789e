using System.Globalization;
using System.Numerics;

namespace Analytics.Quantities;

/// <summary>Speed, held in metres per second.</summary>
public readonly record struct Speed : IQuantity<Speed>, IUnaryNegationOperators<Speed, Speed>
{
    private static readonly Unit InMetresPerSecond = new("m/s", 1);
    private static readonly Unit InKilometresPerHour = new("km/h", 1000.0 / 3600.0);
    private static readonly Unit InMilesPerHour = new("mph", UnitFactors.MetresPerMile / 3600.0);
    private static readonly Unit InYardsPerSecond = new("yd/s", UnitFactors.MetresPerYard);
    private static readonly Unit InFeetPerSecond = new("ft/s", UnitFactors.MetresPerFoot);

    private Speed(double si) => Si = si;

    /// <inheritdoc/>
    public double Si { get; }

    /// <inheritdoc/>
    public string SiUnit => InMetresPerSecond.Symbol;

    /// <inheritdoc/>
    public static Speed Zero => default;

    /// <inheritdoc/>
    public static IReadOnlyList<Unit> Units { get; } = [InMetresPerSecond, InKilometresPerHour, InMilesPerHour, InYardsPerSecond, InFeetPerSecond];

    /// <inheritdoc/>
    public static Speed FromSi(double si) => new(Guard.Finite(si, InMetresPerSecond, "speed"));

    /// <summary>A speed from metres per second.</summary>
    /// <param name="metresPerSecond">Finite; in m/s.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Speed FromMetresPerSecond(double metresPerSecond) => new(Guard.Finite(metresPerSecond, InMetresPerSecond, "speed"));

    /// <summary>A speed from kilometres per hour.</summary>
    /// <param name="kilometresPerHour">Finite; in km/h.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Speed FromKilometresPerHour(double kilometresPerHour) => new(Guard.Finite(kilometresPerHour, InKilometresPerHour, "speed"));

    /// <summary>A speed from miles per hour.</summary>
    /// <param name="milesPerHour">Finite; in mph.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Speed FromMilesPerHour(double milesPerHour) => new(Guard.Finite(milesPerHour, InMilesPerHour, "speed"));

    /// <summary>A speed from yards per second.</summary>
    /// <param name="yardsPerSecond">Finite; in yd/s.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Speed FromYardsPerSecond(double yardsPerSecond) => new(Guard.Finite(yardsPerSecond, InYardsPerSecond, "speed"));

    /// <summary>A speed from feet per second.</summary>
    /// <param name="feetPerSecond">Finite; in ft/s.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Speed FromFeetPerSecond(double feetPerSecond) => new(Guard.Finite(feetPerSecond, InFeetPerSecond, "speed"));

    /// <summary>The speed in metres per second (m/s).</summary>
    public double MetresPerSecond => Si;

    /// <summary>The speed in kilometres per hour (km/h).</summary>
    public double KilometresPerHour => InKilometresPerHour.NumberOf(Si);

    /// <summary>The speed in miles per hour (mph).</summary>
    public double MilesPerHour => InMilesPerHour.NumberOf(Si);

    /// <summary>The speed in yards per second (yd/s).</summary>
    public double YardsPerSecond => InYardsPerSecond.NumberOf(Si);

    /// <summary>The speed in feet per second (ft/s).</summary>
    public double FeetPerSecond => InFeetPerSecond.NumberOf(Si);

    /// <summary>Sum.</summary>
    public static Speed operator +(Speed left, Speed right) => FromSi(left.Si + right.Si);

    /// <summary>Difference.</summary>
    public static Speed operator -(Speed left, Speed right) => FromSi(left.Si - right.Si);

    /// <summary>Opposite direction.</summary>
    public static Speed operator -(Speed value) => FromSi(-value.Si);

    /// <summary>Multiple.</summary>
    public static Speed operator *(Speed left, double right) => FromSi(left.Si * right);

    /// <summary>Multiple.</summary>
    public static Speed operator *(double left, Speed right) => right * left;

    /// <summary>Fraction.</summary>
    public static Speed operator /(Speed left, double right) => FromSi(left.Si / right);

    /// <summary>Ratio of two of the same kind, without unit; refused when the divisor is 0.</summary>
    public static double operator /(Speed left, Speed right) => Guard.Ratio(left.Si, right.Si, "speed");

    /// <summary>Length from speed times duration.</summary>
    public static Length operator *(Speed left, Duration right) => Length.FromSi(left.Si * right.Si);

    /// <summary>Acceleration from speed over duration.</summary>
    public static Acceleration operator /(Speed left, Duration right) => Acceleration.FromSi(left.Si / right.Si);

    /// <summary>Momentum from speed times mass.</summary>
    public static Momentum operator *(Speed left, Mass right) => Momentum.FromSi(left.Si * right.Si);

    /// <summary>Power from speed times force.</summary>
    public static Power operator *(Speed left, Force right) => right * left;

    /// <summary>Less.</summary>
    public static bool operator <(Speed left, Speed right) => left.Si < right.Si;

    /// <summary>Greater.</summary>
    public static bool operator >(Speed left, Speed right) => left.Si > right.Si;

    /// <summary>Less or equal.</summary>
    public static bool operator <=(Speed left, Speed right) => left.Si <= right.Si;

    /// <summary>Greater or equal.</summary>
    public static bool operator >=(Speed left, Speed right) => left.Si >= right.Si;

    /// <inheritdoc/>
    public int CompareTo(Speed other) => Si.CompareTo(other.Si);

    /// <summary>Number and SI unit, invariant culture.</summary>
    public override string ToString() => ToString(null, CultureInfo.InvariantCulture);

    /// <summary>Number and unit; <paramref name="format"/> is a unit symbol, then an optional number format after a bar: <c>"ft/s|0.0"</c>.</summary>
    /// <exception cref="FormatException">Not a unit of this quantity.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => QuantityText.Format(Si, Units, format, formatProvider);
}
