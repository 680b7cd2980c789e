namespace Analytics.Statistics.Reliability;

/// <summary>An athlete's score pulled toward the mean of the group by the reliability of the test.</summary>
/// <remarks>Estimate M + r (x − M); errors SD √(r(1 − r)) of the true score and SD √(1 − r²) of a new score [weir2005].</remarks>
/// <param name="Value">Estimated true score, in the unit of the test.</param>
/// <param name="ErrorOfTrueScore">Standard error of the true score.</param>
/// <param name="ErrorOfNewScore">Standard error of predicting the next score.</param>
public sealed record TrueScore(double Value, double ErrorOfTrueScore, double ErrorOfNewScore)
{
    /// <summary>Estimates the true score behind an observed one.</summary>
    /// <param name="observed">Observed score.</param>
    /// <param name="groupMean">Mean of the group the athlete belongs to.</param>
    /// <param name="standardDeviation">SD of scores in the group, above 0.</param>
    /// <param name="reliability">Reliability of the test in this group, 0 to 1.</param>
    public static TrueScore Of(double observed, double groupMean, double standardDeviation, double reliability)
    {
        var measurement = IntraclassCorrelation.StandardErrorOfMeasurement(standardDeviation, reliability);
        return new(
            Require.Finite(groupMean, nameof(groupMean)) + reliability * (Require.Finite(observed, nameof(observed)) - groupMean),
            measurement * Math.Sqrt(reliability),
            measurement * Math.Sqrt(1 + reliability));
    }
}
