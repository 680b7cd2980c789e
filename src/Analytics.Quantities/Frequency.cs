using System.Globalization;

namespace Analytics.Quantities;

/// <summary>Frequency, held in hertz. Never negative.</summary>
public readonly record struct Frequency : IQuantity<Frequency>
{
    private static readonly Unit InHertz = new("Hz", 1);
    private static readonly Unit InPerMinute = new("1/min", 1.0 / 60.0);

    private Frequency(double si) => Si = si;

    /// <inheritdoc/>
    public double Si { get; }

    /// <inheritdoc/>
    public string SiUnit => InHertz.Symbol;

    /// <inheritdoc/>
    public static Frequency Zero => default;

    /// <inheritdoc/>
    public static IReadOnlyList<Unit> Units { get; } = [InHertz, InPerMinute];

    /// <inheritdoc/>
    public static Frequency FromSi(double si) => new(Guard.NotNegative(si, InHertz, "frequency"));

    /// <summary>A frequency from hertz.</summary>
    /// <param name="hertz">Finite, 0 or more; in Hz.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Frequency FromHertz(double hertz) => new(Guard.NotNegative(hertz, InHertz, "frequency"));

    /// <summary>A frequency from per minute.</summary>
    /// <param name="perMinute">Finite, 0 or more; in 1/min.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Frequency FromPerMinute(double perMinute) => new(Guard.NotNegative(perMinute, InPerMinute, "frequency"));

    /// <summary>The frequency in hertz (Hz).</summary>
    public double Hertz => Si;

    /// <summary>The frequency in per minute (1/min).</summary>
    public double PerMinute => InPerMinute.NumberOf(Si);

    /// <summary>Sum.</summary>
    public static Frequency operator +(Frequency left, Frequency right) => FromSi(left.Si + right.Si);

    /// <summary>Difference; refused when it would be negative.</summary>
    public static Frequency operator -(Frequency left, Frequency right) => FromSi(left.Si - right.Si);

    /// <summary>Multiple.</summary>
    public static Frequency operator *(Frequency left, double right) => FromSi(left.Si * right);

    /// <summary>Multiple.</summary>
    public static Frequency operator *(double left, Frequency right) => right * left;

    /// <summary>Fraction.</summary>
    public static Frequency operator /(Frequency left, double right) => FromSi(left.Si / right);

    /// <summary>Ratio of two of the same kind, without unit; refused when the divisor is 0.</summary>
    public static double operator /(Frequency left, Frequency right) => Guard.Ratio(left.Si, right.Si, "frequency");

    /// <summary>Less.</summary>
    public static bool operator <(Frequency left, Frequency right) => left.Si < right.Si;

    /// <summary>Greater.</summary>
    public static bool operator >(Frequency left, Frequency right) => left.Si > right.Si;

    /// <summary>Less or equal.</summary>
    public static bool operator <=(Frequency left, Frequency right) => left.Si <= right.Si;

    /// <summary>Greater or equal.</summary>
    public static bool operator >=(Frequency left, Frequency right) => left.Si >= right.Si;

    /// <inheritdoc/>
    public int CompareTo(Frequency other) => Si.CompareTo(other.Si);

    /// <summary>Number and SI unit, invariant culture.</summary>
    public override string ToString() => ToString(null, CultureInfo.InvariantCulture);

    /// <summary>Number and unit; <paramref name="format"/> is a unit symbol, then an optional number format after a bar: <c>"1/min|0.0"</c>.</summary>
    /// <exception cref="FormatException">Not a unit of this quantity.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => QuantityText.Format(Si, Units, format, formatProvider);
}
