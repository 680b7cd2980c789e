using Analytics.Metrics.Load;
using Analytics.Planning.Feedback;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Schemes;
using Analytics.Quantities;

namespace Analytics.Planning.Tests.Feedback;

/// <summary>Rows of a plan and of a log, short.</summary>
internal static class Log
{
    public static readonly DateOnly Today = new(2026, 3, 30);
    public static readonly Dictionary<string, string> Groups = new() { ["a"] = "Line", ["b"] = "Line", ["c"] = "Backs" };

    public static DateOnly Day(int day) => new(2026, 3, day);

    public static EarlierChoice Plan(int day, int? sets = 5, int? repetitions = 5, double? kilograms = 100, string? athlete = "a", string exercise = "back_squat", string? scheme = null) => new()
    {
        Date = Day(day),
        AthleteId = athlete,
        Group = athlete is null ? "Line" : null,
        ExerciseId = exercise,
        SchemeId = scheme,
        Sets = sets,
        Repetitions = repetitions,
        LoadKilograms = kilograms,
    };

    public static LoggedSession Did(int day, double? rating, string athlete, params (int Sets, int Repetitions, double Kilograms)[] sets)
        => Did(day, rating, athlete, "back_squat", sets);

    public static LoggedSession Did(int day, double? rating, string athlete, string lift, params (int Sets, int Repetitions, double Kilograms)[] sets)
        => new(athlete, new SessionWork(Day(day), null, rating) { Exercises = [.. sets.Select(s => new ExerciseSets(lift, s.Sets, s.Repetitions, Mass.FromKilograms(s.Kilograms)))] });

    /// <summary>All five sets of five at 100 kg.</summary>
    public static LoggedSession All(int day, double? rating = 7) => Did(day, rating, "a", (5, 5, 100));

    /// <summary>Three of the five sets.</summary>
    public static LoggedSession Short(int day, double? rating = 7) => Did(day, rating, "a", (3, 5, 100), (2, 3, 100));

    public static ExerciseFeedback Of(IEnumerable<EarlierChoice> plan, IEnumerable<LoggedSession> log, PlanRules? rules = null, IReadOnlyDictionary<string, string>? losses = null, params SetScheme[] schemes)
        => Assert.Single(new LoadFeedback(rules ?? PlanRules.Standard, schemes, losses).Of(PlanReadings.Of(plan, log, Groups), Today));
}
