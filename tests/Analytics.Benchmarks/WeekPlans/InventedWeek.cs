using Analytics.Planning;
using Analytics.Planning.Exercises;
using Analytics.Planning.Loads;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rooms;
using Analytics.Planning.Weeks;
using Analytics.Quantities;
using Analytics.Season;
using Analytics.Statistics;

namespace Analytics.Benchmarks.WeekPlans;

/// <summary>A week of four days with the catalogue, the rooms and the rules that come with the kit, for an invented squad: every fourth player has a need.</summary>
internal static class InventedWeek
{
    private static readonly DateOnly s_monday = new(2026, 6, 15);

    /// <summary>Settings of a season without a folder training.</summary>
    public static TrainingSettings Shipped()
    {
        var folder = Directory.CreateTempSubdirectory("week-plans-").FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, "season.json"), "{\"club\":\"Invented\",\"season\":\"2026\",\"from\":\"2026-01-01\",\"to\":\"2026-12-31\"}");
            File.WriteAllText(Path.Combine(folder, "athletes.csv"), "athlete_id,name,position,group\nP001,Player,X,Group\n");
            return SeasonReader.Read(folder).Training;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>The week of a squad; groups of seven or eight, up to eight groups.</summary>
    public static PlanProblem Of(TrainingSettings kit, int players)
    {
        // Places for a squad of that size: sixteen racks for sixty.
        var room = new Room("weight room", kit.Rooms.SelectMany(r => r.Stations).GroupBy(s => s.Key).ToDictionary(s => s.Key, _ => Math.Max(4, (int)Math.Ceiling(players * 16 / 60.0))));
        SessionSlot Slot(int day, string kind, int minutes) => new() { Date = s_monday.AddDays(day), Kind = kind, Minutes = minutes, Room = room.Id };
        return new()
        {
            Monday = s_monday,
            Sessions = [Slot(0, "max_strength", 75), Slot(1, "speed", 60), Slot(3, "power", 70), Slot(4, "upper_power", 65)],
            Players = [.. Enumerable.Range(0, players).Select(i => Player(i, Groups(players)))],
            Exercises = kit.Exercises,
            Schemes = kit.Schemes,
            Kinds = kit.Kinds,
            Rooms = [room],
            Rules = kit.Rules,
        };
    }

    /// <summary>Position groups of a squad.</summary>
    public static int Groups(int players) => Math.Clamp(players / 7, 1, 8);

    private static PlanPlayer Player(int i, int groups) => new()
    {
        Id = FormattableString.Invariant($"P{i:000}"),
        Name = FormattableString.Invariant($"Player {i}"),
        Group = FormattableString.Invariant($"Group {i % groups}"),
        BodyMass = Mass.FromKilograms(85 + i % 5 * 10),
        TrainingYears = 2 + i % 4,
        Maxima = new[] { Known("back_squat", 140 + i % 7 * 10), Known("bench_press", 110 + i % 5 * 8), Known("power_clean", 95 + i % 6 * 6) }.ToDictionary(m => m.Lift),
        Needs = i % 4 == 0 ? [new(TrainedQualities.All[i / 4 % 6], 0.85 + i % 3 * 0.04, "invented", true)] : [],
    };

    private static KnownMaximum Known(string lift, double kilograms)
        => new(lift, kilograms, new Interval(kilograms * 0.95, kilograms * 1.05), s_monday.AddDays(-7), "measured", null, kilograms, null);
}
