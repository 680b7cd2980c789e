using Analytics.Notebooks.TestingDay;
using Analytics.Planning.People;
using Analytics.Season;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>What the availability list says about one player in one week.</summary>
/// <param name="Out">Days with a session on which he is out; each with the spell.</param>
/// <param name="IsWholeWeek">Whether these are all of them.</param>
/// <param name="Limited">Days on which he trains limited; each with the spell.</param>
internal sealed record WeekAbsence(IReadOnlyList<(DateOnly Day, Absence Spell)> Out, bool IsWholeWeek, IReadOnlyList<(DateOnly Day, Absence Spell)> Limited)
{
    private const string LimitedStatus = "limited";

    public static WeekAbsence Of(Athlete player, IReadOnlyList<DateOnly> days)
    {
        // The strictest spell that covers a day counts; without an end it lasts.
        List<(DateOnly Day, Absence Spell)> off = [.. days.Order().Select(d => (Day: d, Spell: player.Absences.FirstOrDefault(a => a.Status != LimitedStatus && a.Covers(d))))
            .Where(d => d.Spell is not null).Select(d => (d.Day, d.Spell!))];
        var trains = days.Where(d => off.TrueForAll(o => o.Day != d)).ToList();
        return new(off, trains.Count == 0, [.. trains.Select(d => (Day: d, Spell: player.Absences.FirstOrDefault(a => a.Status == LimitedStatus && a.Covers(d)))).Where(d => d.Spell is not null).Select(d => (d.Day, d.Spell!))]);
    }

    /// <summary>"injured from 7 May to 15 June", spells one after the other.</summary>
    public string Reason => Words.List([.. Out.Select(o => o.Spell).Distinct().Select(Text)]);

    /// <summary>
    /// The days on which he does nothing, for a plan that keeps him in on the others: those he is out, and those he is limited without staff having listed what is out.
    /// A list names what is out; where there is none, nothing is known to be in.
    /// </summary>
    /// <param name="athleteId">Identifier of the player.</param>
    /// <param name="listed">What staff have listed for him.</param>
    public IEnumerable<Restriction> Restrictions(string athleteId, IReadOnlyCollection<Restriction> listed)
        => Out.Concat(Limited.Where(l => !listed.Any(r => r.From <= l.Day && (r.To is null || l.Day <= r.To)))).OrderBy(o => o.Day).Select(o => new Restriction
        {
            AthleteId = athleteId,
            From = o.Day,
            To = o.Day,
            IsEverything = true,
            Note = $"listed as {Text(o.Spell)}",
        });

    /// <summary>"limited from 16 June to 25 June: ..." with what that means for the plan; null when he is not limited.</summary>
    /// <param name="listed">What staff have listed for him.</param>
    public string? LimitedReason(IReadOnlyCollection<Restriction> listed)
    {
        if (Limited.Count == 0) return null;
        var nothing = Restrictions("", listed).Count(r => Limited.Any(l => l.Day == r.From));
        var spells = Words.List([.. Limited.Select(l => l.Spell).Distinct().Select(Text)]);
        return spells + (nothing == Limited.Count ? ": nothing is planned for him until medical staff have listed in training/restrictions.csv what is out"
            : nothing == 0 ? ": planned with what the restrictions listed leave; medical staff say first whether that is all"
            : ": nothing is planned on days for which training/restrictions.csv lists nothing; medical staff say first what he may do");
    }

    public static string Text(Absence spell) => new AthletePage.PlayerStatus(spell, false, false, false).Text;
}
