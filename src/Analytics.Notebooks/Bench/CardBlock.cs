using Analytics.Metrics.Bench;
using Analytics.Metrics.Sketching;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Charts;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.OnTrial;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.Bench;

/// <summary>The evaluation card of one idea.</summary>
internal static class CardBlock
{
    private const int OverlapsShown = 8;

    public static Block Of(BenchContext bench, MetricSketch sketch)
    {
        if (sketch.Fault is { } fault) return new Section($"{TrialMark.Name(sketch.Label)}: cannot be used", "", new Callout(fault));
        var card = bench.Card(sketch);
        var title = $"{TrialMark.Name(sketch.Label)}: {card.Verdict.Words}";
        if (card.Occasion is null) return new Section(title, sketch.Meaning, TroubleBlock.Of(bench, [sketch]), new Note("No player has a value. Does the season have such trials, and are the words in quotation marks those of the data dictionary?"));
        return new Section(title, Words.Signs($"{Meaning(sketch)}{card.Verdict.Why}"),
            TroubleBlock.Of(bench, [sketch]),
            new Callout("The three weakest points", card.Weakest.Select(w => Words.Signs($"{Words.Capital(w.What)}: {w.Text}"))),
            new Together(new StripPlot([Strip(bench, card)], day: "that day"), Overlaps(card), CardQuestions.Of(bench, card)),
            new Folded("How it lies in each group, and every library metric beside it", Groups(bench, card), AllOverlaps(card)),
            new Folded("The formula as written", new Prose(sketch.Metric.Formula), new Note($"{(sketch.Rule == Metrics.Catalogue.TrialRule.Best ? "Best attempt" : "Mean of the attempts")} of the day, {(sketch.Unit == "1" ? "a plain number" : $"in {sketch.Unit}")}; believed from {Plain(sketch.Low)} to {Plain(sketch.High)}. Trial metric: not reviewed.")));
    }

    private static string Meaning(MetricSketch sketch) => sketch.Meaning.Length == 0 ? "" : sketch.Meaning.TrimEnd('.') + ". ";

    private static string Plain(double value) => value.ToString("0.####", System.Globalization.CultureInfo.InvariantCulture);

    private static StripPanel Strip(BenchContext bench, SketchCard card)
    {
        var metric = card.Sketch.Metric;
        var unit = bench.Unit(metric);
        var values = card.Values.Values.Where(v => v.Date >= card.Occasion!.From && v.Date <= card.Occasion.To)
            .GroupBy(v => v.AthleteId, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Average(v => v.Value), StringComparer.Ordinal);
        return new StripPanel
        {
            Title = metric.Label,
            TitleNote = $"{Words.Date(card.Occasion!.From)}{(card.Values.Series is { Length: > 0 } series ? $", {series}" : "")}",
            Axis = new Axis(metric.Label, unit.Symbol, unit.Decimals, Directions.Of(metric)),
            Groups =
            [
                .. bench.Athletes.Select(a => a.Group).Distinct().Select(group => new StripGroup(
                    group,
                    [.. bench.Athletes.Where(a => a.Group == group && values.ContainsKey(a.Id)).Select(a => new StripDot(a.Name, unit.Of(values[a.Id])))],
                    unit.Of(card.Groups.FirstOrDefault(g => g.Group == group)?.Median))),
            ],
        };
    }

    private static Block Overlaps(SketchCard card) => card.Overlap is not { Rows.Count: > 0 } overlap ? new Note("No library metric was done by enough of the same players to compare.") : new IntervalPlot
    {
        Title = "Who else ranks the players so?",
        TitleNote = "rank correlation within groups; over the squad where groups are too small",
        NameHead = "Library metric",
        Axis = new Axis("rank correlation", "", 2),
        Rows = [.. overlap.Rows.Take(OverlapsShown).Select(r => new IntervalRow(
            r.Metric.Label, (r.WithinGroups ?? r.Squad).Value, (r.WithinGroups ?? r.Squad).Interval?.Low, (r.WithinGroups ?? r.Squad).Interval?.High,
            Alike(r.Size), Tone.Plain, "", FormattableString.Invariant($"{(r.WithinGroups ?? r.Squad).N} players")))],
        Remark = "The sign says only whether more of one goes with more of the other. Test error of both pulls a correlation toward 0.",
    };

    // Words for the size of a correlation, so that nobody has to know one by its number.
    private static string Alike(double size) => size switch
    {
        >= 0.9 => "almost alike",
        >= 0.7 => "much alike",
        >= 0.4 => "somewhat alike",
        _ => "little alike",
    };

    private static DataTable Groups(BenchContext bench, SketchCard card)
    {
        var unit = bench.Unit(card.Sketch.Metric);
        return DataTable.Of("How it lies in each group", card.Groups, t => t
            .Text("Group", g => g.Group)
            .Number("Players", "", 0, g => g.N)
            .Number("Lowest", unit.Symbol, unit.Decimals, g => unit.Of(g.Lowest))
            .Number("Middle", unit.Symbol, unit.Decimals, g => unit.Of(g.Median))
            .Number("Highest", unit.Symbol, unit.Decimals, g => unit.Of(g.Highest))
            .Number("SD", unit.Symbol, unit.Decimals + 1, g => unit.Of(g.StandardDeviation))
            .Text("Far from the rest", g => g.Far.Count == 0 ? new Cell("none") : new Cell(Words.List([.. g.Far.Select(f => bench.Name(f.AthleteId))]), string.Join("; ", g.Far.Select(f => unit.Text(f.Value))), Tone.Loss)));
    }

    private static Block AllOverlaps(SketchCard card) => card.Overlap is not { } overlap ? new Together() : DataTable.Of("Rank correlation with every library metric", overlap.Rows, t => t
        .Text("Library metric", r => r.Metric.Label)
        .Numeric("Within groups", "", r => r.WithinGroups is { } w ? new Cell(Figures.Signed(w.Value, 2), Figures.Limits(w.Interval?.Low, w.Interval?.High, 2, signed: true)) : new Cell(null, "too few players of a group"))
        .Numeric("Over the squad", "", r => new Cell(Figures.Signed(r.Squad.Value, 2), Figures.Limits(r.Squad.Interval?.Low, r.Squad.Interval?.High, 2, signed: true)))
        .Number("Players", "", 0, r => r.Squad.N));
}
