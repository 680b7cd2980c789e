using Analytics.Metrics.Sketching;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.OnTrial;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.Bench;

/// <summary>For whom a formula failed, and why; the same trouble of many players is told once.</summary>
internal static class TroubleBlock
{
    public static Block Of(BenchContext bench, IReadOnlyList<MetricSketch> sketches)
    {
        List<string> lines = [.. sketches.SelectMany(s => Failures(bench, s)).Select(f => OutsideText.Visible(f.Words(bench.Name, Words.Date)))];
        return lines.Count == 0 ? new Together() : new Callout("Where a formula failed. Everybody else is counted.", lines);
    }

    /// <summary>Whether another sketch with the same identifier stands before this one.</summary>
    public static bool IsSecond(MetricSketch sketch, IReadOnlyList<MetricSketch> all) => all.First(s => s.Id == sketch.Id) != sketch;

    public static string SameId(MetricSketch sketch) => $"Another sketch has the identifier \u201C{sketch.Id}\u201D too. Give one of them another.";

    private static IEnumerable<FormulaFailure> Failures(BenchContext bench, MetricSketch sketch)
    {
        if (sketch.Fault is not null) return [];
        // Judging asks the formula for every day.
        _ = bench.Card(sketch);
        return FormulaFailure.Of(sketch, bench.Days.SelectMany(d => d.Athletes)).OrderByDescending(f => f.Where.Count).ThenBy(f => f.Message, StringComparer.Ordinal);
    }
}
