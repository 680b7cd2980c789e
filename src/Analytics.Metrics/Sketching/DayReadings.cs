using System.Runtime.CompilerServices;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Sketching;

/// <summary>Library metrics of an athlete's day as building blocks of a formula.</summary>
public static class DayReadings
{
    private static readonly ConditionalWeakTable<AthleteDay, Dictionary<string, AnyQuantity?>> s_known = [];

    /// <summary>The day's value of a library metric, with its dimension; null when the day has none.</summary>
    /// <param name="day">The athlete's day.</param>
    /// <param name="metricId">Identifier of a library metric, see docs/metrics.md.</param>
    /// <exception cref="KeyNotFoundException">No such metric; the message lists the known ones.</exception>
    /// <remarks>Where a test was taken on two scales that day, the one with more attempts counts.</remarks>
    public static AnyQuantity? Value(this AthleteDay day, string metricId)
    {
        ArgumentNullException.ThrowIfNull(day);
        ArgumentNullException.ThrowIfNull(metricId);
        var known = s_known.GetOrCreateValue(day);
        lock (known)
        {
            if (known.TryGetValue(metricId, out var value)) return value;
            var metric = MetricCatalogue.Get(metricId);
            return known[metricId] = MetricDay.Of(metric, [day]).Values is [var only, ..] ? AnyQuantity.From(only.Value, metric.Unit) : null;
        }
    }
}
