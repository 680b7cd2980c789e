using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Exercises;
using Analytics.Planning.Plans;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>What a sheet says at its foot: what an exercise asks of a player that no test can tell, and its cautions.</summary>
internal static class SheetCautions
{
    private const string Always = "Stop on pain, dizziness or lost technique; local rules and licensed staff come first.";

    public static string Of(IEnumerable<PlannedItem> items)
    {
        var exercises = items.SelectMany(i => i.Partner is null ? [i.Exercise] : new[] { i.Exercise, i.Partner }).DistinctBy(e => e.Id).ToList();
        var asked = Named(exercises, e => e.Prerequisite, ", ");
        return string.Join(". ", [.. asked.Count > 0 ? [$"Only if: {string.Join("; ", asked)}"] : Array.Empty<string>(), .. Named(exercises, e => e.Caution, ": "), Always]);
    }

    private static List<string> Named(IReadOnlyList<Exercise> exercises, Func<Exercise, string> text, string between)
        => [.. exercises.Where(e => text(e).Length > 0).GroupBy(text).Select(g => $"{Words.List([.. g.Select(e => e.Name)])}{between}{g.Key}")];
}
