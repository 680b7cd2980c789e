using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Change;

/// <summary>Change of a group between two occasions, from the differences of those who did both.</summary>
/// <param name="Mean">Mean change with Student's t interval; no interval for a single athlete.</param>
/// <param name="StandardDeviation">SD of the individual differences; null for a single athlete. It holds test error on both occasions as well as true differences in response.</param>
public sealed record MeanChange(Estimate Mean, double? StandardDeviation)
{
    /// <summary>Typical error if no athlete truly changed by another amount than the rest: SD of the differences/√2; null for a single athlete.</summary>
    public double? TypicalErrorIfAllChangedAlike => StandardDeviation / Math.Sqrt(2);

    /// <summary>Mean change with its interval.</summary>
    /// <param name="differences">After minus before, one an athlete; at least one.</param>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public static MeanChange Of(IReadOnlyList<double> differences, double level = 0.95)
    {
        var mean = MeanEstimate.Of(differences, level);
        return new(mean, differences.Count > 1 ? Moments.StandardDeviation(differences) : null);
    }
}
