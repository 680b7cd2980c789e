using System.Globalization;
using System.Text;
using Analytics.Season.Training;
using Analytics.Simulation.Demo.Squad;

namespace Analytics.Simulation.Demo.Files;

/// <summary>The folder of training: two weeks after the last testing day, the rooms, what stands in them and three players who may not do everything. No random number is drawn for it.</summary>
public static class TrainingSheets
{
    private const string WeightRoom = "weight room", Hall = "turf hall";

    private static readonly DateOnly s_monday = new(2026, 6, 15);

    private static readonly string[] s_early = ["Offensive line", "Defensive line", "Linebackers", "Tight ends"];

    /// <summary>Stations and their places; 16 racks for three each hold 48 at once.</summary>
    private static readonly (string Room, string Station, int Places)[] s_places =
    [
        (WeightRoom, "rack", 16), (WeightRoom, "platform", 16), (WeightRoom, "bench", 16), (WeightRoom, "boxes", 10), (WeightRoom, "hurdles", 8), (WeightRoom, "turf", 6),
        (Hall, "turf", 24), (Hall, "hurdles", 12), (Hall, "boxes", 10), (Hall, "sled", 8), (Hall, "stairs", 6),
    ];

    /// <summary>The files by path.</summary>
    public static IEnumerable<(string Path, byte[] Bytes)> Of(IReadOnlyList<Player> players)
    {
        yield return ("training/exercises.csv", Encoding.UTF8.GetBytes(ShippedTraining.Text("exercises.csv")));
        foreach (var sheet in new[] { Calendar(players), Rooms(), Weights(), Restrictions(players) }) yield return ($"training/{sheet.Name}.csv", CsvText.Plain.Write(sheet));
    }

    private static Sheet Calendar(IReadOnlyList<Player> players)
    {
        var late = players.Select(p => p.Group).Distinct().Except(s_early);
        var sheet = new Sheet("calendar", "date", "start", "kind", "minutes", "room", "groups");
        for (var week = 0; week < 2; week++)
        {
            // On strength days all want the racks: heavy groups come first, the others after them.
            Add(week, 0, "07:00", "max_strength", 75, WeightRoom, string.Join('+', s_early));
            Add(week, 0, "08:30", "max_strength", 75, WeightRoom, string.Join('+', late));
            Add(week, 1, "07:00", "speed", 60, Hall, "");
            Add(week, 3, "07:00", "power", 70, WeightRoom, "");
            Add(week, 4, "07:00", "upper_power", 65, WeightRoom, "");
        }

        return sheet;

        void Add(int week, int weekday, string start, string kind, int minutes, string room, string groups)
            => sheet.Add(Text(s_monday.AddDays(7 * week + weekday)), start, kind, minutes, room, groups);
    }

    private static Sheet Rooms()
    {
        var sheet = new Sheet("rooms", "room", "station", "places");
        foreach (var (room, station, places) in s_places) sheet.Add(room, station, places);
        return sheet;
    }

    private static Sheet Weights()
    {
        var sheet = new Sheet("weights", "item", "weight_lb", "pairs");
        sheet.Add("bar", 45, null);
        foreach (var (pounds, pairs) in new[] { (45.0, 5), (35, 1), (25, 1), (10, 2), (5, 1), (2.5, 1) }) sheet.Add("plate", pounds, pairs);
        for (var pounds = 10; pounds <= 120; pounds += 5) sheet.Add("dumbbell", pounds, null);
        foreach (var pounds in new[] { 6, 8, 10, 12, 14, 16, 20 }) sheet.Add("medicine_ball", pounds, null);
        foreach (var pounds in new[] { 10, 25, 45, 90, 135, 180 }) sheet.Add("sled_plate", pounds, null);
        return sheet;
    }

    private static Sheet Restrictions(IReadOnlyList<Player> players)
    {
        const string Overhead = "overhead_press+push_press+push_jerk+split_jerk+split_jerk_behind_neck+hang_snatch+power_snatch+block_snatch+overhead_back_throw+slam";
        var sheet = new Sheet("restrictions", "athlete_id", "from", "to", "out", "note");
        sheet.Add(players[6].Id, "2026-06-09", "2026-06-28", Overhead, "no overhead work: shoulder");
        sheet.Add(players[23].Id, "2026-06-12", null, "jump", "no jumps until the knee is seen again");
        // He is listed as limited, upper body only, when he comes back: staff have put it into patterns.
        sheet.Add(players[52].Id, "2026-06-16", "2026-06-25", "squat+hinge+single_leg+weightlifting+jump+sprint+carry", "upper body only");
        sheet.Add(players[48].Id, "2026-06-10", "2026-06-19", "sprint+carry", "hamstring");
        return sheet;
    }

    private static string Text(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
