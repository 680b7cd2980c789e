using System.Globalization;
using System.Text;
using Analytics.Simulation.Demo.Mess;
using Analytics.Simulation.Demo.Squad;
using Analytics.Simulation.Demo.Testing;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.Demo.Files;

/// <summary>The files of the season that are not testing days.</summary>
public static class SeasonSheets
{
    public static byte[] Settings(DemoOptions options) => Encoding.UTF8.GetBytes(
        $$"""
        {
          "club": "{{Roster.Club}}",
          "season": "{{Roster.Season}}",
          "from": "{{Text(SeasonCalendar.SeasonStart)}}",
          "to": "{{Text(SeasonCalendar.SeasonEnd)}}",
          "units": { "mass": "lb", "jump": "in", "speed": "mph" },
          "defaults": { "timing": "electronic", "start": "three_point_hand", "jump_method": "mat" },
          "retests": [["{{Text(SeasonCalendar.TestingDays[SeasonCalendar.Baseline])}}", "{{Text(SeasonCalendar.TestingDays[SeasonCalendar.Retest])}}"]{{(options.WithEndRetest ? $", [\"{Text(SeasonCalendar.DateOf(SeasonCalendar.June))}\", \"{Text(SeasonCalendar.DateOf(SeasonCalendar.EndRetest))}\"]" : "")}}],
          "worthwhile": { "share": 0.2 }{{(options.WithClips ? ",\n  \"video\": " + Video : "")}}
        }

        """);

    private static string Video => string.Create(CultureInfo.InvariantCulture, $$"""
        {
            "rate_hz": 240, "picture_height_px": 1080, "readout_ms": {{1000 * ContactDrill.ReadOutSeconds}},
            "calibration": { "from": "stick_low", "to": "stick_high", "length_m": 2 },
            "camera_distance_m": 12, "lane_offset_m": {{ContactDrill.NearerMetres}},
            "digitising_sd_px": 1.5, "contact_window_s": [0.40, 0.45]
          }
        """);

    public static Sheet Athletes(IReadOnlyList<Player> players)
    {
        var sheet = new Sheet("athletes", "athlete_id", "name", "position", "group", "stature_in", "birth_year");
        foreach (var p in players) sheet.Add(p.Id, p.Name, p.Position, p.Group, p.StatureInches, p.BirthYear);
        return sheet;
    }

    public static Sheet Spells(IReadOnlyList<Spell> spells, IReadOnlyList<Player> players)
    {
        var sheet = new Sheet("availability", "athlete_id", "from", "to", "status", "note");
        foreach (var s in spells) sheet.Add(players[s.Player].Id, Text(s.From), Text(s.To), s.Status, s.Note);
        return sheet;
    }

    /// <summary>Six weeks of training before the last testing day: four sessions a week.</summary>
    public static Sheet Sessions(ulong seed, IReadOnlyList<Player> players, IReadOnlyList<Spell> spells)
    {
        var sheet = new Sheet("sessions", "date", "athlete_id", "focus", "minutes", "session_rpe", "jump_contacts");
        (int Weekday, string Focus, int Minutes, double Effort, int Contacts)[] week =
            [(0, "max_strength", 75, 7.5, 0), (1, "speed", 60, 6, 24), (3, "power", 65, 6.5, 40), (4, "reactive", 50, 5.5, 96)];
        for (var weekNumber = 0; weekNumber < 6; weekNumber++)
        {
            foreach (var (weekday, focus, minutes, effort, contacts) in week)
            {
                var date = new DateOnly(2026, 4, 27).AddDays(7 * weekNumber + weekday);
                foreach (var player in players)
                {
                    var random = RandomNumbers.For(seed, "session " + focus, player.Index, weekNumber);
                    var rpe = Math.Clamp(Math.Round(random.Normal(effort, 0.9)), 1, 10);
                    if (random.Chance(0.03) || spells.Any(s => s.Player == player.Index && s.Covers(date))) continue;
                    // Heavy players do fewer jumps.
                    var jumps = player.Norm.BoxInches > 12 ? contacts : contacts * 2 / 3;
                    sheet.Add(Text(date), player.Id, focus, minutes, rpe, jumps);
                }
            }
        }

        return sheet;
    }

    private static string Text(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
