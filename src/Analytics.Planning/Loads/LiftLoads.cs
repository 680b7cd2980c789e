using Analytics.Metrics.Strength;
using Analytics.Planning.Exercises;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rooms;
using Analytics.Planning.Rules;
using Analytics.Planning.Schemes;
using Analytics.Quantities;

namespace Analytics.Planning.Loads;

/// <summary>Loads that are a share of a 1RM.</summary>
internal static class LiftLoads
{
    // Two loads of the same plates, through kilograms and back.
    private const double RoundingError = 1e-9;

    public static Prescription Of(PlanPlayer player, PlannedItem item, WeightStock stock, PlanRules rules, DateOnly today, RepetitionTable table)
    {
        var exercise = item.Exercise;
        var known = ExerciseBase.Of(player, exercise, today, rules);
        if (known.Instead is not null || known.Test is not { } test) return new() { Instead = known.Instead };
        List<string> notes = [.. Said(known, test)];
        var percents = Percents(exercise, item.Scheme, table);
        notes.AddRange(percents.Notes);
        Prescription None(string why) => new() { Instead = why, BaseKilograms = known.Kilograms, IsLowerSide = known.IsLowerSide, Notes = notes };
        if (percents.Percent.Count == 0) return None("the coach chooses: the scheme names no load");

        List<double> wanted = [.. percents.Percent.Select(p => known.Kilograms * p / 100)];
        var top = wanted.Max();
        var topText = $"{LoadWords.Percent(percents.Percent.Max())} of the 1RM is {LoadWords.Of(Mass.FromKilograms(top), stock.Unit)}";
        if (exercise.Implement is not { } implement) return None($"the exercise names nothing to load; {topText}");
        var weights = LoadableWeights.Of(stock, implement);
        if (weights.Problem is { } problem) return None($"{problem}; {topText}");
        if (weights.Down(Mass.FromKilograms(Math.Min(top, known.CapKilograms))) is not { } heaviest) return None(LoadWords.TooHeavy(implement, weights.All[0], stock.Unit));

        if (top > known.CapKilograms) notes.Add(known.WorkedOutFrom is { } held ? $"held at what the tested {held} is worth" : "held at what was lifted in a test");
        if (Math.Min(top, known.CapKilograms) > weights.All[^1].Kilograms + RoundingError)
            notes.Add($"all there is, {LoadWords.Of(weights.All[^1], stock.Unit)}: the per cent ask for more");
        List<Mass?> loads = [.. wanted.Select(w => weights.Down(Mass.FromKilograms(Math.Min(w, known.CapKilograms))))];
        if (loads.Contains(null)) notes.Add($"the first sets with {Lightest(weights, implement, stock)}: it is more than their per cent");
        // Where an early set of a ramp would be below the bar, the bar: it is not above the top set.
        List<Mass> working = [.. loads.Select(l => l ?? weights.All[0])];
        var above = heaviest.Kilograms > known.TestedKilograms + RoundingError;
        if (above) notes.Add(known.WorkedOutFrom is { } from ? $"more than the tested {from} is worth: only with the coach" : "above any load tested: only with the coach");
        if (implement == "dumbbell") notes.Add("load of one hand");
        return new()
        {
            Working = working,
            WarmUp = WarmUpLoads.Of(exercise, item.Scheme, working[0], weights, table),
            BaseKilograms = known.Kilograms,
            IsLowerSide = known.IsLowerSide,
            IsAboveTested = above,
            Notes = notes,
        };
    }

    private static IEnumerable<string> Said(ExerciseBase known, LoadBase test)
    {
        if (known.WorkedOutFrom is { } lift) yield return $"worked out from the {lift}";
        if (known.Log is { } log)
        {
            yield return log.Text;
            yield break;
        }

        if (test.IsLowerSide) yield return $"lower side of the range: {string.Join("; ", test.Reasons)}";
        foreach (var remark in test.Remarks) yield return remark;
    }

    internal static SetPercents Percents(Exercise exercise, SetScheme scheme, RepetitionTable table)
    {
        var asked = SetPercents.Of(scheme, table);
        if (asked.Percent.Count > 0 || scheme.Reserve is not null || (exercise.LeastPercent ?? exercise.MostPercent) is not { } low) return asked.Within(exercise);
        var middle = (low + (exercise.MostPercent ?? low)) / 2;
        return new([.. Enumerable.Repeat(middle, scheme.Sets)], [$"{LoadWords.Percent(middle)}, the middle of the exercise's use: the scheme names none"]);
    }

    private static string Lightest(LoadableWeights weights, string implement, WeightStock stock)
        => $"{(implement == LoadableWeights.Barbell ? "the empty bar" : "the lightest " + LoadWords.Lift(implement))} ({LoadWords.Of(weights.All[0], stock.Unit)})";
}
