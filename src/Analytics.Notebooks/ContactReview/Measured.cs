using Analytics.Statistics;

namespace Analytics.Notebooks.ContactReview;

/// <summary>A figure read off film, or why there is none.</summary>
/// <param name="Value">The figure; null when there is none.</param>
/// <param name="WhyNot">Why there is none; empty when there is one.</param>
internal sealed record Measured(Estimate? Value, string WhyNot = "");
