using Analytics.Metrics.Bench;
using Analytics.Metrics.Sketching;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.OnTrial;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.Bench;

/// <summary>Rival definitions side by side.</summary>
internal static class RivalBlock
{
    public static Block Of(BenchContext bench, IReadOnlyList<MetricSketch> rivals)
    {
        const string title = "Which definition?";
        var sound = rivals.Where(r => r.Fault is null).ToList();
        var faults = rivals.Where(r => r.Fault is not null).Select(r => $"{TrialMark.Name(r.Label)}: {r.Fault}").ToList();
        Block wrong = faults.Count == 0 ? new Together() : new Callout("Left out:", faults);
        if (sound.Count < 2) return new Section(title, "", wrong, new Note("Two definitions or more are needed to compare."));
        var table = bench.Squad.Compare(sound);
        return new Section(title, Words.Signs(table.Words), wrong, TroubleBlock.Of(bench, sound),
            DataTable.Of("Rivals on the same data", table.Rivals, t => t
                .Text("Definition", r => new Cell(TrialMark.Name(r.Card.Sketch.Label), r.Card.Sketch.Rule == Metrics.Catalogue.TrialRule.Best ? "best attempt" : "mean of the attempts"))
                .Text("Verdict", r => new Cell(r.Card.Verdict.Words, "", BenchAnswers.ToneOf(r.Card.Verdict.Kind)))
                .Numeric("ICC", "", r => Figure(r.Card.Repeats.Value, r.Card.Repeats.Interval, 2))
                .Numeric("ICC against the first", "", r => r.Against is { } a ? new Cell(Figures.Signed(a.Difference, 2), $"{Figures.Limits(a.Interval?.Low, a.Interval?.High, 2, signed: true)} {Words.Players(a.Athletes)}".Trim()) : Cell.Missing)
                .Numeric("Signal to noise", "", r => Figure(r.Card.Quality.SignalToNoise, r.Card.Quality.SignalToNoiseInterval, 1))
                .Numeric("Seen against what matters", "times", r => r.Card.Quality is { DetectableChange: { } sees, Worthwhile.Value: > 0 and var matters } quality ? Figure(sees / matters, quality.DetectableInterval?.Times(1 / matters), 1) : Cell.Missing)
                .Numeric("Its own", "%", r => Figure(100 * r.Card.Overlap?.Own?.Value, r.Card.Overlap?.Own?.Interval?.Times(100), 0))
                .Numeric("Change over the season", "SD", r => r.Card.Movement?.Paired is { } p ? new Cell(Figures.Signed(p.Z, 1), Figures.Limits(p.ZInterval.Low, p.ZInterval.High, 1, signed: true)) : Cell.Missing)
                .Number("Players", "", 0, r => r.Card.Values.Athletes.Count())),
            new Note("Signal to noise: how many typical errors players of a group differ by. Seen against what matters: smallest change of one player between two test days over the change that matters, this taken as known; below 1 is fine. Its own: share of what returns that no two library metrics give. Intervals 95\u2009%; those against the first hold for all rivals together."));
    }

    private static Cell Figure(double? value, Statistics.Interval? interval, int decimals)
        => value is null ? Cell.Missing : new Cell(Figures.Plain(value, decimals), interval is { } i ? Figures.Limits(i.Low, i.High, decimals) : "no interval");
}
