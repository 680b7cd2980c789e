using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Strength;

/// <summary>The strength metrics of the catalogue. Each day gives at most one value: see <see cref="DayOneRepMax"/>.</summary>
public static class StrengthMetrics
{
    private const string OneRepMaxFormulaText = "1RM = load w [kg] of a single to failure; else 36 w / (37 − n) up to n = 10 and w (1 + n/30) beyond, n = repetitions + repetitions in reserve";

    private static readonly PublishedError AnyLift = new(Percent: 4.2, Absolute: null, "grgic2020");

    /// <summary>1RM of the back squat.</summary>
    public static Metric BackSquat { get; } = OneRepMaxOf(Lifts.BackSquat, "Back squat 1RM", Quality.MaximalStrength, 40, 400, AnyLift,
        "The most that can be squatted once through the agreed depth.");

    /// <summary>1RM of the bench press.</summary>
    public static Metric BenchPress { get; } = OneRepMaxOf(Lifts.BenchPress, "Bench press 1RM", Quality.MaximalStrength, 30, 320, AnyLift,
        "The most that can be pressed once from the chest.");

    /// <summary>1RM of the power clean.</summary>
    public static Metric PowerClean { get; } = OneRepMaxOf(Lifts.PowerClean, "Power clean 1RM", Quality.ExplosivePower, 30, 230,
        new(Percent: null, Absolute: 2.9, "faigenbaum2012", Athletes: 36), "The most that can be cleaned once and caught above parallel.");

    /// <summary>Back squat 1RM per kilogram of body mass.</summary>
    public static Metric RelativeBackSquat { get; } = new()
    {
        Id = "back_squat_relative",
        Label = "Back squat per body mass",
        Unit = "kg/kg",
        Decimals = 2,
        Better = Direction.Higher,
        Quality = Quality.MaximalStrength,
        Rule = TrialRule.Best,
        FromTrials = RelativeValues,
        PlausibleLow = 0.5,
        PlausibleHigh = 4,
        Meaning = "How many times the own body mass can be squatted once; it favours light players.",
        Formula = "back squat 1RM [kg] / body mass [kg]; " + OneRepMaxFormulaText,
        Sources = ["brzycki1993", "epley1985", "mayhew1995", "grgic2020", "oba2014"],
        PublishedError = AnyLift,
    };

    /// <summary>All of them, in report order.</summary>
    public static IReadOnlyList<Metric> All { get; } = [BackSquat, BenchPress, PowerClean, RelativeBackSquat];

    private static Metric OneRepMaxOf(string lift, string label, Quality quality, double low, double high, PublishedError error, string meaning) => new()
    {
        Id = lift + "_1rm",
        Label = label,
        Unit = "kg",
        Decimals = 1,
        Better = Direction.Higher,
        Quality = quality,
        Rule = TrialRule.Best,
        FromTrials = day => Best(day, lift) is { } best
            ? [new TrialValue(best.Value.Kilograms, best.StandardError?.Kilograms, Doubt: best.Doubt) { Equation = best.ErrorParts, HowMade = best.HowMade }]
            : [],
        PlausibleLow = low,
        PlausibleHigh = high,
        Meaning = meaning,
        Formula = OneRepMaxFormulaText,
        Sources = ["brzycki1993", "epley1985", "mayhew1995", error.SourceKey],
        PublishedError = error,
    };

    private static OneRepMaxResult? Best(AthleteDay day, string lift) => DayOneRepMax.From(day.Of<LiftSet>().Where(s => s.Lift == lift));

    private static IEnumerable<TrialValue> RelativeValues(AthleteDay day)
    {
        if (day.BodyMass is not { Kilograms: > 0 } mass || Best(day, Lifts.BackSquat) is not { } best) return [];
        var doubts = new[] { best.Doubt, BodyMassAge.Remark(day) }.OfType<string>().ToList();
        return [new TrialValue(
            RelativeStrength.Ratio(best.Value, mass),
            best.StandardError / mass,
            Doubt: doubts.Count == 0 ? null : string.Join("; ", doubts)) { Equation = best.ErrorParts?.Times(1 / mass.Kilograms), HowMade = best.HowMade }];
    }
}
