using Analytics.Statistics.Association;
using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Trends;

/// <summary>Test of a trend that only asks whether later values tend to be larger [mann1945; kendall1975].</summary>
public sealed record MannKendall : Result
{
    private MannKendall()
    {
    }

    /// <summary>Pairs that rise with time less pairs that fall.</summary>
    public required long S { get; init; }

    /// <summary>Variance of S without a trend, ties allowed for.</summary>
    public required double Variance { get; init; }

    /// <summary>(S ∓ 1)/√variance, 0 when S is 0.</summary>
    public required double Z { get; init; }

    /// <summary>Two-sided p by the normal law with continuity correction.</summary>
    public required double P { get; init; }

    /// <summary>Exact two-sided p for up to 50 values without ties; null otherwise.</summary>
    public required double? ExactP { get; init; }

    /// <summary>S over all pairs.</summary>
    public required double TauA { get; init; }

    /// <summary>S over the pairs that are not tied.</summary>
    public required double TauB { get; init; }

    /// <summary>Values.</summary>
    public required int N { get; init; }

    /// <summary>How alike successive values are after the median slope is taken off; null when nothing is left over.</summary>
    public required SerialCorrelation? SerialCorrelation { get; init; }

    /// <summary>
    /// Factor on the variance for values that carry over: n/n* = 1 + 2/(n(n − 1)(n − 2)) Σ (n − k)(n − k − 1)(n − k − 2) ρₖ [hamedrao1998], where
    /// ρₖ = (6/π) asin(φᵏ/2) is the rank correlation at lag k of a first-order series with the corrected φ. 1 when φ is 0, null when φ is not known.
    /// </summary>
    public double? VarianceFactor => SerialCorrelation?.Corrected is { } phi ? Factor(phi, N) : null;

    /// <summary>
    /// Two-sided p with the variance times <see cref="VarianceFactor"/>; null when that is not known. Measured false-trend rates at a nominal 5 % stand in
    /// docs/methods/trends.md; the published form, which estimates every ρₖ from the series, hardly helps below 40 values.
    /// </summary>
    public double? CorrectedP => VarianceFactor is { } f ? TwoSided(Z / Math.Sqrt(f)) : null;

    /// <summary>Tests a series.</summary>
    /// <param name="y">At least three finite values in the order of time, not all equal.</param>
    public static MannKendall Of(IReadOnlyList<double> y)
    {
        Require.Sample(y, 3, nameof(y));
        Paired.Varies(y, nameof(y), "a test of trend");
        double[] x = [.. Enumerable.Range(1, y.Count).Select(i => (double)i)];
        var counts = KendallCounts.Of(x, y);
        var z = counts.Z(corrected: true);
        var slope = PairSlopes.Middle(PairSlopes.Sorted(x, y));
        return new()
        {
            S = counts.S,
            Variance = counts.Variance,
            Z = z,
            P = TwoSided(z),
            ExactP = counts.TiedY == 0 ? KendallLaw.TwoSided(counts.Concordant, y.Count) : null,
            TauA = counts.TauA,
            TauB = counts.TauB,
            N = y.Count,
            SerialCorrelation = Trends.SerialCorrelation.OfResiduals(x, [.. y.Select((v, i) => v - slope * x[i])], y),
        };
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Test of trend", "Mann and Kendall, normal law with continuity correction [mann1945; kendall1975]",
    [
        new("p", P),
        new("p, corrected for successive values being alike", CorrectedP) { Note = CorrectedP is null ? "correlation of successive values not known" : "[hamedrao1998; hamed2009]" },
        new("tau-b", TauB),
        new("S", S) { StandardError = Math.Sqrt(Variance) },
        new("lag-1 correlation after the trend", SerialCorrelation?.LagOne),
    ])
    {
        Basis = FormattableString.Invariant($"{N} values"),
        Remarks = SerialCorrelation?.Remarks ?? [],
    };

    private static double TwoSided(double z) => 2 * NormalLaw.Cdf(-Math.Abs(z));

    private static double Factor(double phi, int n)
    {
        double sum = 0, power = 1;
        for (var k = 1; k < n - 2; k++)
        {
            power *= phi;
            sum += (n - k) * (n - k - 1.0) * (n - k - 2.0) * 6 / Math.PI * Math.Asin(power / 2);
        }

        return 1 + 2 * sum / (n * (n - 1.0) * (n - 2.0));
    }
}
