using Analytics.Statistics.Association;
using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;
using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Trends;

/// <summary>How the limits of a median slope are read between two slopes.</summary>
public enum SlopeRanks
{
    /// <summary>Ranks rounded to the nearest slope. The default.</summary>
    Rounded,

    /// <summary>Straight interpolation between the two slopes.</summary>
    Interpolated,
}

/// <summary>A straight trend by the median of all slopes between two points: a few wild values do not move it [theil1950; sen1968].</summary>
public sealed record TheilSen : Result
{
    private TheilSen()
    {
    }

    /// <summary>Median of the slopes, units of y per unit of x.</summary>
    public required double Slope { get; init; }

    /// <summary>Limits of the slope; null with too few points for the level.</summary>
    public required Interval? Interval { get; init; }

    /// <summary>Intercept median(y) − slope median(x).</summary>
    public required double InterceptByMedians { get; init; }

    /// <summary>Intercept median(y − slope x): half the points lie above the line.</summary>
    public required double InterceptOfResiduals { get; init; }

    /// <summary>Points.</summary>
    public required int N { get; init; }

    /// <summary>Slopes between points of different x, ascending.</summary>
    public required IReadOnlyList<double> Slopes { get; init; }

    /// <summary>C = z √Var S: the limits stand at ranks (slopes − C)/2 and (slopes + C)/2 + 1.</summary>
    public required double Reach { get; init; }

    /// <summary>How the limits were read.</summary>
    public required SlopeRanks Ranks { get; init; }

    /// <summary>Autocorrelation of what the trend leaves over; null when x is not in ascending order or nothing is left over.</summary>
    public SerialCorrelation? SerialCorrelation { get; init; }

    /// <summary>The trend of values at equal steps 1, 2, 3, ...</summary>
    /// <param name="y">At least two finite values in the order of time.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    /// <param name="ranks">How the limits are read.</param>
    public static TheilSen Of(IReadOnlyList<double> y, double level = 0.95, SlopeRanks ranks = SlopeRanks.Rounded)
    {
        Require.Sample(y, 2, nameof(y));
        return Of([.. Enumerable.Range(1, y.Count).Select(i => (double)i)], y, level, ranks);
    }

    /// <summary>The trend of y over x.</summary>
    /// <param name="x">Times or other positions, at least two different ones.</param>
    /// <param name="y">The value at each.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    /// <param name="ranks">How the limits are read.</param>
    public static TheilSen Of(IReadOnlyList<double> x, IReadOnlyList<double> y, double level = 0.95, SlopeRanks ranks = SlopeRanks.Rounded)
    {
        Paired.Require(x, y, 2);
        Paired.Varies(x, nameof(x), "a slope");
        var z = NormalLaw.TwoSided(level);
        var slopes = PairSlopes.Sorted(x, y);
        var slope = PairSlopes.Middle(slopes);
        var reach = z * Math.Sqrt(PairSlopes.Variance(x, y));
        double[] rest = [.. x.Zip(y, (a, b) => b - slope * a)];
        return new()
        {
            Slope = slope,
            Interval = PairSlopes.Limits(slopes, reach, ranks) is { } limits ? new Interval(limits.Low, limits.High, level) : null,
            InterceptByMedians = Quantiles.Median(y) - slope * Quantiles.Median(x),
            InterceptOfResiduals = Quantiles.Median(rest),
            N = x.Count,
            Slopes = slopes,
            Reach = reach,
            Ranks = ranks,
            SerialCorrelation = Trends.SerialCorrelation.OfResiduals(x, rest, y),
        };
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Trend by the median slope", "Theil and Sen [theil1950; sen1968], limits by " + (Ranks == SlopeRanks.Rounded ? "rounded" : "interpolated") + " ranks",
    [
        new("slope", Slope) { Interval = Interval },
        new("intercept, medians", InterceptByMedians),
        new("intercept, residuals", InterceptOfResiduals),
    ])
    {
        Basis = FormattableString.Invariant($"{N} points, {Slopes.Count} slopes"),
        Remarks =
        [
            .. Interval is null ? [FormattableString.Invariant($"No interval: {N} points have too few slopes for this level.")] : Array.Empty<string>(),
            .. SerialCorrelation?.Remarks ?? [],
        ],
    };
}
