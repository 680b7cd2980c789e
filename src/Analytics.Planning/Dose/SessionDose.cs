using System.Globalization;
using Analytics.Metrics.Strength;
using Analytics.Planning.Exercises;
using Analytics.Planning.Loads;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Schemes;

namespace Analytics.Planning.Dose;

/// <summary>Lines of one session.</summary>
internal static class SessionDose
{
    private const string Zones = "hristov2005";

    public static IEnumerable<DoseLine> Of(PlanPlayer player, PlayerSession session, PlanRules rules, RepetitionTable table)
        => new[] { Minutes(session, rules), Contacts(player, session, rules) }.OfType<DoseLine>()
            .Concat(session.Items.Where(i => i.Exercise.Pattern == MovementPattern.Weightlifting && i.Exercise.Basis.Kind == LoadBasisKind.Lift)
                .GroupBy(i => i.Exercise.Id).SelectMany(g => Movement([.. g], rules, table)))
            .Concat(session.Items.Where(i => DoseCount.ZoneParts(i.Exercise, i.Scheme, table) > 0).GroupBy(i => i.Exercise.Quality).Where(g => g.Select(i => i.Exercise.Id).Distinct().Skip(1).Any())
                .Select(g => Family(g.Key, [.. g], rules, table)))
            .Concat(session.Items.SelectMany(Timing))
            .Select(l => l with { Session = session.Slot });

    private static DoseLine Minutes(PlayerSession session, PlanRules rules) => new()
    {
        RuleId = RuleIds.SessionMinutes,
        Subject = "session",
        What = "time",
        Amount = SessionTime.Of(session.Items, rules).Minutes,
        Unit = "min",
        Limit = rules.IsOn(RuleIds.SessionMinutes) ? session.Slot.Minutes : null,
        Source = rules[RuleIds.SessionMinutes].Source,
    };

    private static DoseLine? Contacts(PlanPlayer player, PlayerSession session, PlanRules rules)
    {
        var contacts = session.Items.Sum(i => i.Contacts);
        var limit = ContactLimit.Of(player, rules);
        return contacts == 0 ? null : new()
        {
            RuleId = RuleIds.JumpContacts,
            Subject = "session",
            What = "ground contacts",
            Amount = contacts,
            Limit = rules.IsOn(RuleIds.JumpContacts) ? limit.Most : null,
            Source = rules[RuleIds.JumpContacts].Source,
            Note = !limit.IsHeavy ? limit.Level : player.BodyMass is null ? $"{limit.Level}, body mass not known: as for a heavy player" : $"{limit.Level}, heavy player",
        };
    }

    // A ramp crosses zones, and a movement may come twice: repetitions are summed zone by zone.
    private static IEnumerable<DoseLine> Movement(IReadOnlyList<PlannedItem> items, PlanRules rules, RepetitionTable table)
    {
        var name = items[0].Exercise.Name;
        var sets = items.SelectMany(i => SetPercents.Of(i.Scheme, table).Percent.Select(p => (Percent: p, Repetitions: i.Scheme.Repetitions * DoseCount.Sides(i.Exercise)))).ToList();
        foreach (var zone in sets.Where(s => s.Percent > 0).GroupBy(s => ZoneGuide.At(s.Percent)).OrderBy(z => z.Key.FromPercent))
            yield return new()
            {
                RuleId = RuleIds.ZoneRepetitions,
                Subject = name,
                What = $"repetitions {zone.Key.Words}",
                Amount = zone.Sum(s => s.Repetitions),
                Limit = rules.IsOn(RuleIds.ZoneRepetitions) ? zone.Key.Most : null,
                Source = Zones,
                Note = zone.Max(s => s.Repetitions) > zone.Key.MostPerSet ? string.Create(CultureInfo.InvariantCulture, $"sets of {zone.Max(s => s.Repetitions)}, the guide has {zone.Key.LeastPerSet} to {zone.Key.MostPerSet}") : null,
            };
        foreach (var item in items.Where(i => SetPercents.Of(i.Scheme, table).Percent.Count == 0))
            yield return new() { Subject = name, What = "repetitions", Amount = item.Scheme.TotalRepetitions, Source = Zones, Note = "no per cent named: no zone" };
        if (sets.Count > 0)
        {
            var index = sets.Aggregate((double?)0, (sum, s) => sum + IntensityIndex.OfSet(s.Repetitions, s.Percent));
            yield return new() { Subject = name, What = "intensity index", Amount = index, Source = Zones, Note = index is null ? "not defined at 100 % and more" : null };
        }
    }

    // Several movements that are nearly one share one guide.
    private static DoseLine Family(TrainedQuality quality, IReadOnlyList<PlannedItem> items, PlanRules rules, RepetitionTable table) => new()
    {
        RuleId = RuleIds.ZoneRepetitions,
        Subject = ZoneFamily.Name(quality),
        What = "share of the guide, together",
        Amount = 100.0 * items.Sum(i => DoseCount.ZoneParts(i.Exercise, i.Scheme, table)) / ZoneGuide.Whole,
        Unit = "%",
        Limit = rules.IsOn(RuleIds.ZoneRepetitions) ? 100 : null,
        Source = SetScheme.CommonPractice,
    };

    private static IEnumerable<DoseLine> Timing(PlannedItem item)
    {
        var (exercise, scheme) = (item.Exercise, item.Scheme);
        if (scheme.Kind == SchemeKind.OnTheMinute)
            yield return new()
            {
                Subject = exercise.Name,
                What = "time of a set",
                Amount = ExerciseTime.OfSet(exercise, scheme).Seconds,
                Unit = "s",
                Limit = scheme.Interval.Seconds,
                Source = SetScheme.CommonPractice,
                Note = ExerciseTime.Overrun(exercise, scheme) is null ? null : "a set is longer than its interval: no rest is left",
            };
        if (WorkRest.Of(exercise, scheme) is { } check && scheme.TotalRepetitions > 1)
            yield return new()
            {
                Subject = exercise.Name,
                What = "rest",
                Amount = check.Rest.Seconds,
                Unit = "s",
                Limit = check.Least?.Seconds,
                IsLeast = true,
                Source = "baechle2008",
                Note = check.Least is null ? "the guide is for efforts up to 10 s" : string.Create(CultureInfo.InvariantCulture, $"the guide has {check.Least.Value.Seconds:0.#} to {check.Most!.Value.Seconds:0.#} s"),
            };
    }
}
