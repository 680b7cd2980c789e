using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Simulation.ErrorRates;

namespace Analytics.Simulation.SeasonStudy.Transfer;

/// <summary>The section of docs/season-study.md.</summary>
internal static class TransferDocument
{
    public static string Of(IReadOnlyList<Scenario> scenarios, IReadOnlyDictionary<Scenario, Dictionary<(string, string), TransferCount>> counts)
    {
        var none = scenarios.Where(s => s.Name.StartsWith("links 0.0", StringComparison.Ordinal)).ToList();
        var planted = scenarios.Except(none).ToList();
        return $"""
            ## Did weight-room gains reach the field

            True association means: the correlation between players of the true gains of two measures over the season. In the demo gains of different
            qualities are independent, but forms of the day correlate by 0.16 (a good day helps both tests), which is an association of results and no
            transfer; the study must not be fooled by it. "Gains only" leaves the forms so; "gains and forms" gives forms the planted correlation too (0 or
            0.6). 12 pairs are looked at in every season, by a baseline, its retest and three more days, or with a retest at the end as well (six days); the
            pairs in the tables are the linked ones. The method is in [transfer](methods/transfer.md).

            ### With no true association

            Share of seasons in which the 95 % interval of the pair, alone and unadjusted, leaves out 0: of the gains with shared errors taken off (what the
            verdict rests on), of the gains with the errors left in, of the correlation beyond the calendar (all days, forms in), of the classic repeated-measures
            correlation (calendar in). Last: any verdict that gains went together, or opposite, after the adjustment for 12 pairs.

            {False(none, counts)}
            ### With a true association of 0.6 planted

            True r is in the metrics' units, so it differs a little from 0.6. Told is the mean figure given where there is one; coverage is of the true r by its
            95 % interval, and of the true slope by that of change on change. Players: how many it takes, with these tests and days, to find 0.6 in nine
            of ten seasons, by Fisher's scale (median over the seasons).

            {Power(planted, counts)}
            """.ReplaceLineEndings("\n") + "\n";
    }

    private static string False(IReadOnlyList<Scenario> scenarios, IReadOnlyDictionary<Scenario, Dictionary<(string, string), TransferCount>> counts)
    {
        var table = new MarkdownTable("pair", "seasons", "true r", "gains, errors off, %", "errors left in, %", "beyond the calendar, %", "classic, %", "after adjustment, %");
        foreach (var scenario in scenarios)
        {
            foreach (var (pair, c) in counts[scenario].Where(c => c.Value.Found.Seasons > 1))
            {
                table.Row(Pair(pair), Kind(scenario), MarkdownTable.Number(c.True, 2), MarkdownTable.Percent(c.Found), MarkdownTable.Percent(c.WithErrorsLeftIn),
                    MarkdownTable.Percent(c.BeyondCalendar), MarkdownTable.Percent(c.Classic), MarkdownTable.Percent(c.FoundAdjusted));
            }
        }

        return table.ToString();
    }

    private static string Power(IReadOnlyList<Scenario> scenarios, IReadOnlyDictionary<Scenario, Dictionary<(string, string), TransferCount>> counts)
    {
        var table = new MarkdownTable(
            "pair", "seasons", "true r", "told", "coverage, %", "slope, coverage, %", "found, %", "beyond the calendar, %", "after adjustment, %", "no spread seen, %", "said against, %", "players", "players for 90 %");
        foreach (var scenario in scenarios)
        {
            foreach (var (pair, c) in counts[scenario].Where(c => c.Value.Found.Seasons > 1))
            {
                table.Row(Pair(pair), Kind(scenario), MarkdownTable.Number(c.True, 2), MarkdownTable.Number(c.Told, 2) + " (" + MarkdownTable.Number(c.ToldError, 2) + ")",
                    MarkdownTable.Coverage(c.Covered), MarkdownTable.Coverage(c.SlopeCovered), MarkdownTable.Percent(c.Found), MarkdownTable.Percent(c.BeyondCalendar), MarkdownTable.Percent(c.FoundAdjusted),
                    MarkdownTable.Percent(c.NoSpread), MarkdownTable.Percent(c.Against), MarkdownTable.Number(c.MeanAthletes, 0), c.Needed?.ToString(CultureInfo.InvariantCulture) ?? "none");
            }
        }

        return table.ToString();
    }

    private static string Pair((string WeightRoom, string Field) pair) => $"{MetricCatalogue.Get(pair.WeightRoom).Label}, {MetricCatalogue.Get(pair.Field).Label}";

    private static string Kind(Scenario scenario) => scenario.Name[(scenario.Name.IndexOf(',', StringComparison.Ordinal) + 2)..];
}
