using System.Globalization;

namespace Analytics.Quantities;

/// <summary>
/// Powers of mass, length, time and plane angle in a quantity. Angle is kept apart, so that a lean in degrees is not taken for a bare ratio.
/// Powers may be broken numbers, for scores such as strength over body mass to the 0.67.
/// </summary>
/// <param name="Mass">Power of mass.</param>
/// <param name="Length">Power of length.</param>
/// <param name="Time">Power of time.</param>
/// <param name="Angle">Power of plane angle.</param>
public readonly record struct Dimension(double Mass, double Length, double Time, double Angle = 0)
{
    // Powers such as 0.67 come from sums of decimals, which do not meet to the last bit.
    private const double Alike = 1e-9;

    /// <summary>A bare number.</summary>
    public static Dimension None => default;

    /// <summary>Whether this is a bare number.</summary>
    public bool IsNone => IsSameAs(None);

    /// <summary>Whether two dimensions are the same but for rounding of their powers.</summary>
    /// <param name="other">The other.</param>
    public bool IsSameAs(Dimension other) => Near(Mass, other.Mass) && Near(Length, other.Length) && Near(Time, other.Time) && Near(Angle, other.Angle);

    /// <summary>Dimension of a product.</summary>
    public static Dimension operator *(Dimension left, Dimension right)
        => new(left.Mass + right.Mass, left.Length + right.Length, left.Time + right.Time, left.Angle + right.Angle);

    /// <summary>Dimension of a ratio.</summary>
    public static Dimension operator /(Dimension left, Dimension right) => left * right.ToPower(-1);

    /// <summary>Dimension of a power.</summary>
    /// <param name="power">The power.</param>
    public Dimension ToPower(double power) => new(Mass * power, Length * power, Time * power, Angle * power);

    /// <summary>The coherent SI unit, for example <c>kg·m/s</c>; <c>1</c> for a bare number.</summary>
    public override string ToString()
    {
        (string Symbol, double Power)[] parts = [("kg", Mass), ("m", Length), ("rad", Angle), ("s", Time)];
        var above = parts.Where(p => p.Power > Alike).Select(p => Text(p.Symbol, p.Power)).ToList();
        var below = parts.Where(p => p.Power < -Alike).Select(p => Text(p.Symbol, -p.Power)).ToList();
        var top = above.Count == 0 ? "1" : string.Join("·", above);
        return below.Count == 0 ? top : $"{top}/{(below.Count == 1 ? below[0] : $"({string.Join("·", below)})")}";
    }

    private static bool Near(double a, double b) => Math.Abs(a - b) < Alike;

    private static string Text(string symbol, double power)
        => Near(power, 1) ? symbol : Near(power, 2) ? symbol + "²" : Near(power, 3) ? symbol + "³" : string.Create(CultureInfo.InvariantCulture, $"{symbol}^{Math.Round(power, 6)}");
}
