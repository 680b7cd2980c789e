using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Seasons;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Charts;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Notebooks.Units;
using Analytics.Statistics.Change;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>Which players changed over the season beyond test error, and how many flags chance alone would give.</summary>
internal static class PlayersBlock
{
    private const int UndecidedShown = 3;
    private const int ColumnsOfATable = 5;

    public static Block Of(SeasonContext season)
    {
        if (season.Looked.Count == 0) return new Section("Who changed?", "No player did a test on two occasions.");
        return new Section("Who changed?",
            "From each player's own baseline to his last test. A diamond means the change is beyond what test error explains and reaches out of the pale band.",
            [Counts(season), .. season.Pictured.Select(m => Chart(season, m)), .. Tables(season, season.Measures), .. Tables(season, season.Trials)]);
    }

    private static DataTable Counts(SeasonContext season) => DataTable.Of("Clear changes, and what chance alone would give", season.Looked, t => t
        .Text("Measure", m => m.Label)
        .Number("Players judged", "", 0, m => Judged(season.Change(m)))
        .Number("Clearly better", "", 0, m => Better(m) && Judged(season.Change(m)) > 0 ? season.Change(m).Gains : null)
        .Number("Clearly worse", "", 0, m => Better(m) && Judged(season.Change(m)) > 0 ? season.Change(m).Losses : null)
        .Numeric("By chance at most", "", m => ByChance(season, m))
        .Text("Smallest change that would show in one player", m => Detectable(season, m)));

    internal static int Judged(SeasonChange change) => change.Athletes.Count(a => a.Reason is null);

    private static bool Better(Metric metric) => metric.Better != Direction.Neither;

    private static Cell ByChance(SeasonContext season, Metric metric)
    {
        var change = season.Change(metric);
        if (Judged(change) == 0) return new Cell(null, change.Reliability.Error is null ? "no error known" : "error within one day only");
        var chance = change.ByChance;
        return new Cell(string.Create(CultureInfo.InvariantCulture, $"{chance.Expected:0.0}"), string.Create(CultureInfo.InvariantCulture, $"seldom over {chance.High}"));
    }

    private static Cell Detectable(SeasonContext season, Metric metric)
    {
        var unit = season.Unit(metric);
        var kinds = season.Change(metric).Detectable;
        if (kinds.Count == 0 || Judged(season.Change(metric)) == 0) return Cell.Missing;
        var common = kinds.MaxBy(k => k.Athletes)!;
        var note = common.BaselineValues == 1 && common.LastValues == 1 ? "one test day each" : string.Create(CultureInfo.InvariantCulture, $"baseline of {common.BaselineValues} test days, {common.LastValues} at the end");
        return new Cell(Figures.Plain(unit.Of(common.Change), unit.Decimals, unit.Symbol), common.WithEquation ? note + ", estimated" : note);
    }

    private static ChangePlot Chart(SeasonContext season, Metric metric)
    {
        var change = season.Change(metric);
        var unit = season.Unit(metric);
        return new ChangePlot
        {
            Title = $"Who changed: {metric.Label}",
            TitleNote = Words.Scale(change.Series),
            Axis = new Axis("change over the season", unit.Symbol, unit.DecimalsFor(change.Athletes.Where(a => a.Verdict.IsClear()).Select(a => a.Interval)), Directions.Of(metric)),
            TooSmall = unit.Of(change.Worthwhile.Value),
            UndecidedShown = UndecidedShown,
            FoldedInPrint = false,
            InOrder = true,
            // By what can be said and then as the squad list stands: by size it would read as a ranking.
            Rows = [.. change.Athletes.OrderBy(a => a.Verdict switch { Verdict.ClearGain => 0, Verdict.ClearLoss => 1, _ => 2 })
                .ThenBy(a => season.PlaceOf(a.AthleteId)).Select(a => Row(season, metric, a))],
            Remark = Words.ErrorSource(change.Reliability, ErrorText.Of(change.Reliability, unit)),
        };
    }

    private static ChangeRow Row(SeasonContext season, Metric metric, AthleteSeason athlete)
    {
        var unit = season.Unit(metric);
        var interval = unit.Of(athlete.Interval);
        string[] stretch = athlete.Stretch is null ? [] : [$"{season.Day(athlete.Baseline.Value.Date)} to {season.Day(athlete.Last.Value.Date)} only"];
        var note = string.Join("; ", athlete.Verdict.IsClear() ? athlete.Doubts.Where(d => d != athlete.Stretch).Concat(stretch) : stretch);
        return new ChangeRow(season.Name(athlete.AthleteId), unit.Of(athlete.Difference), interval?.Low, interval?.High,
            Directions.Of(metric, athlete.Verdict, athlete.Change is not null), season.Athlete(athlete.AthleteId).Position, note);
    }

    private static IEnumerable<Block> Tables(SeasonContext season, IReadOnlyList<Metric> measures)
    {
        if (measures.Count == 0) yield break;
        // As few tables as the width allows, of like size.
        var tables = (measures.Count + ColumnsOfATable - 1) / ColumnsOfATable;
        foreach (var part in measures.Chunk((measures.Count + tables - 1) / tables))
        {
            var changes = part.Select(m => (Metric: m, ById: season.Change(m).Athletes.ToDictionary(a => a.AthleteId, StringComparer.Ordinal))).ToList();
            var players = season.Squad.Where(a => changes.Exists(c => c.ById.ContainsKey(a.Id))).ToList();
            var table = DataTable.Of($"Change over the season: {Words.List([.. part.Select(Words.Short)])}", players, t =>
            {
                t.Text("Player", a => new Cell(a.Name, a.Position));
                foreach (var (metric, byId) in changes)
                {
                    var unit = season.Unit(metric);
                    var decimals = unit.DecimalsFor(byId.Values.Where(c => c.Verdict.IsClear()).Select(c => c.Interval));
                    t.Numeric(Words.Head(metric), unit.Symbol, a => byId.TryGetValue(a.Id, out var own) ? Change(metric, own, unit, decimals) : Cell.Missing);
                }
            });
            yield return new Folded(string.Create(CultureInfo.InvariantCulture, $"Every player's change, {Words.Short(part[0])}{(part.Length == 1 ? "" : " to " + Words.Short(part[^1]))}"), [table]);
        }
    }

    private static Cell Change(Metric metric, AthleteSeason athlete, ShownUnit unit, int decimals)
    {
        var (words, tone) = Verdicts.Words(metric, athlete.Verdict, athlete.Change is not null);
        var limits = Figures.Limits(unit.Of(athlete.Interval?.Low), unit.Of(athlete.Interval?.High), decimals, signed: true);
        return new Cell(Figures.Signed(unit.Of(athlete.Difference), decimals), athlete.Verdict.IsClear() ? $"{limits} {words}" : limits.Length > 0 ? limits : words, tone);
    }
}
