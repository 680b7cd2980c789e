using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Statistics.Reliability;

namespace Analytics.Metrics.Profile;

/// <summary>A lower bound of the error of a day's value, from attempts minutes apart.</summary>
internal static class SameDayError
{
    /// <summary>SD of the largest of k independent standard normal values, k from 1 (integrated numerically in R 4.2.2).</summary>
    private static readonly double[] s_bestOf =
        [1, 0.8256452712, 0.7479754032, 0.7012240989, 0.6689798719, 0.6449241110, 0.6260333666, 0.6106530466, 0.5977903699, 0.5868081656];

    public static MetricReliability? Find(
        Metric metric, string? series, IReadOnlyList<IReadOnlyList<AthleteDay>> days, List<string> cautions)
        => Find(metric, days.SelectMany(d => MetricDay.Of(metric, d, series).Values), cautions);

    /// <summary>From values made already.</summary>
    public static MetricReliability? Find(Metric metric, IEnumerable<DayValue> values, List<string> cautions)
    {
        var attempts = values.Select(v => (IReadOnlyList<double>)[.. v.Attempts.Select(a => a.Value)]).Where(a => a.Count > 1).ToList();
        if (attempts.Count < 2) return null;
        var single = TypicalErrors.FromAttempts(attempts);
        if (single.Value <= 0) return null;

        var usual = attempts.Select(a => a.Count).Order().ElementAt(attempts.Count / 2);
        var factor = metric.Rule == TrialRule.Mean ? 1 / Math.Sqrt(usual) : s_bestOf[Math.Min(usual, s_bestOf.Length) - 1];
        return new()
        {
            Metric = metric,
            Source = ErrorSource.SameDayAttempts,
            Scale = ErrorScale.Constant,
            Error = single with { Value = single.Value * factor },
            Basis = $"attempts of the same day, {attempts.Count} athlete-days with about {usual} attempts",
            Cautions = [.. cautions, "Day-to-day variation is missing, so the true error is larger; no verdict on a change can rest on it."],
        };
    }
}
