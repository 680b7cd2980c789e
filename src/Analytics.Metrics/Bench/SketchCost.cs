using Analytics.Metrics.Seasons;
using Analytics.Metrics.Sketching;

namespace Analytics.Metrics.Bench;

/// <summary>What a sketched metric costs.</summary>
/// <param name="ExtraMinutes">Minutes per athlete beyond the tests it is worked out of, as the sketch says; 0 when it says nothing.</param>
/// <param name="Tests">The tests it is worked out of, with their usual minutes; they cost nothing more where they are done anyway.</param>
public sealed record SketchCost(double ExtraMinutes, IReadOnlyList<TestCost> Tests)
{
    internal static SketchCost Of(MetricSketch sketch, IReadOnlyList<string> measures, IReadOnlyDictionary<string, double> own)
    {
        var all = measures.Select(id => TestMinutes.Of(id, own)).OfType<TestCost>().DistinctBy(c => c.Test).ToList();
        // A gate of a sprint is the sprint over again.
        return new(sketch.Minutes ?? 0, [.. all.Where(c => !c.IsDerived || !all.Exists(o => !o.IsDerived && o.Test.StartsWith(c.Test, StringComparison.Ordinal)))]);
    }
}
