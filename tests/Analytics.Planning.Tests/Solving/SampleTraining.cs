using Analytics.Planning.Exercises;
using Analytics.Planning.Rooms;
using Analytics.Planning.Schemes;
using Analytics.Planning.Weeks;
using Analytics.Quantities;
using static Analytics.Planning.Exercises.MovementPattern;
using static Analytics.Planning.Exercises.TrainedQuality;

namespace Analytics.Planning.Tests.Solving;

/// <summary>A small catalogue, schemes and kinds of day that stay as they are whatever the shipped files become.</summary>
internal static class SampleTraining
{
    public static ExerciseCatalogue Exercises { get; } = new(
    [
        Lift("back_squat", Squat, MaximalStrength, "back_squat", stations: ["rack"], preference: 1),
        Lift("front_squat", Squat, MaximalStrength, "back_squat", own: 85, stations: ["rack"]),
        Lift("deadlift", Hinge, MaximalStrength, "back_squat", own: 110, stations: ["platform"]),
        Lift("romanian_deadlift", Hinge, MaximalStrength, "back_squat", own: 85, stations: ["rack"]),
        Lift("split_squat", SingleLeg, MaximalStrength, "back_squat", own: 55, stations: ["rack"], unilateral: true),
        Lift("bench_press", Push, MaximalStrength, "bench_press", stations: ["bench"], preference: 1),
        Lift("incline_press", Push, MaximalStrength, "bench_press", own: 38, implement: "dumbbell", unilateral: true),
        Lift("row", Pull, MaximalStrength, "bench_press", own: 80),
        Lift("power_clean", Weightlifting, ExplosivePower, "power_clean", stations: ["platform"], preference: 1, seconds: 4),
        Lift("hang_clean", Weightlifting, ExplosivePower, "power_clean", own: 95, stations: ["platform"], seconds: 4),
        Lift("clean_pull", Weightlifting, ExplosivePower, "power_clean", own: 120, stations: ["platform"], seconds: 4),
        Free("squat_jump", Jump, ExplosivePower, contacts: 1, impact: Impact.Middle),
        Lift("push_press", Weightlifting, UpperBodyPower, "bench_press", own: 70, stations: ["rack"], seconds: 4),
        Free("chest_throw", Throw, UpperBodyPower),
        Free("rotation_throw", Throw, UpperBodyPower, unilateral: true),
        Free("pogo", Jump, ReactiveAbility, contacts: 1, impact: Impact.Low, preference: 1),
        Free("hurdle_jump", Jump, ReactiveAbility, contacts: 1, impact: Impact.Middle, stations: ["hurdles"]),
        Free("depth_jump", Jump, ReactiveAbility, contacts: 2, impact: Impact.High, stations: ["boxes"]) with { LeastSquatRatio = 1.5 },
        Free("bound", Jump, ReactiveAbility, contacts: 1, impact: Impact.High, unilateral: true),
        Free("sprint_10yd", Sprint, TrainedQuality.Acceleration, seconds: 2, preference: 1),
        Free("falling_start", Sprint, TrainedQuality.Acceleration, seconds: 2),
        Free("sled", Carry, TrainedQuality.Acceleration, seconds: 6, stations: ["sled"]) with { Basis = LoadBasis.BodyMass, LeastPercent = 20, MostPercent = 50 },
        Free("side_plank", Trunk, TrunkControl, unilateral: true, seconds: 3),
        Free("roll_out", Trunk, TrunkControl, seconds: 3),
        Free("neck_hold", Neck, TrunkControl, seconds: 5),
    ]);

    public static IReadOnlyList<SetScheme> Schemes { get; } =
    [
        Percent("5x5", MaximalStrength, 5, 5, 75, 150) with { Reserve = 2 },
        Percent("4x3", MaximalStrength, 4, 3, 85, 180) with { Reserve = 2 },
        Percent("3x5", MaximalStrength, 3, 5, 70, 120) with { Reserve = 4 },
        Percent("contrast", MaximalStrength, 4, 3, 80, 150) with { Kind = SchemeKind.Contrast, InnerRest = Duration.FromSeconds(60), PartnerRepetitions = 4, Patterns = [Squat] },
        Percent("5x3", ExplosivePower, 5, 3, 75, 120) with { Patterns = [Weightlifting] },
        Percent("6x2_minute", ExplosivePower, 6, 2, 80, 0) with { Kind = SchemeKind.OnTheMinute, Interval = Duration.FromSeconds(60), Patterns = [Weightlifting] },
        Percent("4x3_press", UpperBodyPower, 4, 3, 75, 120) with { Patterns = [Weightlifting] },
        Plain("3x5_jumps", [ReactiveAbility, ExplosivePower], 3, 5, 90),
        Plain("4x4_throws", [UpperBodyPower], 4, 4, 60),
        Plain("6x1_runs", [TrainedQuality.Acceleration], 6, 1, 75),
        Plain("3x8", [TrunkControl], 3, 8, 45),
    ];

    public static IReadOnlyList<DayKind> Kinds { get; } =
    [
        new("max_strength", "Max-strength day", [new(MaximalStrength, 1, 2, true) { Half = BodyHalf.Lower, LeastPercent = 75 }, new(MaximalStrength, 1, 2, true) { Half = BodyHalf.Upper, LeastPercent = 75 }, new(ExplosivePower, 0, 1), new(UpperBodyPower, 0, 1), new(TrunkControl, 1, 2, true)], SetScheme.CommonPractice),
        new("power", "Power day", [new(ExplosivePower, 1, 2, true), new(UpperBodyPower, 0, 2, true), new(ReactiveAbility, 0, 1, true), new(MaximalStrength, 0, 1) { MostPercent = 75 }, new(TrunkControl, 0, 1)], SetScheme.CommonPractice),
        new("speed", "Speed day", [new(TrainedQuality.Acceleration, 1, 2, true), new(ReactiveAbility, 1, 2, true), new(TrunkControl, 1, 2, true)], SetScheme.CommonPractice),
        new("reactive", "Reactive day", [new(ReactiveAbility, 2, 3, true), new(TrainedQuality.Acceleration, 0, 1, true), new(TrunkControl, 1, 1)], SetScheme.CommonPractice),
        new("recovery", "Recovery day", [new(TrunkControl, 1, 3), new(MaximalStrength, 0, 1) { MostPercent = 70 }], SetScheme.CommonPractice),
    ];

    public static Room Room { get; } = new("weight room", new Dictionary<string, int> { ["rack"] = 8, ["platform"] = 8, ["bench"] = 8, ["hurdles"] = 8, ["boxes"] = 6, ["sled"] = 8 });

    private static Exercise Lift(string id, MovementPattern pattern, TrainedQuality quality, string lift, double own = 100, string[]? stations = null, int preference = 2, bool unilateral = false, string implement = "barbell", double seconds = 3) => new()
    {
        Id = id, Name = id, Pattern = pattern, Quality = quality, Basis = LoadBasis.Of(lift), OwnMaximumPercent = own, LeastPercent = 50, MostPercent = 95, Stations = stations ?? [],
        Preference = preference, IsUnilateral = unilateral, Implement = implement, RepetitionTime = Duration.FromSeconds(seconds),
    };

    private static Exercise Free(string id, MovementPattern pattern, TrainedQuality quality, int contacts = 0, Impact impact = Impact.None, string[]? stations = null, int preference = 2, bool unilateral = false, double seconds = 2) => new()
    {
        Id = id, Name = id, Pattern = pattern, Quality = quality, JumpContacts = contacts, Impact = impact, Stations = stations ?? [], Preference = preference, IsUnilateral = unilateral,
        RepetitionTime = Duration.FromSeconds(seconds),
    };

    private static SetScheme Percent(string id, TrainedQuality quality, int sets, int repetitions, double percent, double rest) => new()
    {
        Id = id, Name = id, Qualities = [quality], Sets = sets, Repetitions = repetitions, LeastPercent = percent, MostPercent = percent, Rest = Duration.FromSeconds(rest),
    };

    private static SetScheme Plain(string id, TrainedQuality[] qualities, int sets, int repetitions, double rest) => new()
    {
        Id = id, Name = id, Qualities = qualities, Sets = sets, Repetitions = repetitions, Rest = Duration.FromSeconds(rest),
    };
}
