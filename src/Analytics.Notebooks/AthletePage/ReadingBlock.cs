using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Loads;

namespace Analytics.Notebooks.AthletePage;

/// <summary>How to read the page in a few lines, and the methods folded away; paper has the few lines.</summary>
internal static class ReadingBlock
{
    public static ReportBlock Of(PlayerPage page) => new Together(
        new Note(Short(page)),
        new Folded("Methods and sources", [new Definitions(Entries(page)), .. page.Measures.Count == 0 ? [] : new Block[] { Tests(page) },
            new Note("Source keys are listed in the project's references.")]));

    private static string Short(PlayerPage page)
        => "How to read this. Every test wobbles: a range says where your usual level lies, 95 times in 100. A change counts when it is beyond that and large enough to matter; \u201Ccannot tell yet\u201D is no bad mark. "
            + (page.Measures.Count > 0 ? $"\u201CAhead\u201D or \u201Cbehind\u201D takes {Figures.Percent(page.Measures[0].Sure)} probability. " : "")
            + $"The middle of a group is a mean, small groups pulled toward the squad, shown from {Words.Count(SquadBook.FewestCompared)} players on. "
            + (page.Measures.Any(m => m.Latest.Doubts.Count > 0) || page.Loads.Any(l => l.Test.Doubt is not null) ? $"~ doubtful: {Doubts(page)}. " : "")
            + "It is not medical advice and predicts no injury.";

    private static string Doubts(PlayerPage page)
        => string.Join("; ", page.Measures.SelectMany(m => m.Latest.Doubts.Select(d => $"{PageWords.Short(m.Metric)} {d}"))
            .Concat(page.Loads.Where(l => l.Test.Doubt is not null && page.Measures.All(m => m.Metric.Id != l.Test.Lift + "_1rm")).Select(l => $"{PageWords.Lift(l.Test.Lift)} {l.Test.Doubt}")).Distinct());

    private static IEnumerable<(string Term, string Text)> Entries(PlayerPage page)
    {
        if (page.Measures.Count > 0) yield return ("Verdicts", page.Measures[0].Rule.Statement);
        yield return ("Where you stand", "One scale for all tests: distance from the middle of your group in standard deviations between players, pooled over the groups, better to the right. The pale band is one of them to either side.");
        yield return ("What to work on", string.Create(CultureInfo.InvariantCulture, $"A quality is named when you are behind the middle of your group, by more than too small to matter, with at least {100 * page.NeedThreshold:0}\u2009% probability; of several, the one furthest behind."));
        yield return ("Next loads", string.Create(CultureInfo.InvariantCulture,
            $"Per cent of the latest 1RM, rounded down to the step of the bar. The lower side of its range counts when the estimate is doubtful, when that side lies more than {100 * LoadBase.Wide:0}\u2009% under it, or when the test is more than {LoadRule.OldAfterDays / 7} weeks old; after {LoadRule.ExpiredAfterDays / 7} weeks, or after an injury, test first. A doubtful estimate never gives more than was lifted. Limits: our choice. Sets and repetitions: common practice inside the textbook's zones [baechle2008]."));
        yield return ("Other players", $"No value of another player is in this file. Group figures are means and spreads of at least {Words.Count(SquadBook.FewestCompared)} players; a median would be one player's value.");
    }

    private static DataTable Tests(PlayerPage page) => DataTable.Of("Tests of this page", page.Measures, t => t
        .Text("Test", m => new Cell(m.Metric.Label, m.Metric.Meaning))
        .Text("Formula", m => m.Metric.Formula)
        .Text("Value of the day", m => m.Metric.Rule == TrialRule.Best ? "best attempt" : "mean of the attempts")
        .Text("Typical error", m => new Cell(ErrorText.Of(m.Reliability, m.Unit), m.Reliability.Basis))
        .Text("Your days", m => string.Join("; ", m.History.Select(v => $"{PageWords.Day(v.Date, page.Today)} {Figures.Plain(m.Unit.Of(v.Value), m.Unit.Decimals, m.Unit.Symbol)}{(v.HowMade.Length > 0 ? ", " + v.HowMade : "")}")))
        .Text("Sources", m => string.Join(", ", m.Metric.Sources)));
}
