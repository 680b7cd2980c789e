using Analytics.Notebooks.TestingDay;
using Analytics.Planning.People;
using Analytics.Season;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>What the availability list says about one player in one week.</summary>
/// <param name="Out">Days with a session on which he is out; each with the spell.</param>
/// <param name="IsWholeWeek">Whether these are all of them.</param>
/// <param name="Limited">A spell of limited training on a day on which he trains; null for none.</param>
internal sealed record WeekAbsence(IReadOnlyList<(DateOnly Day, Absence Spell)> Out, bool IsWholeWeek, Absence? Limited)
{
    private const string LimitedStatus = "limited";

    public static WeekAbsence Of(Athlete player, IReadOnlyList<DateOnly> days)
    {
        // The strictest spell that covers a day counts; without an end it lasts.
        List<(DateOnly Day, Absence Spell)> off = [.. days.Order().Select(d => (Day: d, Spell: player.Absences.FirstOrDefault(a => a.Status != LimitedStatus && a.Covers(d))))
            .Where(d => d.Spell is not null).Select(d => (d.Day, d.Spell!))];
        var trains = days.Where(d => off.TrueForAll(o => o.Day != d)).ToList();
        return new(off, trains.Count == 0, player.Absences.FirstOrDefault(a => a.Status == LimitedStatus && trains.Exists(a.Covers)));
    }

    /// <summary>"injured from 7 May to 15 June", spells one after the other.</summary>
    public string Reason => Words.List([.. Out.Select(o => o.Spell).Distinct().Select(Text)]);

    /// <summary>The days out as a restriction each, for a plan that keeps him in on the others.</summary>
    public IEnumerable<Restriction> Restrictions(string athleteId) => Out.Select(o => new Restriction
    {
        AthleteId = athleteId,
        From = o.Day,
        To = o.Day,
        IsEverything = true,
        Note = $"listed as {Text(o.Spell)}",
    });

    public static string Text(Absence spell) => new AthletePage.PlayerStatus(spell, false, false, false).Text;
}
