using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Association;

/// <summary>A straight line when both columns carry error: Deming, orthogonal and geometric mean [fuller1987; linnet1993; pearson1901].</summary>
public sealed record ErrorsInBoth : Result
{
    private ErrorsInBoth()
    {
    }

    /// <summary>Units of y per unit of x.</summary>
    public required double Slope { get; init; }

    /// <summary>y at x = 0.</summary>
    public required double Intercept { get; init; }

    /// <summary>λ = error variance of y over error variance of x (some authors turn it over); null for the geometric mean.</summary>
    public required double? Lambda { get; init; }

    /// <summary>Jackknife standard error of the slope; null with fewer than four pairs.</summary>
    public double? SlopeError => Jackknife?.SlopeError;

    /// <summary>Jackknife standard error of the intercept; null with fewer than four pairs.</summary>
    public double? InterceptError => Jackknife?.InterceptError;

    /// <summary>Mean of the jackknife pseudo-values and their errors; null with fewer than four pairs or where a line without one pair does not exist.</summary>
    public required LineJackknife? Jackknife { get; init; }

    /// <summary>Interval of the slope, ± t(n − 2) jackknife SE; null without one.</summary>
    public required Interval? Interval { get; init; }

    /// <summary>Sum of squared distances at right angles to the line; has a meaning when x and y share one unit.</summary>
    public required double PerpendicularSquares { get; init; }

    /// <summary>Pairs.</summary>
    public required int N { get; init; }

    /// <summary>Deming's line for a known ratio of error variances.</summary>
    /// <param name="x">At least three finite values, not all equal.</param>
    /// <param name="y">The other value of each pair; must go with x or against it.</param>
    /// <param name="lambda">Error variance of y over that of x, above 0.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">x and y are unrelated to the last digit: no line is better than its mirror image.</exception>
    public static ErrorsInBoth Deming(IReadOnlyList<double> x, IReadOnlyList<double> y, double lambda, double level = 0.95)
    {
        Require.Positive(lambda, nameof(lambda));
        return Fit(x, y, s => DemingSlope(s, lambda), lambda, level);
    }

    /// <summary>The line of least squared right-angle distance: λ = 1. Depends on the units of x and y [pearson1901].</summary>
    /// <param name="x">At least three finite values, not all equal.</param>
    /// <param name="y">The other value of each pair.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    public static ErrorsInBoth Orthogonal(IReadOnlyList<double> x, IReadOnlyList<double> y, double level = 0.95) => Deming(x, y, 1, level);

    /// <summary>The geometric mean of the two least-squares lines: slope ± SD(y)/SD(x). Says how the spreads compare even where x and y are hardly related.</summary>
    /// <param name="x">At least three finite values, not all equal.</param>
    /// <param name="y">The other value of each pair.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    public static ErrorsInBoth GeometricMean(IReadOnlyList<double> x, IReadOnlyList<double> y, double level = 0.95)
        => Fit(x, y, s => Math.Sign(s.XY) * Math.Sqrt(s.YY / s.XX), null, level);

    /// <summary>Deming's line with λ from two readings of each: ratio of the error variances Σd²/2n.</summary>
    /// <param name="x1">First readings of x.</param>
    /// <param name="x2">Second readings of x.</param>
    /// <param name="y1">First readings of y.</param>
    /// <param name="y2">Second readings of y.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    /// <remarks>The interval takes λ as known.</remarks>
    public static ErrorsInBoth DemingOfMeans(
        IReadOnlyList<double> x1, IReadOnlyList<double> x2, IReadOnlyList<double> y1, IReadOnlyList<double> y2, double level = 0.95)
    {
        Paired.Require(x1, x2, 3);
        Paired.Require(y1, y2, 3);
        Paired.SameLength(x1, y1, nameof(y1));
        double errorX = Squares(x1, x2), errorY = Squares(y1, y2);
        if (!(errorX > 0 && errorY > 0))
            throw new ArgumentException($"The two readings of {(errorX > 0 ? "y" : "x")} never differ; an error ratio needs readings that do. Give lambda instead.", errorX > 0 ? nameof(y2) : nameof(x2));
        return Deming([.. x1.Zip(x2, (a, b) => (a + b) / 2)], [.. y1.Zip(y2, (a, b) => (a + b) / 2)], errorY / errorX, level);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Line with error in both columns", Lambda is { } l
        ? FormattableString.Invariant($"Deming, error variance of y over that of x {l:0.####} [linnet1993]; jackknife errors")
        : "geometric mean of both regressions; jackknife errors",
    [
        new("slope", Slope) { StandardError = SlopeError, Interval = Interval, DegreesOfFreedom = Interval is null ? null : N - 2 },
        new("intercept", Intercept) { StandardError = InterceptError },
    ])
    {
        Basis = FormattableString.Invariant($"{N} pairs"),
        Remarks = Jackknife is null ? ["No error: too few pairs, or a line without one of them does not exist."] : [],
    };

    private static double Squares(IReadOnlyList<double> a, IReadOnlyList<double> b) => a.Zip(b, (p, q) => (p - q) * (p - q)).Sum();

    private static ErrorsInBoth Fit(IReadOnlyList<double> x, IReadOnlyList<double> y, Func<PairSums, double> slopeOf, double? lambda, double level)
    {
        Paired.Require(x, y, 3);
        Paired.Varies(x, nameof(x), "a line");
        Paired.Varies(y, nameof(y), "a line");
        Require.Share(level, nameof(level));
        var (n, sums) = (x.Count, Paired.Sums(x, y));
        var slope = Unrelated(sums) ? double.NaN : slopeOf(sums);
        if (!double.IsFinite(slope))
            throw new ArgumentException($"x and y of the {n} pairs are unrelated to the last digit; a line and its mirror image fit alike. A line with error in both needs related columns.", nameof(y));
        var jackknife = LineJackknife.Of(x, y, slope, s => Unrelated(s) ? double.NaN : slopeOf(s));
        var reach = n > 3 ? StudentLaw.TwoSided(level, n - 2) * jackknife?.SlopeError : null;
        return new()
        {
            Slope = slope,
            Intercept = sums.MeanY - slope * sums.MeanX,
            Lambda = lambda,
            Jackknife = jackknife,
            Interval = reach is { } r ? new Interval(slope - r, slope + r, level) : null,
            PerpendicularSquares = (sums.YY - 2 * slope * sums.XY + slope * slope * sums.XX) / (1 + slope * slope),
            N = n,
        };
    }

    private static bool Unrelated(PairSums s) => !(s.XX > 0 && s.YY > 0 && Math.Abs(s.XY) > 1e-14 * Math.Sqrt(s.XX) * Math.Sqrt(s.YY));

    // The root is written so that the two large terms never cancel.
    private static double DemingSlope(PairSums s, double lambda)
    {
        var d = s.YY - lambda * s.XX;
        var root = Math.Sqrt(d * d + 4 * lambda * s.XY * s.XY);
        return d >= 0 ? (d + root) / (2 * s.XY) : 2 * lambda * s.XY / (root - d);
    }
}
