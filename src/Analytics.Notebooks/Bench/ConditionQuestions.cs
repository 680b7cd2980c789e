using Analytics.Metrics.Bench;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.TestingDay;
using Analytics.Notebooks.Units;

namespace Analytics.Notebooks.Bench;

/// <summary>Whether an idea depends on how, when and by whom it is tested.</summary>
internal static class ConditionQuestions
{
    public static IEnumerable<CardQuestion> Of(SketchCard card, ShownUnit unit)
    {
        yield return Scale(card, unit);
        yield return Day(card, unit);
        yield return Tester(card, unit);
    }

    private static CardQuestion Scale(SketchCard card, ShownUnit unit)
    {
        const string question = "Does it depend on how it is measured?";
        var conditions = card.Conditions;
        var own = conditions.Series is { Length: > 0 } series ? $"compared: {series}" : "";
        if (conditions.Others.Count == 0) return new(question, "one scale only", "", own);
        var paired = conditions.Others.FirstOrDefault(o => o.Shift is { Mean.N: > 1 });
        return new(question, "several scales, never mixed",
            paired?.Shift is { } shift ? $"{paired.Series}: {unit.ChangeText(shift.Mean.Value, shift.Mean.Interval)} on the same day, {Words.Players(shift.Mean.N)}" : "nobody was measured on two of them on one day",
            $"{own}; not compared: {string.Join(", ", conditions.Others.Select(o => $"{(o.Series.Length == 0 ? "unnamed" : o.Series)} ({o.Values})"))}");
    }

    private static CardQuestion Day(SketchCard card, ShownUnit unit)
    {
        const string question = "Does it shift from day to day without training?";
        if (card.Conditions.RetestShift is not { Mean: { } mean }) return new(question, "cannot tell", "", "no retest days of enough players", Tone.Muted);
        var shifted = mean.Interval is { } i && !i.Contains(0);
        return new(question, shifted ? "yes" : "no sign of it", $"second retest day {unit.ChangeText(mean.Value, mean.Interval)}", $"squad mean of {Words.Players(mean.N)}: practice, tiredness, weather or the equipment", shifted ? Tone.Loss : Tone.Plain);
    }

    private static CardQuestion Tester(SketchCard card, ShownUnit unit)
    {
        const string question = "Does it depend on who tests?";
        var conditions = card.Conditions;
        if (conditions.Testers.Count == 0)
            return new(question, "cannot tell", "", conditions.TestersNoted switch
            {
                0 => "no tester was noted beside these tests",
                1 => "one tester for all",
                _ => "too few players were tested by two of them within a week",
            }, Tone.Muted);
        var contrast = conditions.Testers[0];
        var mean = contrast.Shift;
        var differs = mean.Interval is { } i && !i.Contains(0);
        return new(question, !contrast.BothOrders ? "cannot tell" : differs ? "yes" : "no sign of it", $"{contrast.Second} against {contrast.First}: {unit.ChangeText(mean.Value, mean.Interval)}",
            $"{Words.Players(mean.N)} tested by both within a week, {contrast.SecondWasLater} by {contrast.Second} on the later day{(contrast.BothOrders ? "" : ", so tester and order cannot be told apart")}", !contrast.BothOrders ? Tone.Muted : differs ? Tone.Loss : Tone.Plain);
    }
}
