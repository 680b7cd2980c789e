using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.AthletePage;

/// <summary>The third answer: what to lift next.</summary>
internal static class LiftAnswer
{
    private const int Most = 3;

    public static Answer Of(PlayerPage page)
    {
        if (page.Status.IsOut)
            return new("What to lift: see medical staff first.", $"You are listed as {page.Status.Text}, so no loads are given. They come back with your first test after you are cleared.", Tone.Loss);
        var ready = page.Loads.Where(l => l.TestFirst is null).ToList();
        if (ready.Count == 0)
            return new("What to lift: test first.", page.Loads.Count == 0 ? "No lift of yours was tested. A set of three to five good repetitions is enough to start." : "No test of yours gives a load for the bar; the table below says why.", Tone.Muted);
        ready = [.. ready.Take(Most)];
        var sets = ready.Select(l => $"{Short(l.Test.Lift)} {PageWords.Set(l.Sets[0], page.Bar)}");
        var until = ready.Min(l => l.Test.Date.AddDays(LoadRule.OldAfterDays));
        var limited = page.Status.IsLimited ? $"You are listed as {page.Status.Text}: medical staff say first which of these you may do. " : "";
        return new($"{Words.Capital(Words.List([.. sets]))}.",
            $"{limited}{Basis(ready)}, rounded down to {page.Bar.Text(page.Bar.Step)}. Leave two good repetitions in every set; take weight off when they are not there. "
            + (until < page.Today ? "Test again soon." : $"Test again by {PageWords.Day(until, page.Today)}."), page.Status.IsLimited ? Tone.Loss : Tone.Plain);
    }

    private static string Short(string lift) => lift == Metrics.Strength.Lifts.BackSquat ? "squat" : PageWords.Lift(lift).ToLowerInvariant();

    private static string Basis(List<NextLoad> ready)
    {
        var lower = ready.Count(l => l.IsLowerSide);
        return lower == 0 ? "Per cent of your latest 1RM" : lower == ready.Count ? "Per cent of the lower side of your range" : "Per cent of your latest 1RM, or of the lower side of its range where it is doubtful or old";
    }
}
