using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;

namespace Analytics.Planning.Needs;

/// <summary>The result of one player in one test that tells of his needs, as a rule his latest.</summary>
public sealed record PlayerTest
{
    /// <summary>The metric.</summary>
    public required Metric Metric { get; init; }

    /// <summary>Day of the test.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>Where he stood in his group that day; null when he cannot be compared.</summary>
    public required AthleteStanding? Standing { get; init; }

    /// <summary>How far from the middle of the group counts, in the metric's unit; null when not known, and then any distance does.</summary>
    public double? Margin { get; init; }

    /// <summary>Why he cannot be compared, where <see cref="Standing"/> is null.</summary>
    public string? Reason { get; init; }

    /// <summary>Remark that travels with the result, such as "tested while listed as limited"; empty for none.</summary>
    public string Remark { get; init; } = "";
}
