using Analytics.Metrics.Catalogue;
using Analytics.Statistics.Change;
using Analytics.Statistics.Reliability;

namespace Analytics.Metrics.Profile;

/// <summary>Between-day error from the season's own retest days.</summary>
internal static class RetestError
{
    /// <summary>The unusual form is taken only when it makes the data e² times as probable.</summary>
    private const double ClearlyBetter = 2;

    public static MetricReliability? Find(
        Metric metric, string? series, IReadOnlyList<RepeatDays> retests, int minimum, List<string> cautions)
    {
        if (retests.Count == 0) return null;
        var found = RetestRows.Of(metric, series, retests, minimum);
        var (rows, repeated) = (found.Rows, found.Repeated);
        if (found.LeftOutText is { } leftOut) cautions.Add(leftOut);
        if (repeated < Math.Max(2, minimum))
        {
            cautions.Add($"Retest days: {repeated} athletes did this test twice on the same scale; {minimum} are needed for an error of the squad's own.");
            return null;
        }

        var table = TrialTable.FromRows(rows);
        var constant = TypicalErrors.FromTrials(table);
        if (constant.Value <= 1e-12 * Math.Abs(metric.PlausibleHigh))
        {
            cautions.Add("Retest days: every repeat agrees exactly, which speaks of rounding or copied values, not of a test without error.");
            return null;
        }

        var proportional = Proportional(metric, table, rows, constant);
        return new()
        {
            Metric = metric,
            Source = ErrorSource.SeasonRetest,
            Scale = proportional is null ? ErrorScale.Constant : ErrorScale.Proportional,
            Error = proportional ?? constant,
            Basis = $"{constant.Athletes} athletes of this squad tested on retest days" + (found.Way is null ? "" : $", {found.Way} on each"),
            Cautions = cautions,
            HoldsFreshEquationError = found.Estimated,
            Consistency = retests.Count == 1 ? ConsistencyOf(table) : null,
            Shift = table.Trials == 2 ? MeanChange.Of(table.Differences(0, 1)) : null,
        };
    }

    /// <summary>
    /// The error as a share when that describes the repeats better. With degrees of freedom ν, typical error s of the values, l of their
    /// logarithms and geometric mean g, the two models differ by ν ln(s/(l g)) in log-likelihood. Within 2 the usual form is taken: the share for
    /// amounts above 0 and where the published error is a percentage [hopkins2000], else the constant error.
    /// </summary>
    private static TypicalError? Proportional(Metric metric, TrialTable table, IReadOnlyList<IReadOnlyList<double?>> rows, TypicalError constant)
    {
        var used = rows.Where(r => r.Count(v => v.HasValue) > 1).SelectMany(r => r.OfType<double>()).ToList();
        if (used.Any(v => v <= 0) || rows.Any(r => r.Any(v => v <= 0))) return null;
        var share = TypicalErrors.FromTrials(table.Select(Math.Log));
        var mean = Math.Exp(used.Average(Math.Log));
        var gain = constant.DegreesOfFreedom * Math.Log(constant.Value / (share.Value * mean));
        var shareIsUsual = metric.IsAmount || metric.PublishedError?.Percent is not null;
        return gain > (shareIsUsual ? -ClearlyBetter : ClearlyBetter) ? share : null;
    }

    private static IntraclassCorrelation? ConsistencyOf(TrialTable table)
    {
        var complete = table.CompleteRows();
        if (complete is null || complete.Athletes < 2) return null;
        var squares = MeanSquares.Of(complete);
        return squares.BetweenAthletes + squares.WithinAthletes > 0 ? IntraclassCorrelation.Of(table) : null;
    }
}
