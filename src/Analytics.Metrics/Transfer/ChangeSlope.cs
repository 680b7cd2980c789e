using Analytics.Statistics;
using Analytics.Statistics.Association;

namespace Analytics.Metrics.Transfer;

/// <summary>Change on change: field change for each unit of weight-room change, from the start (mean of the retest days done) to the last testing day.</summary>
public sealed record ChangeSlope
{
    /// <summary>Players with both changes.</summary>
    public required int Athletes { get; init; }

    /// <summary>Unit of the slopes: field unit per weight-room unit; gains are positive in both.</summary>
    public required string Unit { get; init; }

    /// <summary>Slope with scatter of its own allowed; null when it cannot be told.</summary>
    public double? Slope { get; init; }

    /// <summary>Interval of <see cref="Slope"/>.</summary>
    public Interval? Interval { get; init; }

    /// <summary>Deming's line, which takes the field change as decided by the weight-room change but for errors; null when it cannot be told.</summary>
    public double? Deming { get; init; }

    /// <summary>Jackknife interval of <see cref="Deming"/>.</summary>
    public Interval? DemingInterval { get; init; }

    /// <summary>Variance of the field change's error over that of the weight-room change, in squared units; null when an error is not known.</summary>
    public double? ErrorRatio { get; init; }

    /// <summary>Why a slope is missing, in plain words; empty when both are there.</summary>
    public required string Reason { get; init; }

    internal static ChangeSlope Of(TransferMeasure x, TransferMeasure y, TestingCalendar calendar, double? errorCorrelation, double level)
    {
        var unit = $"{y.Metric.Unit} per {x.Metric.Unit}";
        var pairs = ChangePairs.Of(x, y, calendar);
        if (pairs is null || pairs.X.Count < ChangePairs.Least)
            return new() { Athletes = pairs?.X.Count ?? 0, Unit = unit, Reason = FormattableString.Invariant($"Fewer than {ChangePairs.Least} players were tested in both on two occasions.") };
        var n = pairs.X.Count;
        if (x.TypicalError is not { } ex || y.TypicalError is not { } ey)
            return new() { Athletes = n, Unit = unit, Reason = "The slope cannot be told: no typical error of " + (x.TypicalError is null ? x.Name : y.Name) + " is known." };
        var (vx, vy) = (ex * ex * pairs.FactorX, ey * ey * pairs.FactorY);
        if (pairs.X.Distinct().Count() < 2 || pairs.Y.Distinct().Count() < 2) return new() { Athletes = n, Unit = unit, Reason = "All changes are the same in one of the measures." };
        var covariance = (errorCorrelation ?? 0) * ex * ey * pairs.FactorBoth;
        var line = SlopeWithScatter.Of(pairs.X, pairs.Y, vx, covariance, x.Reliability.DegreesOfFreedom, level);
        var made = new ChangeSlope { Athletes = n, Unit = unit, ErrorRatio = vy / vx, Reason = "" };
        if (line.Slope is null)
            return made with { Reason = $"The slope cannot be told: the changes in {x.Name} do not differ between players by more than error alone gives." };
        made = made with { Slope = line.Slope, Interval = line.Interval };
        if (!(Correlation.Pearson(pairs.X, pairs.Y, level).P <= 1 - level))
            return made with { Reason = "No line with error in both: the two changes are not discernibly related, and such a line then runs anywhere." };
        var deming = ErrorsInBoth.Deming(pairs.X, pairs.Y, vy / vx, level);
        return made with { Deming = deming.Slope, DemingInterval = deming.Interval };
    }
}
