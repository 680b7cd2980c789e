using System.Globalization;

namespace Analytics.Quantities;

/// <summary>Speed, held in metres per second.</summary>
public readonly record struct Speed : IQuantity<Speed>
{
    private Speed(double si) => Si = si;

    /// <inheritdoc/>
    public double Si { get; }

    /// <inheritdoc/>
    public string SiUnit => "m/s";

    /// <inheritdoc/>
    public static Speed Zero => default;

    /// <inheritdoc/>
    public static IReadOnlyList<Unit> Units { get; } =
    [
        new("m/s", 1),
        new("km/h", 1000.0 / 3600.0),
        new("mph", UnitFactors.MetresPerMile / 3600.0),
        new("yd/s", UnitFactors.MetresPerYard),
        new("ft/s", UnitFactors.MetresPerFoot),
    ];

    /// <inheritdoc/>
    public static Speed FromSi(double si) => new(Guard.Finite(si, "speed", "m/s"));

    /// <summary>Makes a speed from metres per second.</summary>
    /// <param name="metresPerSecond">Finite; in m/s.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Speed FromMetresPerSecond(double metresPerSecond) => FromSi(metresPerSecond);

    /// <summary>Makes a speed from kilometres per hour.</summary>
    /// <param name="kilometresPerHour">Finite; in km/h.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Speed FromKilometresPerHour(double kilometresPerHour) => FromSi(Guard.Finite(kilometresPerHour, "speed", "km/h") * (1000.0 / 3600.0));

    /// <summary>Makes a speed from miles per hour.</summary>
    /// <param name="milesPerHour">Finite; in mph.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Speed FromMilesPerHour(double milesPerHour) => FromSi(Guard.Finite(milesPerHour, "speed", "mph") * (UnitFactors.MetresPerMile / 3600.0));

    /// <summary>Makes a speed from yards per second.</summary>
    /// <param name="yardsPerSecond">Finite; in yd/s.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Speed FromYardsPerSecond(double yardsPerSecond) => FromSi(Guard.Finite(yardsPerSecond, "speed", "yd/s") * UnitFactors.MetresPerYard);

    /// <summary>Makes a speed from feet per second.</summary>
    /// <param name="feetPerSecond">Finite; in ft/s.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Speed FromFeetPerSecond(double feetPerSecond) => FromSi(Guard.Finite(feetPerSecond, "speed", "ft/s") * UnitFactors.MetresPerFoot);

    /// <summary>The speed in metres per second (m/s).</summary>
    public double MetresPerSecond => Si;

    /// <summary>The speed in kilometres per hour (km/h).</summary>
    public double KilometresPerHour => Si / (1000.0 / 3600.0);

    /// <summary>The speed in miles per hour (mph).</summary>
    public double MilesPerHour => Si / (UnitFactors.MetresPerMile / 3600.0);

    /// <summary>The speed in yards per second (yd/s).</summary>
    public double YardsPerSecond => Si / UnitFactors.MetresPerYard;

    /// <summary>The speed in feet per second (ft/s).</summary>
    public double FeetPerSecond => Si / UnitFactors.MetresPerFoot;

    /// <summary>Sum.</summary>
    public static Speed operator +(Speed left, Speed right) => FromSi(left.Si + right.Si);

    /// <summary>Difference.</summary>
    public static Speed operator -(Speed left, Speed right) => FromSi(left.Si - right.Si);

    /// <summary>Opposite direction.</summary>
    public static Speed operator -(Speed value) => FromSi(-value.Si);

    /// <summary>Multiple.</summary>
    public static Speed operator *(Speed left, double right) => FromSi(left.Si * right);

    /// <summary>Multiple.</summary>
    public static Speed operator *(double left, Speed right) => FromSi(left * right.Si);

    /// <summary>Fraction.</summary>
    public static Speed operator /(Speed left, double right) => FromSi(left.Si / right);

    /// <summary>Ratio of two of the same kind, without unit.</summary>
    public static double operator /(Speed left, Speed right) => left.Si / right.Si;

    /// <summary>Length from speed times duration.</summary>
    public static Length operator *(Speed left, Duration right) => Length.FromMetres(left.MetresPerSecond * right.Seconds);

    /// <summary>Acceleration from speed over duration.</summary>
    public static Acceleration operator /(Speed left, Duration right) => Acceleration.FromMetresPerSecondSquared(left.MetresPerSecond / right.Seconds);

    /// <summary>Momentum from speed times mass.</summary>
    public static Momentum operator *(Speed left, Mass right) => Momentum.FromKilogramMetresPerSecond(left.MetresPerSecond * right.Kilograms);

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
    public string ToString(string? format, IFormatProvider? formatProvider) => QuantityText.Format(Si, Units, format, formatProvider);
}
