using Analytics.Planning.People;
using Analytics.Planning.Plans;

namespace Analytics.Planning.Solving;

/// <summary>Which needs a plan serves by own work, and why not the others.</summary>
internal static class NeedsServed
{
    public static IReadOnlyList<ServedNeed> Of(PlanProblem problem, IReadOnlyList<UnitSession> sessions)
        => [.. problem.Players.SelectMany(p => p.Needs.Where(n => n.IsNeed).Select(n =>
        {
            var mine = sessions.Where(s => s.Players.Contains(p.Id)).ToList();
            var sets = mine.SelectMany(s => s.Own).Where(o => n.IsServedBy(o.Item.Exercise) && (o.ForNeed.Contains(p.Id) || o.ByDefault.Contains(p.Id))).Sum(o => o.Item.Scheme.Sets);
            return new ServedNeed(p.Id, n.Quality, n.Probability ?? 0, sets, sets > 0 ? null : Reason(problem, mine, p, n)) { Half = n.Half };
        }))];

    private static string Reason(PlanProblem problem, List<UnitSession> mine, PlanPlayer player, QualityNeed need)
    {
        if (mine.Count == 0) return "he has no session this week";
        var days = mine.Where(s => s.Kind.OwnWork.Contains(need.Quality)).ToList();
        if (days.Count == 0) return "no session of his this week has own work for it";
        if (problem.Exercises.All.Where(need.IsServedBy).All(e => days.All(d => player.Restrictions.Any(r => r.Forbids(e, d.Slot.Date))))) return "his restrictions leave nothing for it";
        return "time, places or a more probable need left no room";
    }
}
