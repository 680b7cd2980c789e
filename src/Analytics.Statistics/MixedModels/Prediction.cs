using Analytics.Statistics.Results;

namespace Analytics.Statistics.MixedModels;

/// <summary>What a model says of one group at one point.</summary>
/// <param name="Value">Predicted true level, in the unit of the response.</param>
/// <param name="StandardError">Standard error of that level; variances taken as known.</param>
/// <param name="NewValueStandardError">Standard error of a single new measurement there: the level's and the residual's together.</param>
public sealed record Prediction(double Value, double StandardError, double NewValueStandardError) : Result
{
    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Level predicted by a linear mixed model", "best linear unbiased prediction [bates2015]",
    [
        new("true level", Value) { StandardError = StandardError },
        new("single new value", Value) { StandardError = NewValueStandardError },
    ])
    {
        Basis = "the fitted model; its own sheet says how many values and groups",
        Remarks = ["The standard errors take the variances as known; with few groups they are too small."],
    };
}
