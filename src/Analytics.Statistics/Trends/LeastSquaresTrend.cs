using Analytics.Statistics.Association;
using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Trends;

/// <summary>A straight trend by least squares, with the Durbin–Watson statistic of its residuals [durbinwatson1950].</summary>
public sealed record LeastSquaresTrend : Result
{
    private LeastSquaresTrend()
    {
    }

    /// <summary>Units of y per unit of x.</summary>
    public required double Slope { get; init; }

    /// <summary>y at x = 0.</summary>
    public required double Intercept { get; init; }

    /// <summary>Standard error of the slope; null without degrees of freedom.</summary>
    public required double? SlopeError { get; init; }

    /// <summary>Standard error of the intercept; null without degrees of freedom.</summary>
    public required double? InterceptError { get; init; }

    /// <summary>Student's t interval of the slope; null without degrees of freedom.</summary>
    public required Interval? Interval { get; init; }

    /// <summary>Slope over its error; null when the line fits exactly or no degrees of freedom are left.</summary>
    public required double? T { get; init; }

    /// <summary>Two-sided p of <see cref="T"/>.</summary>
    public double? P => T is { } t ? 2 * StudentLaw.Cdf(-Math.Abs(t), N - 2) : null;

    /// <summary>√(residual squares/(n − 2)), unit of y; null without degrees of freedom.</summary>
    public required double? ResidualSd { get; init; }

    /// <summary>Share of the variance of y that the line holds; null when y does not vary.</summary>
    public required double? RSquared { get; init; }

    /// <summary>
    /// Σ(eᵢ − eᵢ₋₁)²/Σe²: near 2 when successive residuals are unrelated, toward 0 when alike, toward 4 when they alternate. Null when the line fits
    /// exactly or x does not ascend.
    /// </summary>
    public required double? DurbinWatson { get; init; }

    /// <summary>Correlation of successive residuals; null as <see cref="DurbinWatson"/>.</summary>
    public required SerialCorrelation? SerialCorrelation { get; init; }

    /// <summary>Points.</summary>
    public required int N { get; init; }

    /// <summary>The trend of y over x.</summary>
    /// <param name="x">Times or other positions, at least two different ones.</param>
    /// <param name="y">The value at each.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    public static LeastSquaresTrend Of(IReadOnlyList<double> x, IReadOnlyList<double> y, double level = 0.95)
    {
        Paired.Require(x, y, 2);
        Paired.Varies(x, nameof(x), "a slope");
        Require.Share(level, nameof(level));
        var (n, sums) = (x.Count, Paired.Sums(x, y));
        if (Math.Sqrt(sums.XX / n) < 1e-12 * Math.Abs(sums.MeanX))
            throw new ArgumentException(FormattableString.Invariant($"x varies by {Math.Sqrt(sums.XX / n)} about {sums.MeanX}: too little for double precision. Count x from its start."), nameof(x));
        var slope = sums.XY / sums.XX;
        double[] rest = [.. x.Zip(y, (a, b) => b - sums.MeanY - slope * (a - sums.MeanX))];
        var squares = rest.Sum(e => e * e);
        var sd = n > 2 ? Math.Sqrt(squares / (n - 2)) : (double?)null;
        var error = sd / Math.Sqrt(sums.XX);
        var reach = error * (n > 2 ? StudentLaw.TwoSided(level, n - 2) : 0);
        var serial = Trends.SerialCorrelation.OfResiduals(x, rest, y);
        return new()
        {
            Slope = slope,
            Intercept = sums.MeanY - slope * sums.MeanX,
            SlopeError = error,
            InterceptError = sd * Math.Sqrt(1.0 / n + sums.MeanX * sums.MeanX / sums.XX),
            Interval = reach is { } r ? new Interval(slope - r, slope + r, level) : null,
            T = error > 0 ? slope / error : null,
            ResidualSd = sd,
            RSquared = sums.YY > 0 ? 1 - squares / sums.YY : null,
            DurbinWatson = serial is null ? null : rest.Zip(rest.Skip(1), (a, b) => (b - a) * (b - a)).Sum() / squares,
            SerialCorrelation = serial,
            N = n,
        };
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Trend by least squares", "straight line by least squares, Student's t; Durbin and Watson [durbinwatson1950]",
    [
        new("slope", Slope) { Interval = Interval, StandardError = SlopeError, DegreesOfFreedom = N > 2 ? N - 2 : null },
        new("intercept", Intercept) { StandardError = InterceptError },
        new("p of the slope", P),
        new("residual SD", ResidualSd),
        new("R squared", RSquared),
        new("Durbin-Watson", DurbinWatson) { Note = "2 when successive residuals are unrelated" },
    ])
    {
        Basis = FormattableString.Invariant($"{N} points"),
        Remarks =
        [
            .. N == 2 ? ["Two points leave no degrees of freedom: no error can be stated."] : Array.Empty<string>(),
            .. SerialCorrelation?.Remarks ?? [],
        ],
    };
}
