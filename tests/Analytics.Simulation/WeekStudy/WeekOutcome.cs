using Analytics.Planning.Solving;
using Analytics.Simulation.WeekStudy.Squads;
using Analytics.Simulation.WeekStudy.Weeks;

namespace Analytics.Simulation.WeekStudy;

/// <summary>One squad as it was drawn, and the same squad with planted deficits.</summary>
/// <param name="Drawn">As drawn.</param>
/// <param name="Planted">With the deficits; everything else and all luck are the same.</param>
public sealed record WeekOutcome(PlannedSquad Drawn, PlannedSquad Planted)
{
    public static WeekOutcome Of(ulong seed, PlanOptions options)
    {
        var drawn = WeekSeason.Draw(seed, []);
        var deviations = StudiedQuality.All.ToDictionary(q => q, q => TrueStanding.Of(q, drawn.Players).Deviation);
        var planting = Planting.Draw(seed, drawn.Players);
        var nobody = new Dictionary<int, StudiedQuality>();
        return new(PlannedSquad.Of(drawn, deviations, nobody, options), PlannedSquad.Of(WeekSeason.Draw(seed, planting.Deficits), deviations, planting.Chosen, options));
    }
}
