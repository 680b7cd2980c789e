using Analytics.Metrics.ChangeOfDirection;
using Analytics.Metrics.Contact;
using Analytics.Metrics.FieldPower;
using Analytics.Metrics.Jumping;
using Analytics.Metrics.Sprinting;
using Analytics.Metrics.Strength;

namespace Analytics.Metrics.Catalogue;

/// <summary>Every metric the library knows, in report order.</summary>
public static class MetricCatalogue
{
    /// <summary>All metrics; identifiers are unique.</summary>
    public static IReadOnlyList<Metric> All { get; } = [.. BodyMetrics.All, .. StrengthMetrics.All, .. JumpMetrics.All, .. PowerMetrics.All, .. SprintMetrics.All, .. TurnMetrics.All, .. ContactMetrics.All, .. AddedMetrics.All];

    /// <summary>The metric with this identifier.</summary>
    /// <param name="id">Identifier.</param>
    /// <exception cref="KeyNotFoundException">No such metric; the message lists the known ones.</exception>
    public static Metric Get(string id)
        => All.FirstOrDefault(m => m.Id == id)
           ?? throw new KeyNotFoundException($"No metric '{id}'; known: {string.Join(", ", All.Select(m => m.Id))}.");
}
