using System.Globalization;

namespace Analytics.Quantities;

/// <summary>Duration, held in seconds.</summary>
public readonly record struct Duration : IQuantity<Duration>
{
    private Duration(double si) => Si = si;

    /// <inheritdoc/>
    public double Si { get; }

    /// <inheritdoc/>
    public string SiUnit => "s";

    /// <inheritdoc/>
    public static Duration Zero => default;

    /// <inheritdoc/>
    public static IReadOnlyList<Unit> Units { get; } =
    [
        new("s", 1),
        new("ms", 1e-3),
        new("min", 60),
        new("h", 3600),
    ];

    /// <inheritdoc/>
    public static Duration FromSi(double si) => new(Guard.Finite(si, "duration", "s"));

    /// <summary>Makes a duration from seconds.</summary>
    /// <param name="seconds">Finite; in s.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Duration FromSeconds(double seconds) => FromSi(seconds);

    /// <summary>Makes a duration from milliseconds.</summary>
    /// <param name="milliseconds">Finite; in ms.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Duration FromMilliseconds(double milliseconds) => FromSi(Guard.Finite(milliseconds, "duration", "ms") * 1e-3);

    /// <summary>Makes a duration from minutes.</summary>
    /// <param name="minutes">Finite; in min.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Duration FromMinutes(double minutes) => FromSi(Guard.Finite(minutes, "duration", "min") * 60);

    /// <summary>Makes a duration from hours.</summary>
    /// <param name="hours">Finite; in h.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Duration FromHours(double hours) => FromSi(Guard.Finite(hours, "duration", "h") * 3600);

    /// <summary>The duration in seconds (s).</summary>
    public double Seconds => Si;

    /// <summary>The duration in milliseconds (ms).</summary>
    public double Milliseconds => Si / 1e-3;

    /// <summary>The duration in minutes (min).</summary>
    public double Minutes => Si / 60;

    /// <summary>The duration in hours (h).</summary>
    public double Hours => Si / 3600;

    /// <summary>Sum.</summary>
    public static Duration operator +(Duration left, Duration right) => FromSi(left.Si + right.Si);

    /// <summary>Difference.</summary>
    public static Duration operator -(Duration left, Duration right) => FromSi(left.Si - right.Si);

    /// <summary>Opposite direction.</summary>
    public static Duration operator -(Duration value) => FromSi(-value.Si);

    /// <summary>Multiple.</summary>
    public static Duration operator *(Duration left, double right) => FromSi(left.Si * right);

    /// <summary>Multiple.</summary>
    public static Duration operator *(double left, Duration right) => FromSi(left * right.Si);

    /// <summary>Fraction.</summary>
    public static Duration operator /(Duration left, double right) => FromSi(left.Si / right);

    /// <summary>Ratio of two of the same kind, without unit.</summary>
    public static double operator /(Duration left, Duration right) => left.Si / right.Si;

    /// <summary>Length from duration times speed.</summary>
    public static Length operator *(Duration left, Speed right) => Length.FromMetres(left.Seconds * right.MetresPerSecond);

    /// <summary>Less.</summary>
    public static bool operator <(Duration left, Duration right) => left.Si < right.Si;

    /// <summary>Greater.</summary>
    public static bool operator >(Duration left, Duration right) => left.Si > right.Si;

    /// <summary>Less or equal.</summary>
    public static bool operator <=(Duration left, Duration right) => left.Si <= right.Si;

    /// <summary>Greater or equal.</summary>
    public static bool operator >=(Duration left, Duration right) => left.Si >= right.Si;

    /// <inheritdoc/>
    public int CompareTo(Duration other) => Si.CompareTo(other.Si);

    /// <summary>Number and SI unit, invariant culture.</summary>
    public override string ToString() => ToString(null, CultureInfo.InvariantCulture);

    /// <summary>Number and unit; <paramref name="format"/> is a unit symbol, then an optional number format after a bar: <c>"h|0.0"</c>.</summary>
    public string ToString(string? format, IFormatProvider? formatProvider) => QuantityText.Format(Si, Units, format, formatProvider);
}
