using System.Globalization;
using Analytics.Planning.Dose;
using Analytics.Planning.Exercises;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>Ground contacts of a session and a day, weightlifting repetitions of a session, hard sets of a week.</summary>
internal static class DoseConstraints
{
    public static void Add(WeekModel week)
    {
        var rules = week.Problem.Rules;
        if (rules.IsOn(RuleIds.JumpContacts))
        {
            foreach (var day in week.Days) Contacts(week, day);
            foreach (var days in week.Days.GroupBy(d => (d.UnitIndex, d.Slot.Date)).Where(g => g.Skip(1).Any())) ContactsOfDay(week, [.. days]);
        }

        if (rules.IsOn(RuleIds.ZoneRepetitions))
            foreach (var day in week.Days) Zones(week, day);
        if (!rules.IsOn(RuleIds.HardSets)) return;
        for (var u = 0; u < week.Units.Count; u++)
            foreach (var pattern in MovementPatterns.All) HardSets(week, u, pattern);
    }

    private static void Contacts(WeekModel week, UnitDay day)
    {
        var most = day.Unit.MostContacts(week.Problem.Rules);
        AtMost(week, day, c => c.Contacts, most, new(RuleIds.JumpContacts, $"{PlaceTexts.Session(day.Slot)}, {day.Unit.Label}",
            string.Create(CultureInfo.InvariantCulture, $"at most {most} ground contacts for {day.Unit.Label} on {PlaceTexts.Session(day.Slot)}")));
    }

    // The guide is for a session. Two sessions of a day are held to it together (our choice, no source), each with its largest own work, whoever does it.
    private static void ContactsOfDay(WeekModel week, List<UnitDay> days)
    {
        var (unit, date) = (days[0].Unit, days[0].Slot.Date);
        var most = unit.MostContacts(week.Problem.Rules);
        var sum = LinearExpr.NewBuilder();
        long possible = 0;
        foreach (var day in days)
        {
            foreach (var choice in day.Shared.Where(c => c.Candidate.Contacts > 0))
            {
                sum.AddTerm(choice.Chosen, choice.Candidate.Contacts);
                possible += choice.Candidate.Contacts;
            }

            var own = day.Own.Values.SelectMany(o => o).Where(c => c.Candidate.Contacts > 0).ToList();
            if (own.Count == 0) continue;
            var largest = own.Max(c => c.Candidate.Contacts);
            var contacts = week.Model.NewIntVar(0, largest, $"own contacts {day}");
            foreach (var choice in own) week.Model.Add(contacts >= choice.Chosen * choice.Candidate.Contacts);
            sum.AddTerm(contacts, 1);
            possible += largest;
        }

        if (possible > most)
            week.Rules.Hold(week.Model.Add(sum <= most), new(RuleIds.JumpContacts, $"{PlaceTexts.Day(date)}, {unit.Label}, all sessions",
                string.Create(CultureInfo.InvariantCulture, $"at most {most} ground contacts for {unit.Label} in all sessions of {PlaceTexts.Day(date)}")));
    }

    private static void Zones(WeekModel week, UnitDay day)
    {
        foreach (var quality in day.All.Where(c => c.Candidate.ZoneParts > 0).Select(c => c.Candidate.Exercise.Quality).Distinct().Order())
            AtMost(week, day, c => c.Exercise.Quality == quality ? c.ZoneParts : 0, ZoneGuide.Whole,
                new(RuleIds.ZoneRepetitions, $"{PlaceTexts.Session(day.Slot)}, {ZoneFamily.Name(quality)}", $"{ZoneFamily.Name(quality)} on {PlaceTexts.Session(day.Slot)} together no more than the guide has for one"));
    }

    // Each player does one own work at most, so each is added alone to what all do.
    private static void AtMost(WeekModel week, UnitDay day, Func<Candidate, int> amount, int most, RuleAtPlace rule)
    {
        var shared = day.Shared.Where(c => amount(c.Candidate) > 0).ToList();
        LinearExpr Sum(Choice? own)
        {
            var sum = LinearExpr.NewBuilder();
            foreach (var choice in shared) sum.AddTerm(choice.Chosen, amount(choice.Candidate));
            if (own is not null) sum.AddTerm(own.Chosen, amount(own.Candidate));
            return sum;
        }

        if (shared.Sum(c => amount(c.Candidate)) > most) week.Rules.Hold(week.Model.Add(Sum(null) <= most), rule);
        foreach (var own in day.Own.Values.SelectMany(o => o).Where(c => amount(c.Candidate) > 0)) week.Rules.Hold(week.Model.Add(Sum(own) <= most), rule);
    }

    private static void HardSets(WeekModel week, int unit, MovementPattern pattern)
    {
        var rules = week.Problem.Rules;
        var most = (long)rules.Value(RuleIds.HardSets);
        var sum = LinearExpr.NewBuilder();
        long possible = 0;
        foreach (var day in week.Of(unit))
        {
            foreach (var choice in day.Shared.Where(c => c.Candidate.Exercise.Pattern == pattern && c.Candidate.HardSets(rules) > 0))
            {
                sum.AddTerm(choice.Chosen, choice.Candidate.HardSets(rules));
                possible += choice.Candidate.HardSets(rules);
            }

            var own = day.Own.Values.SelectMany(o => o).Where(c => c.Candidate.Exercise.Pattern == pattern && c.Candidate.HardSets(rules) > 0).ToList();
            if (own.Count == 0) continue;
            var largest = own.Max(c => c.Candidate.HardSets(rules));
            var sets = week.Model.NewIntVar(0, largest, $"own hard sets {day} {pattern}");
            foreach (var choice in own) week.Model.Add(sets >= choice.Chosen * choice.Candidate.HardSets(rules));
            sum.AddTerm(sets, 1);
            possible += largest;
        }

        if (possible > most)
            week.Rules.Hold(week.Model.Add(sum <= most), new(RuleIds.HardSets, pattern.Name(),
                string.Create(CultureInfo.InvariantCulture, $"at most {most} hard sets of {pattern.Name()} a week")));
    }
}
