using Analytics.Metrics.Sketching;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.OnTrial;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.Bench;

/// <summary>The error an idea gets from its inputs, beside the error observed.</summary>
internal static class InputErrorBlock
{
    public static Block Of(BenchContext bench, MetricSketch sketch)
    {
        var title = $"Where the error of {TrialMark.Name(sketch.Label)} comes from";
        if (sketch.Fault is { } fault) return new Section(title, "", new Callout(fault));
        var error = bench.Card(sketch).Error;
        var unit = bench.Unit(sketch.Metric);
        List<(string What, double? Value, Statistics.Interval? Interval, string Note)> rows =
        [
            ("carried from the inputs, each erring by itself", error.ByThemselves, error.ByThemselvesInterval, "Monte Carlo [jcgm101]"),
            ("the same, erring together as on the retest days", error.Together, null, error.Together is null ? "fewer than two inputs with enough retests" : "their correlations taken as known"),
            ("seen between days", error.Observed, error.Observed is null ? null : bench.Card(sketch).Quality.TypicalErrorInterval, bench.Card(sketch).Quality.Reliability.Basis),
        ];
        return new Section(title, error.Explanation,
            DataTable.Of("Typical error of one test day", rows, t => t
                .Text("Error", r => r.What)
                .Numeric("Size", unit.Symbol, r => r.Value is { } v
                    ? new Cell(Figures.Plain(unit.Of(v), unit.Decimals + 1), r.Interval is { } i && i.High > i.Low ? Figures.Limits(unit.Of(i.Low), unit.Of(i.High), unit.Decimals + 1) : "no interval")
                    : Cell.Missing)
                .Text("Basis", r => r.Note)),
            error.Inputs.Count == 0 ? new Together() : DataTable.Of("Inputs the formula uses", error.Inputs, t => t
                .Text("Input", i => i.Name)
                .Numeric("Typical error", "%", i => new Cell(Figures.Plain(i.Percent, 1), i.PercentInterval is var w && w.High > w.Low ? Figures.Limits(w.Low, w.High, 1) : "no interval"))
                .Number("Part of the carried error", "%", 0, i => 100 * i.Share)
                .Text("Known from", i => i.Basis)),
            new Note((error.TakenAsExact.Count == 0 ? "" : $"Taken as exact, since no error between days is known: {Words.List(error.TakenAsExact)}. ")
                + "An input is found by changing it: what does not move the value is not used."));
    }
}
