using Analytics.Notebooks.TestingDay;
using Analytics.Season;

namespace Analytics.Notebooks.AthletePage;

/// <summary>Whether the availability list lets a player lift, as far as it knows.</summary>
/// <param name="Spell">The spell that counts; null when the list has none.</param>
/// <param name="IsOut">No loads and no training advice.</param>
/// <param name="IsLimited">Loads only after a word with medical staff.</param>
/// <param name="IsLater">The spell began after the tests.</param>
internal sealed record PlayerStatus(Absence? Spell, bool IsOut, bool IsLimited, bool IsLater)
{
    private const string Limited = "limited";

    /// <summary>
    /// The strictest spell that covers the day. On the latest testing day a later injury or illness counts as well: nobody can tell when the page is read,
    /// and loads from before an injury are no loads.
    /// </summary>
    public static PlayerStatus Of(Athlete player, DateOnly today, bool isLatest)
    {
        var now = player.Absences.Where(s => s.Covers(today)).ToList();
        if (now.Find(s => s.Status != Limited) is { } off) return new(off, true, false, false);
        if (isLatest && player.Absences.FirstOrDefault(s => s.From > today && s.Status is "injured" or "ill") is { } later) return new(later, true, false, true);
        return now.Count > 0 ? new(now[0], false, true, false) : new(null, false, false, false);
    }

    /// <summary>"injured from 7 May to 15 June".</summary>
    public string Text => Spell is null ? "" : $"{Spell.Status} {(Spell.To is { } to ? to == Spell.From ? "on " + Words.ShortDate(to) : $"from {Words.ShortDate(Spell.From)} to {Words.ShortDate(to)}" : "since " + Words.ShortDate(Spell.From))}";
}
