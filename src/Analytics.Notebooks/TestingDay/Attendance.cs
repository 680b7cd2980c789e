using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tables;

namespace Analytics.Notebooks.TestingDay;

/// <summary>Who was tested, by group, and who was not and why.</summary>
internal static class Attendance
{
    public static Block Of(DayContext day)
    {
        var squad = day.Season.Athletes;
        var absent = squad.Where(a => !day.WasTested(a.Id)).ToList();
        var limited = squad.Where(a => day.WasTested(a.Id) && day.StatusOf(a) is not null).ToList();
        var table = DataTable.Of("Players tested by position group", day.Groups, t => t
            .Text("Group", g => g)
            .Number("Squad", "", 0, g => squad.Count(a => a.Group == g))
            .Number("Tested", "", 0, g => squad.Count(a => a.Group == g && day.WasTested(a.Id)))
            .Text("Not tested", g => Names(day, absent.Where(a => a.Group == g))));
        List<Block> blocks = [table];
        if (limited.Count > 0)
            blocks.Add(new Note($"Tested while listed as not fully available: {Names(day, limited)}. Read their numbers with that in mind."));
        return new Section("Who was tested", $"{Words.PlayersOf(squad.Count - absent.Count, squad.Count)} with at least one kept result.", [.. blocks]);
    }

    private static string Names(DayContext day, IEnumerable<Season.Athlete> athletes)
        => string.Join("; ", athletes.Select(a => day.StatusOf(a) is { } status ? $"{a.Name} ({status})" : a.Name));
}
