using Analytics.Statistics.Results;

namespace Analytics.Statistics.Association;

/// <summary>A correlation with the blur of two unreliable tests taken off: r/√(rxx ryy) [spearman1904].</summary>
/// <param name="Observed">Correlation of the values as measured.</param>
/// <param name="ReliabilityX">Reliability (intraclass correlation) of x, above 0 and at most 1.</param>
/// <param name="ReliabilityY">Reliability of y, above 0 and at most 1.</param>
public sealed record Attenuation(double Observed, double ReliabilityX, double ReliabilityY) : Result
{
    /// <summary>The corrected correlation. May lie beyond ±1, which no true correlation does; see <see cref="IsImpossible"/>. Never clipped.</summary>
    public double Corrected => Observed / (Math.Sqrt(ReliabilityX) * Math.Sqrt(ReliabilityY));

    /// <summary>Whether the corrected value lies beyond ±1: by chance, or because the reliabilities are of another squad or leave out error that both tests share.</summary>
    public bool IsImpossible => Math.Abs(Corrected) > 1;

    /// <summary>Checks and corrects.</summary>
    /// <param name="observed">−1 to 1.</param>
    /// <param name="reliabilityX">Above 0 and at most 1.</param>
    /// <param name="reliabilityY">Above 0 and at most 1.</param>
    public static Attenuation Of(double observed, double reliabilityX, double reliabilityY)
    {
        if (!(Math.Abs(observed) <= 1))
            throw new ArgumentOutOfRangeException(nameof(observed), observed, FormattableString.Invariant($"observed is {observed}; allowed: -1 to 1."));
        return new(observed, Reliability(reliabilityX, nameof(reliabilityX)), Reliability(reliabilityY, nameof(reliabilityY)));
    }

    /// <summary>The correlation two tests of these reliabilities will show of a true one: ρ √(rxx ryy).</summary>
    /// <param name="true">True correlation, −1 to 1.</param>
    /// <param name="reliabilityX">Above 0 and at most 1.</param>
    /// <param name="reliabilityY">Above 0 and at most 1.</param>
    public static double Expected(double @true, double reliabilityX, double reliabilityY)
        => Math.Abs(@true) <= 1
            ? @true * Math.Sqrt(Reliability(reliabilityX, nameof(reliabilityX)) * Reliability(reliabilityY, nameof(reliabilityY)))
            : throw new ArgumentOutOfRangeException(nameof(@true), @true, FormattableString.Invariant($"The true correlation is {@true}; allowed: -1 to 1."));

    /// <summary>A least-squares slope with the blur of x taken off: b/rxx. Error in y does not bias a slope.</summary>
    /// <param name="slope">Slope of y on x as measured.</param>
    /// <param name="reliabilityX">Above 0 and at most 1.</param>
    public static double CorrectedSlope(double slope, double reliabilityX) => Require.Finite(slope, nameof(slope)) / Reliability(reliabilityX, nameof(reliabilityX));

    /// <summary>The slope a test of this reliability will show of a true one: β rxx.</summary>
    /// <param name="slope">True slope.</param>
    /// <param name="reliabilityX">Above 0 and at most 1.</param>
    public static double ExpectedSlope(double slope, double reliabilityX) => Require.Finite(slope, nameof(slope)) * Reliability(reliabilityX, nameof(reliabilityX));

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Correlation without measurement error", "correction for attenuation [spearman1904]",
    [
        new("corrected correlation", Corrected),
        new("observed correlation", Observed),
        new("reliability of x", ReliabilityX),
        new("reliability of y", ReliabilityY),
    ])
    {
        Basis = "one observed correlation and two reliabilities, no error known",
        Remarks = IsImpossible
            ? ["The corrected value lies beyond 1, which no true correlation does: chance, or reliabilities that do not belong to these values. It is shown as it came out."]
            : [],
    };

    private static double Reliability(double value, string name)
        => value is > 0 and <= 1 ? value : throw new ArgumentOutOfRangeException(name, value, FormattableString.Invariant($"{name} is {value}; allowed: above 0, at most 1."));
}
