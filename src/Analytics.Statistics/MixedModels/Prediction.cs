namespace Analytics.Statistics.MixedModels;

/// <summary>What a model says of one group at one point.</summary>
/// <param name="Value">Predicted true level, in the unit of the response.</param>
/// <param name="StandardError">Standard error of that level; variances taken as known.</param>
/// <param name="NewValueStandardError">Standard error of a single new measurement there: the level's and the residual's together.</param>
public sealed record Prediction(double Value, double StandardError, double NewValueStandardError);
