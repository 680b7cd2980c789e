namespace Analytics.Statistics.MixedModels;

/// <summary>A variance of the model: of one random effect between groups, or of the residual.</summary>
/// <param name="Name">The random effect, or "residual".</param>
/// <param name="Variance">Variance in squared units; 0 on the boundary.</param>
/// <param name="StandardDeviation">Its root, in the unit of the effect.</param>
/// <param name="Interval">
/// Interval of the standard deviation, approximate: normal on the logarithm, from the curvature of the likelihood. Null on the boundary, where
/// that has no meaning. <see cref="MixedModelProfiles.ProfileStandardDeviation"/> gives the better one by the likelihood itself.
/// </param>
public sealed record VarianceComponent(string Name, double Variance, double StandardDeviation, Interval? Interval);
