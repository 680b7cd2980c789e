using System.Globalization;
using Analytics.Simulation.BenchStudy.Document;
using Analytics.Simulation.ErrorRates;
using Analytics.Simulation.WeekStudy.Squads;
using Analytics.Simulation.WeekStudy.Weeks;

namespace Analytics.Simulation.WeekStudy.Document;

/// <summary>How many more sets a deficit gets, by quality.</summary>
public static class SetsTable
{
    /// <summary>Squads in which players with a deficit get more sets than players of their group without; squads without such a pair are not asked.</summary>
    public static Rate More(IReadOnlyList<WeekOutcome> squads, StudiedQuality? quality, Func<WeekOutcome, PlannedSquad> plan, Func<QualityWeek, bool> isDeficit, Func<QualityWeek, int> sets)
        => Rate.Of(squads.Select(s => SetsDifference.Of(plan(s), quality, isDeficit, sets)).OfType<double>(), d => d > 0);

    public static string Of(IReadOnlyList<WeekOutcome> squads)
        => $"""
            ## Sets

            Sets a week of the quality, shared part and own work together: of the players with the deficit over those of their group without, mean over squads; and the squads in which it is above 0.

            ### Planted deficits

            {Table(squads, o => o.Planted, q => q.IsPlanted)}
            ### Deficits as drawn

            {Table(squads, o => o.Drawn, q => q.IsDeficit)}
            """;

    private static MarkdownTable Table(IReadOnlyList<WeekOutcome> squads, Func<WeekOutcome, PlannedSquad> plan, Func<QualityWeek, bool> isDeficit)
    {
        var table = new MarkdownTable("quality", "test that speaks", "more sets a week", "of it own work", "squads with more, %");
        foreach (var quality in StudiedQuality.All.Append(null))
        {
            string Mean(Func<QualityWeek, int> sets) => squads.Select(s => SetsDifference.Of(plan(s), quality, isDeficit, sets)).OfType<double>().ToList() is { Count: > 0 } all
                ? all.Average().ToString("0.00", CultureInfo.InvariantCulture) : "–";
            table.Row(quality?.Name ?? "all together", quality?.Test ?? "", Mean(q => q.AllSets), Mean(q => q.OwnSets), More(squads, quality, plan, isDeficit, q => q.AllSets).ToString());
        }

        return table;
    }
}
