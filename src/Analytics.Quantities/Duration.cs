using System.Globalization;
using System.Numerics;

namespace Analytics.Quantities;

/// <summary>Duration, held in seconds.</summary>
public readonly record struct Duration : IQuantity<Duration>, IUnaryNegationOperators<Duration, Duration>
{
    private static readonly Unit InSeconds = new("s", 1);
    private static readonly Unit InMilliseconds = new("ms", 1e-3);
    private static readonly Unit InMinutes = new("min", 60);
    private static readonly Unit InHours = new("h", 3600);

    private Duration(double si) => Si = si;

    /// <inheritdoc/>
    public double Si { get; }

    /// <inheritdoc/>
    public string SiUnit => InSeconds.Symbol;

    /// <inheritdoc/>
    public static Duration Zero => default;

    /// <inheritdoc/>
    public static IReadOnlyList<Unit> Units { get; } = [InSeconds, InMilliseconds, InMinutes, InHours];

    /// <inheritdoc/>
    public static Duration FromSi(double si) => new(Guard.Finite(si, InSeconds, "duration"));

    /// <summary>A duration from seconds.</summary>
    /// <param name="seconds">Finite; in s.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Duration FromSeconds(double seconds) => new(Guard.Finite(seconds, InSeconds, "duration"));

    /// <summary>A duration from milliseconds.</summary>
    /// <param name="milliseconds">Finite; in ms.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Duration FromMilliseconds(double milliseconds) => new(Guard.Finite(milliseconds, InMilliseconds, "duration"));

    /// <summary>A duration from minutes.</summary>
    /// <param name="minutes">Finite; in min.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Duration FromMinutes(double minutes) => new(Guard.Finite(minutes, InMinutes, "duration"));

    /// <summary>A duration from hours.</summary>
    /// <param name="hours">Finite; in h.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Duration FromHours(double hours) => new(Guard.Finite(hours, InHours, "duration"));

    /// <summary>The duration in seconds (s).</summary>
    public double Seconds => Si;

    /// <summary>The duration in milliseconds (ms).</summary>
    public double Milliseconds => InMilliseconds.NumberOf(Si);

    /// <summary>The duration in minutes (min).</summary>
    public double Minutes => InMinutes.NumberOf(Si);

    /// <summary>The duration in hours (h).</summary>
    public double Hours => InHours.NumberOf(Si);

    /// <summary>Sum.</summary>
    public static Duration operator +(Duration left, Duration right) => FromSi(left.Si + right.Si);

    /// <summary>Difference.</summary>
    public static Duration operator -(Duration left, Duration right) => FromSi(left.Si - right.Si);

    /// <summary>Opposite direction.</summary>
    public static Duration operator -(Duration value) => FromSi(-value.Si);

    /// <summary>Multiple.</summary>
    public static Duration operator *(Duration left, double right) => FromSi(left.Si * right);

    /// <summary>Multiple.</summary>
    public static Duration operator *(double left, Duration right) => right * left;

    /// <summary>Fraction.</summary>
    public static Duration operator /(Duration left, double right) => FromSi(left.Si / right);

    /// <summary>Ratio of two of the same kind, without unit; refused when the divisor is 0.</summary>
    public static double operator /(Duration left, Duration right) => Guard.Ratio(left.Si, right.Si, "duration");

    /// <summary>Length from duration times speed.</summary>
    public static Length operator *(Duration left, Speed right) => Length.FromSi(left.Si * right.Si);

    /// <summary>Impulse from duration times force.</summary>
    public static Impulse operator *(Duration left, Force right) => right * left;

    /// <summary>Energy from duration times power.</summary>
    public static Energy operator *(Duration left, Power right) => right * left;

    /// <summary>Speed from duration times acceleration.</summary>
    public static Speed operator *(Duration left, Acceleration right) => right * left;

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
    /// <exception cref="FormatException">Not a unit of this quantity.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => QuantityText.Format(Si, Units, format, formatProvider);
}
