using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Association;

/// <summary>
/// A straight line when both columns carry error and the points scatter about the line beyond their errors: y is not decided by x alone, as Deming's line
/// takes it to be. Slope by moments, (sxy − error covariance)/(sxx − error variance of x) [fuller1987].
/// </summary>
public sealed record SlopeWithScatter : Result
{
    private SlopeWithScatter()
    {
    }

    /// <summary>Units of y per unit of x; null when the true spread of x cannot be told from its error.</summary>
    public required double? Slope { get; init; }

    /// <summary>Jackknife standard error.</summary>
    public required double? SlopeError { get; init; }

    /// <summary>Slope ± t(n − 1) SE; null without a slope.</summary>
    public required Interval? Interval { get; init; }

    /// <summary>p of an F test that x has no spread but error.</summary>
    public required double SpreadP { get; init; }

    /// <summary>True SD of x, its error taken off; null when it cannot be told.</summary>
    public required double? TrueSpread { get; init; }

    /// <summary>Pairs.</summary>
    public required int N { get; init; }

    /// <summary>The line for known errors.</summary>
    /// <param name="x">At least four finite values, not all equal.</param>
    /// <param name="y">The other value of each pair.</param>
    /// <param name="errorVarianceX">Variance of the error of x, above 0.</param>
    /// <param name="errorCovariance">Covariance of the errors of x and y.</param>
    /// <param name="errorDegreesOfFreedom">Degrees of freedom of the error variance; infinity when it is known.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    public static SlopeWithScatter Of(
        IReadOnlyList<double> x, IReadOnlyList<double> y, double errorVarianceX, double errorCovariance = 0,
        double errorDegreesOfFreedom = double.PositiveInfinity, double level = 0.95)
    {
        Paired.Require(x, y, 4);
        Paired.Varies(x, nameof(x), "a line");
        Require.Positive(errorVarianceX, nameof(errorVarianceX));
        Require.Finite(errorCovariance, nameof(errorCovariance));
        Require.DegreesOfFreedom(errorDegreesOfFreedom, nameof(errorDegreesOfFreedom));
        Require.Share(level, nameof(level));
        var (n, all) = (x.Count, Paired.Sums(x, y));
        var ratio = all.XX / (n - 1) / errorVarianceX;
        // An error known without doubt: chi-square, the limit of F.
        var p = double.IsInfinity(errorDegreesOfFreedom) ? 1 - ChiSquareLaw.Cdf(ratio * (n - 1), n - 1) : FisherLaw.UpperTail(ratio, n - 1, errorDegreesOfFreedom);
        var seen = p <= 0.05 && ratio > 1;
        double? slope = seen ? At(all) : null, error = null;
        if (seen)
        {
            var without = new double[n];
            for (var i = 0; i < n; i++)
            {
                // Sums without one pair follow from the sums of all.
                double dx = x[i] - all.MeanX, dy = y[i] - all.MeanY, f = n / (n - 1.0);
                without[i] = At(all with { XX = all.XX - f * dx * dx, XY = all.XY - f * dx * dy, N = n - 1 });
            }

            var mean = without.Average();
            error = Math.Sqrt((n - 1.0) / n * without.Sum(v => (v - mean) * (v - mean)));
            if (!double.IsFinite(error.Value)) error = null;
        }

        return new()
        {
            Slope = slope,
            SlopeError = error,
            Interval = slope is { } s && error is { } e ? new Interval(s - StudentLaw.TwoSided(level, n - 1) * e, s + StudentLaw.TwoSided(level, n - 1) * e, level) : null,
            SpreadP = p,
            TrueSpread = seen ? Math.Sqrt(all.XX / (n - 1) - errorVarianceX) : null,
            N = n,
        };

        double At(PairSums s) => (s.XY / (s.N - 1) - errorCovariance) / (s.XX / (s.N - 1) - errorVarianceX);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Line with error in both columns and scatter of its own", "by moments, error variance and covariance taken off [fuller1987]; jackknife error",
        [new("slope", Slope) { StandardError = SlopeError, Interval = Interval }, new("true SD of x", TrueSpread), new("p of no true spread of x", SpreadP)])
    {
        Basis = FormattableString.Invariant($"{N} pairs"),
        Remarks = Slope is null ? ["The spread of x is not discernibly more than its error: the slope cannot be told."] : [],
    };
}
