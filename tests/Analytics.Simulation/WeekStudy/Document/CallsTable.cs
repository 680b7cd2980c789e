using Analytics.Simulation.BenchStudy.Document;
using Analytics.Simulation.ErrorRates;
using Analytics.Simulation.WeekStudy.Squads;
using Analytics.Simulation.WeekStudy.Weeks;

namespace Analytics.Simulation.WeekStudy.Document;

/// <summary>How often a need is called, by quality.</summary>
public static class CallsTable
{
    public static string Of(IReadOnlyList<WeekOutcome> squads)
    {
        var table = new MarkdownTable("quality", "planted deficit", "deficit as drawn", "truly without");
        foreach (var quality in StudiedQuality.All)
        {
            string Called(Func<WeekOutcome, PlannedSquad> plan, Func<QualityWeek, bool> which)
                => Rate.Of(squads.SelectMany(s => plan(s).Players).Where(p => !p.IsApart).SelectMany(p => p.Qualities).Where(q => q.Quality == quality && which(q)), q => q.IsNeed).ToString();
            table.Row(quality.Name, Called(o => o.Planted, q => q.IsPlanted), Called(o => o.Drawn, q => q.IsDeficit), Called(o => o.Drawn, q => q.IsWithout));
        }

        return $"""
            ## Needs called

            Players of whom a need of the quality is called, %. A need takes 80 % probability of being behind the middle of the group by more than too small to matter, so a deficit little above one SD is often left open, most of all where the
            test returns less well; and a test of the same quality that objects leaves it open too.

            {table}
            """;
    }
}
