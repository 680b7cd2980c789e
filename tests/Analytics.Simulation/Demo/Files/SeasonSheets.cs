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

    /// <summary>The squad; with the mess, one in twenty never said how long he has trained.</summary>
    public static Sheet Athletes(ulong seed, IReadOnlyList<Player> players, bool withMess)
    {
        var sheet = new Sheet("athletes", "athlete_id", "name", "position", "group", "stature_in", "birth_year", "training_years");
        foreach (var p in players)
        {
            var unsaid = withMess && RandomNumbers.For(seed, "training years unsaid", p.Index).Chance(0.05);
            sheet.Add(p.Id, p.Name, p.Position, p.Group, p.StatureInches, p.BirthYear, unsaid ? null : p.TrainingYears);
        }

        return sheet;
    }

    public static Sheet Spells(IReadOnlyList<Spell> spells, IReadOnlyList<Player> players)
    {
        var sheet = new Sheet("availability", "athlete_id", "from", "to", "status", "note");
        foreach (var s in spells) sheet.Add(players[s.Player].Id, Text(s.From), Text(s.To), s.Status, s.Note);
        return sheet;
    }

    private static string Text(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
