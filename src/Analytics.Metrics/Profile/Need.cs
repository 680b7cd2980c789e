using Analytics.Metrics.Catalogue;

namespace Analytics.Metrics.Profile;

/// <summary>A quality an athlete is behind in.</summary>
/// <param name="Quality">The quality.</param>
/// <param name="Metric">The metric that says so.</param>
/// <param name="Standing">Value, middle of the group, difference and probability.</param>
/// <param name="Deficit">Best guess of how far behind, in SDs between athletes of a group freed of test error; above 0.</param>
public sealed record QualityBehind(Quality Quality, Metric Metric, AthleteStanding Standing, double Deficit)
{
    /// <summary>Probability that the athlete is truly behind by more than the margin.</summary>
    public double Probability => Standing.ProbabilityBehind!.Value;
}

/// <summary>A clear loss since the previous day, in whatever quality.</summary>
/// <param name="Metric">The metric.</param>
/// <param name="Change">The change.</param>
public sealed record ClearLoss(Metric Metric, AthleteChange Change);

/// <summary>What one athlete most needs next, or why the tests cannot say.</summary>
/// <param name="AthleteId">Identifier of the athlete.</param>
/// <param name="Group">Position group.</param>
/// <param name="First">The quality furthest behind among those that are surely behind; null when undecided.</param>
/// <param name="Also">Other qualities that are surely behind, furthest first.</param>
/// <param name="Undecided">Why there is no first need, in plain words; null when there is one.</param>
/// <param name="ClearLosses">Clear losses since the previous day: ask about health before training them.</param>
/// <param name="Looks">Qualities looked at for this athlete.</param>
public sealed record Need(
    string AthleteId, string Group, QualityBehind? First, IReadOnlyList<QualityBehind> Also, string? Undecided,
    IReadOnlyList<ClearLoss> ClearLosses, int Looks);
