using Analytics.Statistics.Results;

namespace Analytics.Statistics.MixedModels;

/// <summary>A mean, or a mean change, of groups of a model themselves; see <see cref="OwnLevels"/>.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">Estimate, in the unit of the response.</param>
/// <param name="StandardError">Standard error in the same unit; variances taken as known.</param>
/// <param name="DegreesOfFreedom">Those of the residual variance.</param>
/// <param name="Interval">Interval by the t law.</param>
/// <param name="Groups">Groups averaged.</param>
public sealed record OwnMean(string Name, double Value, double StandardError, double DegreesOfFreedom, Interval Interval, int Groups) : Result
{
    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Mean of groups themselves in a linear mixed model", "best linear unbiased prediction, t law [henderson1975]",
        [new(Name, Value) { Interval = Interval, StandardError = StandardError, DegreesOfFreedom = DegreesOfFreedom }])
    {
        Basis = FormattableString.Invariant($"{Groups} {(Groups == 1 ? "group" : "groups")}; the model's own sheet says how many values"),
        Remarks = ["Of these groups, not of the population they come from."],
    };
}
