using Analytics.Planning.Exercises;
using Analytics.Planning.Loads;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Weeks;
using Analytics.Quantities;
using Analytics.Statistics;

namespace Analytics.Planning.Tests.Solving;

/// <summary>Invented players and weeks.</summary>
internal static class SampleSquad
{
    /// <summary>Monday of all weeks.</summary>
    public static DateOnly Monday { get; } = new(2026, 6, 15);

    private static readonly string[] s_groups = ["Linemen", "Linebackers", "Backs", "Receivers", "Ends", "Safeties", "Kickers", "Quarterbacks"];

    /// <summary>Players in turn of the groups; every fourth has a need, in turn of the qualities.</summary>
    public static IReadOnlyList<PlanPlayer> Players(int count, int groups) => [.. Enumerable.Range(0, count).Select(i => Player($"P{i:00}", s_groups[i % groups], i))];

    public static PlanPlayer Player(string id, string group, int i, params TrainedQuality[] needs) => new()
    {
        Id = id,
        Name = $"Player {id}",
        Group = group,
        BodyMass = Mass.FromKilograms(85 + i % 5 * 10),
        TrainingYears = 2 + i % 4,
        Maxima = new Dictionary<string, KnownMaximum>
        {
            ["back_squat"] = Known("back_squat", 140 + i % 7 * 10),
            ["bench_press"] = Known("bench_press", 110 + i % 5 * 8),
            ["power_clean"] = Known("power_clean", 95 + i % 6 * 6),
        },
        Needs = needs.Length > 0 ? [.. needs.Select(q => new QualityNeed(q, 0.9, "test", true))]
            : i % 4 == 0 ? [new(TrainedQualities.All[i / 4 % 6], 0.85 + i % 3 * 0.04, "test", true)] : [],
    };

    public static KnownMaximum Known(string lift, double kilograms)
        => new(lift, kilograms, new Interval(kilograms * 0.95, kilograms * 1.05), Monday.AddDays(-7), "measured", null, kilograms, null);

    public static SessionSlot Slot(int day, string kind, int minutes = 75, TimeOnly? start = null, params string[] groups)
        => new() { Date = Monday.AddDays(day), Kind = kind, Minutes = minutes, Room = "weight room", Start = start, Groups = groups };

    public static PlanProblem Problem(IReadOnlyList<PlanPlayer> players, params SessionSlot[] slots) => new()
    {
        Monday = Monday,
        Sessions = slots,
        Players = players,
        Exercises = SampleTraining.Exercises,
        Schemes = SampleTraining.Schemes,
        Kinds = SampleTraining.Kinds,
        Rooms = [SampleTraining.Room],
    };

    public static SessionSlot[] FourDays { get; } = [Slot(0, "max_strength"), Slot(1, "speed"), Slot(3, "power"), Slot(4, "reactive")];
}
