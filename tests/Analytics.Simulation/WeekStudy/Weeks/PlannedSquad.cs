using Analytics.Notebooks.TrainingWeek;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Solving;
using Analytics.Simulation.Demo.Squad;
using Analytics.Simulation.WeekStudy.Squads;
using Trained = Analytics.Planning.Exercises.TrainedQuality;

namespace Analytics.Simulation.WeekStudy.Weeks;

/// <summary>One squad with its planned week, held against the truth.</summary>
/// <param name="HasPlan">Whether there is a plan; the rest is empty without.</param>
/// <param name="Gap">How much better a plan could at most be, as a share.</param>
/// <param name="HitClock">Whether the clock stopped the search.</param>
/// <param name="Players">The players of the week.</param>
/// <param name="Defaults">The defaults of the groups.</param>
public sealed record PlannedSquad(bool HasPlan, double Gap, bool HitClock, IReadOnlyList<PlayerWeek> Players, IReadOnlyList<GroupDefault> Defaults)
{
    /// <summary>The week of the demo's calendar after its last testing day.</summary>
    public const string Week = "2026-06-15";

    /// <summary>Plans the week as the notebook does.</summary>
    /// <param name="drawn">The season.</param>
    /// <param name="deviations">SD within groups by quality, as the squad was drawn.</param>
    /// <param name="planted">Planted quality by index of the player.</param>
    /// <param name="options">How long a plan is sought.</param>
    public static PlannedSquad Of(WeekSeason drawn, IReadOnlyDictionary<StudiedQuality, double> deviations, IReadOnlyDictionary<int, StudiedQuality> planted, PlanOptions options)
    {
        var context = WeekContext.Of(drawn.Season, Week, "auto", options);
        if (context.Answer.Plan is not { } plan) return new(false, 0, false, [], []);
        var standings = StudiedQuality.All.ToDictionary(q => q, q => TrueStanding.Of(q, drawn.Players, deviations[q]));
        var truth = drawn.Players.ToDictionary(p => p.Id, StringComparer.Ordinal);
        List<PlayerWeek> players = [.. context.Squad.Players.Select(p => OnePlayer(plan, p, truth[p.Id], standings, planted.GetValueOrDefault(truth[p.Id].Index)))];
        return new(true, plan.Quality.Gap, plan.Quality.HitClock, players, DefaultsOf(plan, context.Squad.Players));
    }

    private static PlayerWeek OnePlayer(WeekPlan plan, PlanPlayer player, Player truth, Dictionary<StudiedQuality, TrueStanding> standings, StudiedQuality? planted)
    {
        var mine = plan.Sessions.Where(s => s.Players.Contains(player.Id)).ToList();
        var own = mine.SelectMany(s => s.Own.Where(o => Does(o, player.Id))).ToList();
        var all = mine.SelectMany(s => s.For(player.Id)).ToList();
        bool IsOpen(Trained quality) => player.Needs.Single(n => n.Quality == quality) is { Probability: null, IsNeed: false };
        return new(truth.Index, player.Group, mine.Exists(s => s.IsApart),
            [.. StudiedQuality.All.Select(q => new QualityWeek(q, standings[q].Behind(truth), q == planted, Calls.Of(player.Needs.First(q.IsOf)),
                own.Where(o => q.IsTrainedBy(o.Item.Exercise)).Sum(o => o.Item.Scheme.Sets), all.Where(i => q.IsTrainedBy(i.Exercise)).Sum(i => i.Scheme.Sets)))],
            string.Join("; ", mine.SelectMany(s => s.For(player.Id).Select(i => $"{s.Slot.Date:yyyy-MM-dd} {i.Exercise.Id} {i.Scheme.Id} {i.Partner?.Id}"))),
            player.Needs.Any(n => n.IsNeed), own.Exists(o => o.ForNeed.Contains(player.Id)), IsOpen(Trained.UpperBodyPower) && IsOpen(Trained.TrunkControl));
    }

    private static bool Does(OwnWork own, string id) => own.ForNeed.Contains(id) || own.ByDefault.Contains(id);

    private static List<GroupDefault> DefaultsOf(WeekPlan plan, IReadOnlyList<PlanPlayer> players)
    {
        var uncalled = players.Where(p => !p.Needs.Any(n => n.IsNeed)).Select(p => p.Id).ToHashSet(StringComparer.Ordinal);
        List<GroupDefault> defaults = [];
        foreach (var group in plan.Sessions.Where(s => !s.IsApart).GroupBy(s => s.Group))
        {
            var days = group.Select(s => s.Own.Where(o => o.ByDefault.Any(uncalled.Contains)).Select(o => o.Quality).Distinct().ToList()).Where(q => q.Count > 0).ToList();
            defaults.Add(new(group.Key, days.Count, days.SelectMany(q => q).Distinct().Count(), days.TrueForAll(q => q.Count == 1)));
        }

        return defaults;
    }
}
