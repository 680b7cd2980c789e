using Analytics.Planning.Plans;

namespace Analytics.Planning.Solving;

/// <summary>Tells the solver where to look first: at a plan found before, or at the earlier plan of the season.</summary>
internal static class PlanHints
{
    public static void Give(WeekModel week, IReadOnlyList<UnitSession> start)
    {
        var rows = WeekChanges.Rows(week.Problem).ToList();
        if (start.Count == 0 && rows.Count == 0) return;
        foreach (var day in week.Days)
        {
            var found = start.FirstOrDefault(s => s.Slot == day.Slot && s.Group == day.Unit.Group && s.IsApart == day.Unit.IsApart && s.Players[0] == day.Unit.Players[0].Id);
            var mine = rows.Where(r => EarlierRows.IsAbout(week.Problem, r, day.Slot, day.Unit.Group) && KeptConstraints.IsFor(r, day)).ToList();
            bool Was(Candidate c, bool own) => found is null
                ? mine.Any(r => r.IsOwnWork == own && KeptConstraints.Matches(week.Problem, r, day, c))
                : (own ? found.Own.Select(o => o.Item) : found.Shared).Any(i => i.Exercise.Id == c.Exercise.Id && i.Scheme.Id == c.Scheme.Id && i.Partner?.Id == c.Partner?.Id);
            foreach (var choice in day.Shared) week.Model.AddHint(choice.Chosen, Was(choice.Candidate, own: false));
            foreach (var choice in day.Own.Values.SelectMany(o => o)) week.Model.AddHint(choice.Chosen, Was(choice.Candidate, own: true));
            if (found is null) continue;
            foreach (var (id, own) in day.OwnOf)
                foreach (var (quality, takes) in own)
                    week.Model.AddHint(takes, found.Own.Any(o => o.Quality == quality && (o.ForNeed.Contains(id) || o.ByDefault.Contains(id))));
        }
    }
}
