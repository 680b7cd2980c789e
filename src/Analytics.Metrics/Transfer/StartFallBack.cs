using Analytics.Statistics.Summaries;

namespace Analytics.Metrics.Transfer;

/// <summary>Regression to the mean from the starting level, by the typical error.</summary>
/// <param name="Fall">Units lost by a player one SD above the mean at the start.</param>
/// <param name="Share">Share of his distance from the mean, 1 − reliability of the start.</param>
internal sealed record StartFallBack(double Fall, double Share)
{
    public static StartFallBack? Of(IReadOnlyDictionary<(string Athlete, int Day), double> turned, TestingCalendar calendar, double? typicalError)
    {
        if (typicalError is not > 0) return null;
        var starts = calendar.Starts(turned);
        if (starts.Count < ChangePairs.Least) return null;
        double[] means = [.. starts.Values.Select(s => s.Mean)];
        var sd = Moments.StandardDeviation(means);
        if (!(sd > 0)) return null;
        var share = Math.Min(1, starts.Values.Average(s => typicalError.Value * typicalError.Value / s.Days) / (sd * sd));
        return new(share * sd, share);
    }
}
