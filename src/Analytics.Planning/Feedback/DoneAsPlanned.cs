using Analytics.Metrics.Load;
using Analytics.Planning.Plans;
using Analytics.Planning.Schemes;

namespace Analytics.Planning.Feedback;

/// <summary>Whether what was logged is what was planned.</summary>
/// <param name="IsDone">All planned sets and repetitions at or above the planned load; null when the plan does not say enough to tell.</param>
/// <param name="Text">In words.</param>
internal sealed record DoneAsPlanned(bool? IsDone, string Text)
{
    /// <summary>Loads are rounded to what a bar can hold: this share less still counts as the load (our choice, no source).</summary>
    internal const double Rounding = 0.005;

    public static DoneAsPlanned Of(PlanReading reading, IReadOnlyDictionary<string, SetScheme> schemes)
    {
        if (reading.Planned.Any(p => p.Sets is null || p.Repetitions is null)) return new(null, "the plan names no sets or repetitions");
        if (reading.Planned.Any(p => p.LoadKilograms is null)) return new(null, "the plan names no load");

        // A logged set serves one part only; the heaviest part takes first, and of the sets that fit it the lightest.
        var open = reading.Sets.SelectMany(s => Enumerable.Repeat(s, s.Sets)).OrderBy(s => s.Load.Kilograms).ThenBy(s => s.Repetitions).ToList();
        var asked = reading.Planned.Sum(p => p.Sets!.Value);
        var done = reading.Planned.OrderByDescending(p => p.LoadKilograms).ThenByDescending(p => p.Repetitions).Sum(p => Take(open, p, GoesUp(p, schemes)));
        return new(done >= asked, done >= asked
            ? $"all {asked} planned sets"
            : $"{done} of {asked} planned sets with the planned repetitions and load");
    }

    // Where the load goes up from set to set the plan names that of the top set: one set must reach it, the others must be there.
    private static int Take(List<ExerciseSets> open, EarlierChoice part, bool goesUp)
    {
        bool IsAtLoad(ExerciseSets s) => s.Repetitions >= part.Repetitions && s.Load.Kilograms >= part.LoadKilograms!.Value * (1 - Rounding);
        int Remove(Func<ExerciseSets, bool> fits, int most)
        {
            var taken = open.Where(fits).Take(most).ToList();
            taken.ForEach(s => open.Remove(s));
            return taken.Count;
        }

        if (!goesUp) return Remove(IsAtLoad, part.Sets!.Value);
        return Remove(IsAtLoad, 1) + Remove(s => s.Repetitions >= part.Repetitions, part.Sets!.Value - 1);
    }

    private static bool GoesUp(EarlierChoice part, IReadOnlyDictionary<string, SetScheme> schemes)
        => part.SchemeId is { } id && schemes.TryGetValue(id, out var scheme) && (scheme.Kind == SchemeKind.Ramp || scheme.LeastPercent < scheme.MostPercent);
}
