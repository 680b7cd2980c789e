using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.TestingDay;
using Analytics.Statistics.Change;

namespace Analytics.Notebooks.AthletePage;

/// <summary>The second answer: what to work on next, why, and how sure.</summary>
internal static class WorkOnAnswer
{
    public static Answer Of(PlayerPage page)
    {
        if (page.Status.IsOut)
            return new("What to work on: getting well.", $"You are listed as {page.Status.Text}. Medical staff say what you may do; the tests can wait.", Tone.Muted);
        if (page.Need?.First is not { } first) return Open(page);
        var measure = page.Measures.First(m => m.Metric.Id == first.Metric.Id);
        return new($"Work on {Words.Name(first.Quality)} next.", $"{First(page)}{Reason(page, measure, first)} {PageWords.Why(first.Quality)}{Also(page.Need)}");
    }

    private static string Reason(PlayerPage page, PageMeasure measure, QualityBehind need)
    {
        var standing = need.Standing;
        var decimals = measure.Unit.DecimalsFor([new(standing.Difference, standing.Difference)]);
        string Text(double value) => Figures.Plain(measure.Unit.Of(value), decimals, measure.Unit.Symbol);
        var day = measure.Latest.Date == page.Today ? "" : $" on {PageWords.Day(measure.Latest.Date, page.Today)}";
        return $"{Words.Capital(PageWords.Short(need.Metric))} {Text(standing.Value.Value)}{day}; the middle of your group is {Text(standing.Middle)}. "
            + $"That the gap is large enough to matter is {Words.Sure(need.Probability)} sure.";
    }

    // Who did a lift, a jump and a sprint today is not told to do them.
    private static bool DidThem(PlayerPage page)
        => new[] { Quality.MaximalStrength, Quality.ExplosivePower, Quality.Acceleration }.All(q => page.Measures.Any(m => m.Metric.Quality == q && m.Latest.Date == page.Today));

    private static string First(PlayerPage page)
        => page.Measures.Any(m => m.Change?.Verdict == Verdict.ClearLoss) ? "Health and sleep come first (see left). " : "";

    private static string Also(Need need)
        => need.Also.Count == 0 ? "" : $" After that: {Words.List([.. need.Also.Select(a => Words.Name(a.Quality)).Distinct()])}.";

    private static Answer Open(PlayerPage page)
    {
        if (page.Need is null || page.Measures.Count == 0)
            return new("What to work on: test first.", "No test of yours is known. What would help: a squat or bench press, a jump and a 10-yard sprint.", Tone.Muted);
        if (page.Measures.All(m => m.Against is not { IsGroup: true }))
            return new("What to work on: ask your coach.", "Too few in your group did these tests to compare you without showing others' results. Your own changes and loads stand below.", Tone.Muted);
        return page.Need.Undecided switch
        {
            "no quality clearly behind the group" => new("No weak spot shows: stay with your plan.",
                string.Create(CultureInfo.InvariantCulture, $"Of the {Words.Count(page.Need.Looks)} qualities tested none is behind the middle of your group with {Figures.Percent(page.NeedThreshold)} or more probability. Tests twice within a week would show smaller gaps."), Tone.Muted),
            "tests of the same quality disagree" => new("What to work on: the tests cannot say yet.",
                "Two tests of the same quality disagree. What would help: both of them again on the next testing day, rested.", Tone.Muted),
            { } why => new("What to work on: the tests cannot say yet.", $"{Words.Capital(why)}. {(DidThem(page) ? "The others are too few in your group, or too alike, to say more. Your own changes and loads stand below." : "What would help: a squat or bench press, a jump and a 10-yard sprint on one day.")}", Tone.Muted),
            null => new("What to work on: the tests cannot say yet.", "Ask your coach.", Tone.Muted),
        };
    }
}
