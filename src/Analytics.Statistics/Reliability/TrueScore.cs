using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Reliability;

/// <summary>An athlete's score pulled toward the mean of the group by the reliability of the test.</summary>
/// <remarks>Estimate M + r (x − M); errors SD √(r(1 − r)) of the true score and SD √(1 − r²) of a new score [weir2005].</remarks>
/// <param name="Value">Estimated true score, in the unit of the test.</param>
/// <param name="ErrorOfTrueScore">Standard error of the true score.</param>
/// <param name="ErrorOfNewScore">Standard error of predicting the next score.</param>
public sealed record TrueScore(double Value, double ErrorOfTrueScore, double ErrorOfNewScore) : Result
{
    /// <summary>What the estimate rests on, in words.</summary>
    public string Basis { get; private init; } = "not stated";

    /// <summary>Interval of the true score, normal law; reliability, mean and SD taken as known.</summary>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public Interval TrueScoreInterval(double level = 0.95) => Around(ErrorOfTrueScore, level);

    /// <summary>Interval the next score should fall in, normal law; reliability, mean and SD taken as known.</summary>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public Interval NewScoreInterval(double level = 0.95) => Around(ErrorOfNewScore, level);

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
            measurement * Math.Sqrt(1 + reliability))
        {
            Basis = FormattableString.Invariant($"a score of {observed}; group mean {groupMean:0.####}, SD {standardDeviation:0.####}, reliability {reliability:0.###}"),
        };
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "True score", "pulled toward the group mean by the reliability [weir2005]",
        [
            new("estimated true score", Value) { StandardError = ErrorOfTrueScore, Interval = TrueScoreInterval(), Note = "SEE" },
            new("next score", Value) { StandardError = ErrorOfNewScore, Interval = NewScoreInterval(), Note = "SEP" },
        ])
    { Basis = Basis, Remarks = ["The reliability, mean and SD of the group are taken as known."] };

    private Interval Around(double error, double level)
    {
        var reach = NormalLaw.TwoSided(level) * error;
        return new(Value - reach, Value + reach, level);
    }
}
