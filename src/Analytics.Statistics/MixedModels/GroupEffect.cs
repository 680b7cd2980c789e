namespace Analytics.Statistics.MixedModels;

/// <summary>How one group (athlete) differs from what the fixed effects say: best linear unbiased predictions, shrunken toward 0.</summary>
/// <param name="Group">The group.</param>
/// <param name="Rows">Its rows: the fewer, the stronger it is shrunken.</param>
/// <param name="Effects">One a random effect, in the order of the design.</param>
public sealed record GroupEffect(string Group, int Rows, IReadOnlyList<RandomEffect> Effects);

/// <summary>One random effect of one group.</summary>
/// <param name="Name">Which effect.</param>
/// <param name="Value">The prediction b̂ = D Z'V⁻¹(y − Xβ̂), in the unit of the effect.</param>
/// <param name="ConditionalStandardError">
/// Standard deviation of the true effect given the data when the fixed effects and variances are taken as known: the error other programs print.
/// </param>
/// <param name="PredictionStandardError">
/// Standard error of b̂ − b with the doubt of the fixed effects in it; the larger of the two. The doubt of the variances is in neither.
/// </param>
public sealed record RandomEffect(string Name, double Value, double ConditionalStandardError, double PredictionStandardError);
