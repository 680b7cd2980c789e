using Analytics.Planning.Plans;
using Analytics.Season;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>Loads that wait for a test, and what else needs care.</summary>
internal static class WeekFlags
{
    /// <summary>Players with a load that is left open until they are tested, with the lifts in words; by player.</summary>
    public static IReadOnlyList<(string AthleteId, string Text)> TestFirst(WeekView view)
        => [.. view.Players.Select(p => (p.Id, Text: string.Join("; ", view.Sessions.Where(s => s.Players.Contains(p.Id))
                .SelectMany(s => s.For(p.Id).Select(i => view.Week.Load(p.Id, i, s.Slot.Date).Instead))
                .OfType<string>().Where(t => t.StartsWith("test first", StringComparison.Ordinal)).Select(t => t["test first: ".Length..]).Distinct()))).Where(p => p.Text.Length > 0)];

    /// <summary>Rows of the list of restrictions that could not be read: whoever they are about is planned without them.</summary>
    public static IReadOnlyList<HeldBackRow> UnreadRestrictions(WeekView view)
        => [.. view.Week.Season.HeldBack.Where(r => r.File.EndsWith("training/restrictions.csv", StringComparison.OrdinalIgnoreCase) && (view.Only is null || r.AthleteId == view.Only.Id))];

    /// <summary>How many rows of the coach's targets could not be read; the page of a player does not tell.</summary>
    public static int UnreadTargets(WeekView view)
        => view.Only is not null ? 0 : view.Week.Season.HeldBack.Where(r => r.File.EndsWith("training/targets.csv", StringComparison.OrdinalIgnoreCase)).Sum(r => Math.Max(r.Rows, 1));

    /// <summary>Flags the page shows: of one player only what names him.</summary>
    public static IEnumerable<RuleFlag> Of(WeekView view)
        => view.Plan?.Flags.Where(f => view.Only is null || f.Subject == view.Only.Name || f.Subject.StartsWith(view.Only.Name + ",", StringComparison.Ordinal)) ?? [];

    /// <summary>Players who train apart.</summary>
    public static IReadOnlyList<string> Apart(WeekView view)
        => view.Plan is null ? [.. view.Players.Where(p => p.Restrictions.Count > 0 && view.Week.Choice.Sessions.Any(s => s.Has(p.Group) && p.Restrictions.Any(r => r.From <= s.Date && (r.To is null || s.Date <= r.To)))).Select(p => p.Id)]
            : [.. view.Sessions.Where(s => s.IsApart).SelectMany(s => s.Players).Distinct().Where(p => view.Only is null || p == view.Only.Id)];
}
