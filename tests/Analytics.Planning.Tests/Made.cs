using Analytics.Planning.Exercises;
using Analytics.Planning.Loads;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rooms;
using Analytics.Planning.Schemes;
using Analytics.Quantities;
using Analytics.Statistics;

namespace Analytics.Planning.Tests;

/// <summary>Players, exercises, schemes and weights made up for tests.</summary>
internal static class Made
{
    public static readonly DateOnly Today = new(2026, 6, 8);

    /// <summary>20 kg bar; 25, 20, 15, 10, 5, 2.5, 1.25 kg: every 2.5 kg up to 20 + 2 × (100 + 80 + 30 + 20 + 10 + 5 + 2.5).</summary>
    public static readonly WeightStock Kilograms = new()
    {
        Unit = "kg",
        Bar = Mass.FromKilograms(20),
        Plates = [Pair(25, 4), Pair(20, 4), Pair(15, 2), Pair(10, 2), Pair(5, 2), Pair(2.5, 2), Pair(1.25, 2)],
        Singles = new Dictionary<string, IReadOnlyList<Mass>>
        {
            ["dumbbell"] = [Mass.FromKilograms(10), Mass.FromKilograms(20), Mass.FromKilograms(30), Mass.FromKilograms(40)],
            ["medicine_ball"] = [Mass.FromKilograms(3), Mass.FromKilograms(4), Mass.FromKilograms(6)],
        },
    };

    /// <summary>45 lb bar; 45, 25, 10, 5, 2.5 lb.</summary>
    public static readonly WeightStock Pounds = new()
    {
        Bar = Mass.FromPounds(45),
        Plates = [.. new (double Weight, int Pairs)[] { (45, 6), (25, 1), (10, 2), (5, 1), (2.5, 1) }.Select(p => new PlatePair(Mass.FromPounds(p.Weight), p.Pairs))],
    };

    public static Exercise Squat { get; } = Lift("back_squat", MovementPattern.Squat, TrainedQuality.MaximalStrength);

    public static Exercise Clean { get; } = Lift("power_clean", MovementPattern.Weightlifting, TrainedQuality.ExplosivePower);

    public static Exercise Jump { get; } = new()
    {
        Id = "hurdle_jump", Name = "Hurdle jump", Pattern = MovementPattern.Jump, Quality = TrainedQuality.ReactiveAbility, Basis = LoadBasis.Height,
        LeastHeight = Length.FromCentimetres(30), MostHeight = Length.FromCentimetres(60), RepetitionTime = Duration.FromSeconds(2), JumpContacts = 1,
    };

    public static Exercise Throw { get; } = new()
    {
        Id = "chest_throw", Name = "Chest throw", Pattern = MovementPattern.Throw, Quality = TrainedQuality.UpperBodyPower, Basis = LoadBasis.BodyMass,
        LeastPercent = 3, MostPercent = 7, RepetitionTime = Duration.FromSeconds(3), Implement = "medicine_ball",
    };

    public static Exercise Sprint { get; } = new()
    {
        Id = "sprint_40yd", Name = "40 yd sprint", Pattern = MovementPattern.Sprint, Quality = TrainedQuality.Acceleration, RepetitionTime = Duration.FromSeconds(6),
    };

    public static Exercise Lift(string id, MovementPattern pattern, TrainedQuality quality, string? basis = null, double own = 100) => new()
    {
        Id = id, Name = id.Replace('_', ' '), Pattern = pattern, Quality = quality, Basis = LoadBasis.Of(basis ?? id), OwnMaximumPercent = own,
        RepetitionTime = Duration.FromSeconds(3), Implement = "barbell",
    };

    public static SetScheme Sets(int sets, int repetitions, double? percent = null, double? reserve = null) => new()
    {
        Id = "made", Name = "Made", Qualities = TrainedQualities.All, Sets = sets, Repetitions = repetitions, LeastPercent = percent, MostPercent = percent, Reserve = reserve,
        Rest = Duration.FromSeconds(120),
    };

    public static SetScheme Ramp(int sets, int repetitions, double least, double most)
        => Sets(sets, repetitions) with { Kind = SchemeKind.Ramp, LeastPercent = least, MostPercent = most };

    public static PlannedItem Item(Exercise exercise, SetScheme scheme, Exercise? partner = null) => new(exercise, scheme, partner, Duration.Zero, false);

    public static KnownMaximum Tested(string lift, double kilograms) => new(lift, kilograms, new Interval(kilograms * 0.95, kilograms * 1.05), Today.AddDays(-7), "measured", null, kilograms, null);

    public static PlanPlayer Player(params KnownMaximum[] maxima) => new()
    {
        Id = "P001", Name = "Player One", Group = "line", BodyMass = Mass.FromKilograms(90), TrainingYears = 5, Maxima = maxima.ToDictionary(m => m.Lift),
    };

    private static PlatePair Pair(double kilograms, int pairs) => new(Mass.FromKilograms(kilograms), pairs);
}
