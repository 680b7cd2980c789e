using Analytics.Metrics.Sketching;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.Bench;

/// <summary>For whom a formula failed, and why; the same trouble of many players is told once.</summary>
internal static class TroubleBlock
{
    private const int NamesShown = 4;

    public static Block Of(BenchContext bench, IReadOnlyList<MetricSketch> sketches)
    {
        List<string> lines = [.. sketches.SelectMany(s => Lines(bench, s).Select(l => $"{s.Label}: {l}"))];
        return lines.Count == 0 ? new Together() : new Callout("Where a formula failed. Everybody else is counted.", lines);
    }

    /// <summary>Whether another sketch with the same identifier stands before this one.</summary>
    public static bool IsSecond(MetricSketch sketch, IReadOnlyList<MetricSketch> all) => all.First(s => s.Id == sketch.Id) != sketch;

    public static string SameId(MetricSketch sketch) => $"Another sketch has the identifier \u201C{sketch.Id}\u201D too. Give one of them another.";

    private static IEnumerable<string> Lines(BenchContext bench, MetricSketch sketch)
    {
        if (sketch.Fault is not null) return [];
        _ = bench.Card(sketch);
        return sketch.Troubles.GroupBy(t => t.Message).OrderByDescending(g => g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal).Select(g => $"{Whom(bench, [.. g])}, {g.Key}");
    }

    private static string Whom(BenchContext bench, IReadOnlyList<SketchTrouble> troubles)
    {
        List<string> players = [.. troubles.Select(t => t.AthleteId).Distinct()];
        var days = troubles.Select(t => t.Date).Distinct().Order().ToList();
        var when = days.Count == 1 ? $" on {Words.Date(days[0])}" : $" on {Words.Count(days.Count)} days";
        var who = players.Count <= NamesShown ? Words.List([.. players.Select(bench.Name)])
            : players.Count == bench.Athletes.Count ? $"all {Words.Players(players.Count)}" : $"{Words.List([.. players.Take(NamesShown - 1).Select(bench.Name), FormattableString.Invariant($"{players.Count - NamesShown + 1} more")])}";
        return $"for {who}{when}";
    }
}
