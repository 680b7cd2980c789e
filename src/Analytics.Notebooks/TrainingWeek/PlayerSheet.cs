using System.Globalization;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Exercises;
using Analytics.Planning.Plans;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>The week of one player: every session in order with his loads, and why his own work is what it is.</summary>
internal static class PlayerSheet
{
    public static ReportBlock Of(WeekContext week, string id)
    {
        var player = week.Player(id);
        var sessions = week.Sessions.Where(s => s.Players.Contains(id)).ToList();
        var needs = player.Needs.Where(n => n.IsNeed).ToList();
        List<Block> blocks = [new Note(needs.Count == 0 ? "Your tests name no need: your own work is that of your group, balanced over the qualities."
            : $"Your own work serves {Words.List([.. needs.Select(n => n.Quality.Name())])}: {string.Join("; ", needs.Select(n => n.Reason))}.")];
        blocks.AddRange(sessions.Select(s => Session(week, id, s)));
        return new Section($"The week of {player.Name}", "", blocks);
    }

    private static DataTable Session(WeekContext week, string id, UnitSession session)
    {
        var own = session.Own.FirstOrDefault(o => o.ForNeed.Contains(id) || o.ByDefault.Contains(id));
        return DataTable.Of($"{SheetWords.When(session.Slot)}: {session.Kind.Name}, about {session.Minutes.ToString("0", CultureInfo.InvariantCulture)} min", session.For(id), t => t
            .Text("Exercise", i => new Cell(Words.Capital(i.Exercise.Name), i.Exercise.Caution))
            .Text("Sets", i => new Cell(SheetWords.Sets(i), SheetWords.Way(i)))
            .Text($"Load, {week.Bar.Symbol}", i => Load(week, id, i, session))
            .Text("Why", i => ReferenceEquals(i, own?.Item) ? new Cell(own!.ForNeed.Contains(id) ? $"your need: {own.Quality.Name()}" : "own work of your group") : new Cell(i.Exercise.Quality.Name())));
    }

    private static Cell Load(WeekContext week, string id, PlannedItem item, UnitSession session)
    {
        var loads = week.Loads(id, item, session.Slot.Date);
        var text = SheetWords.Working(loads, week.Bar);
        if (loads.Height is { } height) text = text.Length > 0 ? $"{text}; {SheetWords.Height(height, week.Season.Settings.JumpUnit)}" : SheetWords.Height(height, week.Season.Settings.JumpUnit);
        string[] notes = [loads.WarmUp.Count > 0 ? "warm-up " + SheetWords.WarmUp(loads, week.Bar) : "", .. loads.Notes];
        return new(text.Length > 0 ? text : loads.Instead, string.Join("; ", notes.Where(n => n.Length > 0)));
    }
}
