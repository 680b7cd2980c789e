using System.Globalization;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Season;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>Who was there on which testing day, who was out and why, and who has too little to be judged.</summary>
internal static class TookPartBlock
{
    public static Block Of(SeasonContext season)
    {
        var presence = season.Presence;
        var days = DataTable.Of("Players tested on each day", season.Days, t => t
            .Text("Testing day", d => Words.Date(d.Date))
            .Number("Tested", "", 0, d => presence.On(d).Count)
            .Number("Squad", "", 0, d => season.Squad.Count(a => presence.Belongs(a, d.Date)))
            .Text("Not fully available", d => Out(season, presence, d))
            .Number("Absent, no reason noted", "", 0, d => season.Squad.Count(a => presence.Belongs(a, d.Date) && !presence.On(d).Contains(a.Id) && StatusOn(a, d.Date) is null)));
        var never = season.Squad.Where(a => season.Days.All(d => !presence.On(d).Contains(a.Id))).ToList();
        var once = season.Squad.Where(a => season.Days.Count(d => presence.On(d).Contains(a.Id)) == 1).ToList();
        List<Block> blocks = [days];
        if (season.Days.Count > 1 && never.Count + once.Count > 0)
            blocks.Add(new Note(string.Join(" ", new[] { Named("Never tested in this span", never), Named("Tested on one day only, so no change can be told", once) }.Where(s => s.Length > 0))));
        blocks.Add(new Note("Players who miss a day are in the trends by what they showed on other days. That is fair as long as they are not away because of their level that day; a squad that tests only its healthy players looks better than it is."));
        return new Section("Who took part", $"{Words.PlayersOf(season.Squad.Count - never.Count, season.Squad.Count)} with at least one kept result.", [.. blocks]);
    }

    private static string? StatusOn(Athlete athlete, DateOnly day) => athlete.Absences.FirstOrDefault(s => s.Covers(day))?.Status;

    private static string? Out(SeasonContext season, Presence presence, Season.TestingDay day)
    {
        var tested = presence.On(day);
        var listed = season.Squad.Select(a => (Status: StatusOn(a, day.Date), Tested: tested.Contains(a.Id))).Where(a => a.Status is not null)
            .GroupBy(a => a.Status!).OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => string.Create(CultureInfo.InvariantCulture, $"{g.Count()} {g.Key}{(g.Count(a => a.Tested) is > 0 and var came ? $" ({came} tested)" : "")}")).ToList();
        return listed.Count == 0 ? null : string.Join(", ", listed);
    }

    private static string Named(string what, List<Athlete> athletes) => athletes.Count == 0 ? "" : $"{what}: {string.Join(", ", athletes.Select(a => a.Name))}.";
}
