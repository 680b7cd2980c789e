using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Exercises;
using Analytics.Planning.People;
using Analytics.Planning.Plans;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>An exercise of a sheet.</summary>
/// <param name="Letter">Its letter on the sheet.</param>
/// <param name="Item">Exercise and scheme.</param>
/// <param name="Own">The own work it is; null in the shared part.</param>
internal sealed record SheetItem(string Letter, PlannedItem Item, OwnWork? Own);

/// <summary>What one group does in one session, ready to be set on one page.</summary>
internal sealed class SessionSheet
{
    private SessionSheet(WeekContext week, IReadOnlyList<UnitSession> units)
    {
        First = units[0];
        Main = units.FirstOrDefault(u => !u.IsApart);
        Apart = [.. units.Where(u => u.IsApart)];
        Items = Main is null ? [] : Lettered(Main);
        Players = Main is null ? [] : [.. Main.Players.Select(week.Player)];
        Shared = [.. Items.Where(i => i.Own is null && Shows(week, i.Item, Players, First.Slot.Date))];
    }

    /// <summary>Any of its units: group, session and kind are the same in all.</summary>
    public UnitSession First { get; }

    /// <summary>The group; null when everybody in it trains apart.</summary>
    public UnitSession? Main { get; }

    /// <summary>Restricted players, each with a session of his own.</summary>
    public IReadOnlyList<UnitSession> Apart { get; }

    /// <summary>Exercises in session order, own work at its place.</summary>
    public IReadOnlyList<SheetItem> Items { get; }

    public IReadOnlyList<PlanPlayer> Players { get; }

    /// <summary>Shared exercises for which somebody has a load, a height, or a word in its place.</summary>
    public IReadOnlyList<SheetItem> Shared { get; }

    /// <summary>The sheets of a week, by session and group.</summary>
    public static IEnumerable<SessionSheet> Of(WeekContext week)
        => week.Sessions.GroupBy(s => (s.Slot, s.Group)).Select(g => new SessionSheet(week, [.. g]));

    /// <summary>Exercises of a unit in session order, with letters.</summary>
    public static IReadOnlyList<SheetItem> Lettered(UnitSession unit)
        => [.. unit.Shared.Select(i => (Item: i, Own: (OwnWork?)null)).Concat(unit.Own.Select(o => (o.Item, Own: (OwnWork?)o)))
            .OrderBy(i => i.Item.Exercise.Quality.PartOfSession()).Select((i, at) => new SheetItem(WeekWords.Letter(at), i.Item, i.Own))];

    /// <summary>The own work of a player; null when he has none.</summary>
    public SheetItem? OwnOf(string athleteId) => Items.FirstOrDefault(i => i.Own is { } own && (own.ForNeed.Contains(athleteId) || own.ByDefault.Contains(athleteId)));

    /// <summary>Notes of a load that everybody with a load has: said once at the exercise.</summary>
    public IReadOnlyList<string> Common(WeekContext week, SheetItem item)
    {
        var all = Players.Select(p => week.Load(p.Id, item.Item, First.Slot.Date)).Where(l => l.Working.Count > 0).ToList();
        return all.Count < 2 ? [] : [.. all[0].Notes.Where(n => all.TrueForAll(l => l.Notes.Contains(n)))];
    }

    /// <summary>Why a player does his own work, in words: a need with its probability, or the default.</summary>
    public static string Why(PlanPlayer player, OwnWork own)
    {
        if (own.ByDefault.Contains(player.Id) && !own.ForNeed.Contains(player.Id)) return "balanced default";
        var need = player.Needs.FirstOrDefault(n => n.IsNeed && n.IsServedBy(own.Item.Exercise));
        return $"for a need: {need?.What ?? own.Quality.Name()}{(need?.Probability is { } p ? ", " + Words.Sure(p) : "")}";
    }

    private static bool Shows(WeekContext week, PlannedItem item, IReadOnlyList<PlanPlayer> players, DateOnly day)
        => players.Any(p => week.Load(p.Id, item, day) is var load && (load.Working.Count > 0 || load.Height is not null || load.Instead is not null));
}
