using Analytics.Planning.Loads;
using static System.FormattableString;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>A load as it stands on a sheet.</summary>
/// <param name="Main">The working load, a height, or the word in its place; empty when nothing is meant.</param>
/// <param name="Ramp">Warm-up sets; empty for none.</param>
/// <param name="Marks">Marks of its notes.</param>
/// <param name="IsWord">Whether a word stands in the place of a load.</param>
internal sealed record LoadText(string Main, string Ramp, string Marks, bool IsWord)
{
    public static LoadText Of(WeekContext week, Prescription load, SheetMarks marks, IReadOnlyCollection<string> elsewhere, bool withUnit = false)
    {
        var unit = week.Training.Weights.Unit;
        string Text(Quantities.Mass mass) => WeekWords.Load(mass, unit);
        var working = load.Working.Select(Text).ToList();
        // A load that goes up is written from the first set to the last.
        var main = working.Count == 0 ? "" : working.Distinct().Count() == 1 ? working[0] : $"{working[0]} \u2192 {working[^1]}";
        if (main.Length > 0 && withUnit) main += "\u2009" + unit;
        if (load.Height is { } height) main += (main.Length > 0 ? ", " : "") + WeekWords.Height(height, week.Season.Settings.JumpUnit);
        var isWord = main.Length == 0 && load.Instead is not null;
        return new(isWord ? SheetMarks.Short(load.Instead!) : main,
            string.Join(" \u00B7 ", load.WarmUp.Select(s => Invariant($"{Text(s.Load)}\u00D7{s.Repetitions}"))), marks.Of(load, elsewhere), isWord);
    }
}
