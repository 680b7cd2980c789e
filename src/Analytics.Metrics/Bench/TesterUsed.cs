using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Bench;

/// <summary>Who took the trials a day's value rests on: found out by leaving out the trials of each.</summary>
internal static class TesterUsed
{
    /// <summary>The tester; null when none is noted, or when the value rests on trials of several.</summary>
    public static string? Of(Metric metric, AthleteDay day)
    {
        List<string> noted = [.. day.Trials.Select(t => t.Tester).OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase)];
        if (noted.Count == 0) return null;
        var whole = Value(metric, day);
        List<string> used = [.. noted.Where(tester => Value(metric, day with { Trials = [.. day.Trials.Where(t => !string.Equals(t.Tester, tester, StringComparison.OrdinalIgnoreCase))] }) != whole)];
        return used.Count == 1 ? used[0] : null;
    }

    private static double? Value(Metric metric, AthleteDay day) => MetricDay.Of(metric, [day]).Values is [var only, ..] ? only.Value : null;
}
