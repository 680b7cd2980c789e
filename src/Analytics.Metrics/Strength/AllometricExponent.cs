using System.Globalization;

namespace Analytics.Metrics.Strength;

/// <summary>The power of body mass with which strength grows, and where that number comes from.</summary>
public sealed record AllometricExponent
{
    /// <summary>Names an exponent.</summary>
    /// <param name="value">The exponent, 0 to 1.5.</param>
    /// <param name="basis">Lift and sample, or theory.</param>
    /// <param name="sourceKey">Key into docs/references.md.</param>
    /// <exception cref="ArgumentOutOfRangeException">Exponent outside 0 to 1.5.</exception>
    public AllometricExponent(double value, string basis, string sourceKey)
    {
        if (value is not (>= 0 and <= 1.5))
            throw new ArgumentOutOfRangeException(nameof(value), value, string.Create(CultureInfo.InvariantCulture, $"The exponent must be 0 to 1.5; got {value}."));
        Value = value;
        Basis = basis;
        SourceKey = sourceKey;
    }

    /// <summary>The exponent b in strength / body mass^b.</summary>
    public double Value { get; }

    /// <summary>Lift and sample, or theory.</summary>
    public string Basis { get; }

    /// <summary>Key into docs/references.md.</summary>
    public string SourceKey { get; }

    /// <summary>2/3, from geometric similarity. Over-corrects in football players [oba2014].</summary>
    public static AllometricExponent TwoThirds { get; } = new(2.0 / 3.0, "theory: geometric similarity", "oba2014");

    /// <summary>0.559: bench press of 207 Division I-A football players.</summary>
    public static AllometricExponent FootballBenchPress { get; } = new(0.559, "bench press, 207 Division I-A football players", "oba2014");

    /// <summary>0.287: clean of 88 Division I-A football players.</summary>
    public static AllometricExponent FootballClean { get; } = new(0.287, "clean, 88 Division I-A football players", "oba2014");

    /// <summary>0.496: squat of 86 Division I-A football players.</summary>
    public static AllometricExponent FootballSquat { get; } = new(0.496, "squat, 86 Division I-A football players", "oba2014");
}

/// <summary>An allometric score with the exponent it was made with.</summary>
/// <param name="Value">The score.</param>
/// <param name="Exponent">The exponent.</param>
public sealed record AllometricScore(double Value, AllometricExponent Exponent)
{
    /// <summary>Unit of the score, exponent included, for example <c>kg/kg^0.559</c>.</summary>
    public string Unit => string.Create(CultureInfo.InvariantCulture, $"kg/kg^{Exponent.Value:0.###}");

    /// <summary>Score and unit.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Value:0.##} {Unit}");
}
