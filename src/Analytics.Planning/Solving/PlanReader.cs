using Analytics.Planning.Dose;
using Analytics.Planning.Exercises;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>Reads the plan off a solved model.</summary>
internal static class PlanReader
{
    public static IReadOnlyList<UnitSession> Sessions(WeekModel week, CpSolver solver)
        => [.. week.Days.OrderBy(d => d.Slot.Date).ThenBy(d => d.Slot.Start ?? TimeOnly.MinValue).ThenBy(d => d.UnitIndex).Select(d => Session(week, solver, d))];

    private static UnitSession Session(WeekModel week, CpSolver solver, UnitDay day)
    {
        var inOrder = week.Problem.Rules.IsOn(RuleIds.SessionOrder);
        var shared = InOrder(inOrder, day.Shared.Where(c => solver.BooleanValue(c.Chosen)).Select(c => Item(week, solver, day, c.Candidate, own: false)));
        var own = new List<OwnWork>();
        foreach (var (quality, choices) in day.Own)
        {
            if (choices.FirstOrDefault(c => solver.BooleanValue(c.Chosen)) is not { } choice) continue;
            var takers = day.Unit.Players.Where(p => day.OwnOf.TryGetValue(p.Id, out var o) ? solver.BooleanValue(o[quality]) : solver.BooleanValue(day.Default[quality])).ToList();
            bool Needs(People.PlanPlayer p) => day.OwnOf.ContainsKey(p.Id) && p.Needs.Any(n => n.IsNeed && n.IsServedBy(choice.Candidate.Exercise));
            own.Add(new(quality, Item(week, solver, day, choice.Candidate, own: true),
                [.. takers.Where(Needs).Select(p => p.Id)], [.. takers.Where(p => !Needs(p)).Select(p => p.Id)]));
        }

        own.Sort((a, b) => a.Quality.PartOfSession().CompareTo(b.Quality.PartOfSession()) is not 0 and var part ? part : a.Quality.CompareTo(b.Quality));
        return new()
        {
            Slot = day.Slot,
            Kind = day.Kind,
            Group = day.Unit.Group,
            Players = [.. day.Unit.Players.Select(p => p.Id)],
            IsApart = day.Unit.IsApart,
            Shared = shared,
            Own = own,
            IsInOrder = inOrder,
            Minutes = SessionTime.Of(shared, [.. own.Select(o => o.Item)], week.Problem.Rules).Minutes,
        };
    }

    private static PlannedItem Item(WeekModel week, CpSolver solver, UnitDay day, Candidate candidate, bool own)
        => candidate.Item(week.Problem.Earlier.Any(e => e.Force == ChoiceForce.Keep && e.IsOwnWork == own && KeptConstraints.IsFor(e, day) && KeptConstraints.Matches(week.Problem, e, day, candidate)
            && !IsKeptBefore(week, solver, e, day)));

    // A row for any session of the day is kept by the first that has it; the second would else come back as fixed too.
    private static bool IsKeptBefore(WeekModel week, CpSolver solver, EarlierChoice row, UnitDay day)
        => week.Of(day.UnitIndex).Where(d => d.Slot.Date == day.Slot.Date && (d.Slot.Start ?? TimeOnly.MinValue) < (day.Slot.Start ?? TimeOnly.MinValue))
            .Any(d => (row.IsOwnWork ? d.Own.Values.SelectMany(o => o) : d.Shared).Any(c => KeptConstraints.Matches(week.Problem, row, d, c.Candidate) && solver.BooleanValue(c.Chosen)));

    // Inside a part: the staples first, then by the order of the qualities, so that sheets of two weeks look alike.
    private static List<PlannedItem> InOrder(bool parts, IEnumerable<PlannedItem> items)
        => [.. (parts ? items.OrderBy(i => i.Exercise.Quality.PartOfSession()) : items.OrderBy(i => string.Join('+', i.Exercise.Stations), StringComparer.Ordinal)).ThenBy(i => i.Exercise.Quality).ThenBy(i => i.Exercise.Preference).ThenBy(i => i.Exercise.Id, StringComparer.Ordinal)];
}
