using Analytics.Planning.Plans;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>The session of a player who trains apart, in one line.</summary>
internal static class ApartLine
{
    public static string Of(WeekContext week, UnitSession unit, SheetMarks marks)
    {
        var player = unit.Players[0];
        var items = unit.For(player);
        if (items.Count == 0) return "nothing in this session";
        return string.Join("; ", items.Select(i =>
        {
            var load = LoadText.Of(week, week.Load(player, i, unit.Slot.Date), marks, [], withUnit: true);
            var text = $"{i.Exercise.Name} {WeekWords.Sets(i)}";
            return load.Main.Length == 0 ? text : $"{text}: {load.Main}{(load.Marks.Length > 0 ? " " + load.Marks : "")}";
        }));
    }
}
