using Analytics.Statistics.Results;
using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Monitoring;

/// <summary>Chart of single values with limits three moving-range SD from the mean of a baseline, and of their moving ranges [shewhart1931; wheelerchambers1992].</summary>
public sealed record IndividualsChart : Result
{
    private IndividualsChart()
    {
    }

    /// <summary>Mean of the baseline.</summary>
    public required double Centre { get; init; }

    /// <summary>Standard deviation by the moving ranges of the baseline.</summary>
    public required double StandardDeviation { get; init; }

    /// <summary>Centre ± 3 SD.</summary>
    public required Interval Limits { get; init; }

    /// <summary>Mean of the moving ranges of the baseline.</summary>
    public required double MeanRange { get; init; }

    /// <summary>Upper limit of a moving range: D₄ times their mean.</summary>
    public required double RangeLimit { get; init; }

    /// <summary>Points of the baseline.</summary>
    public required int BaselinePoints { get; init; }

    /// <summary>Measured false-alarm rate of a new point for this size of the baseline.</summary>
    public required FalseAlarms FalseAlarms { get; init; }

    /// <summary>Limits from a baseline in which nothing has changed.</summary>
    /// <param name="baseline">At least three finite values in the order of time, not all equal.</param>
    /// <param name="centre">Mean or median of the moving ranges. The false-alarm rate is that of the mean.</param>
    /// <param name="constants">Exact or printed constants.</param>
    public static IndividualsChart FromBaseline(
        IReadOnlyList<double> baseline, MovingRangeCentre centre = MovingRangeCentre.Mean, MovingRangeConstants constants = MovingRangeConstants.Exact)
    {
        Require.Sample(baseline, 3, nameof(baseline));
        var ranges = MovingRange.Of(baseline);
        var (mean, sd) = (Moments.Mean(baseline), MovingRange.StandardDeviation(baseline, centre, constants));
        if (!(sd > 0))
        {
            throw new ArgumentException(centre == MovingRangeCentre.Median && ranges.Any(r => r > 0)
                ? $"More than half of the {ranges.Count} steps of the baseline are 0, so their median is; use {nameof(MovingRangeCentre.Mean)}."
                : FormattableString.Invariant($"All {baseline.Count} baseline values are {baseline[0]}; limits need values that differ. Record with more digits."), nameof(baseline));
        }

        return new()
        {
            Centre = mean,
            StandardDeviation = sd,
            Limits = new Interval(mean - 3 * sd, mean + 3 * sd, 1 - FalseAlarms.KnownLimits(3).PerPoint!.Value),
            MeanRange = ranges.Average(),
            RangeLimit = ranges.Average() * (constants == MovingRangeConstants.Exact ? MovingRange.D4 : 3.267),
            BaselinePoints = baseline.Count,
            FalseAlarms = centre == MovingRangeCentre.Mean
                ? FalseAlarms.MovingRangeBaseline(baseline.Count)
                : new(null, null, "median moving range: rate not measured, above that of the mean moving range"),
        };
    }

    /// <summary>Places values, those of the baseline or new ones, on the chart.</summary>
    /// <param name="values">Finite values in the order of time.</param>
    public IReadOnlyList<ChartPoint> Points(IReadOnlyList<double> values)
    {
        Require.Sample(values, 1, nameof(values));
        return [.. values.Select((v, i) => new ChartPoint(i, v, v, Limits))];
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Chart of single values", "mean ± 3 SD by moving ranges [wheelerchambers1992]",
    [
        new("centre", Centre) { Interval = Limits },
        new("SD by moving ranges", StandardDeviation),
        new("mean moving range", MeanRange),
        new("upper limit of a moving range", RangeLimit),
    ])
    {
        Basis = FormattableString.Invariant($"{BaselinePoints} baseline points"),
        Remarks = [FalseAlarms.InWords()],
    };
}
