using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Charts;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.TestingDay;
using Analytics.Statistics.Change;

namespace Analytics.Notebooks.AthletePage;

/// <summary>Your season, test by test: a small line with the error of each day, the change and its verdict.</summary>
internal static class SeasonLines
{
    private const double Narrowest = 190;

    // Pixels above and below the middle of a row.
    private const double Half = 12;

    public static ReportBlock Of(PlayerPage page)
    {
        const string title = "What changed";
        if (page.Measures.Count == 0) return new Section(title, "Your line starts with your first test.");
        var ticks = AxisTicks.OfDays(page.Measures.SelectMany(m => m.History.Select(v => v.Date)), Narrowest);
        var since = HeadBlock.Compared(page) is { } before ? $" since {PageWords.Day(before, page.Today)}" : "";
        return new Section(title + since, "", new StripSheet(title, "Change (95\u2009% interval)", "", Ground(ticks), Axis(ticks), Key(), [.. page.Measures.Select(m => Line(page, m, ticks))]) { Kind = "sl" });
    }

    private static StripLine Line(PlayerPage page, PageMeasure measure, AxisTicks ticks)
    {
        var name = PageWords.Row(measure.Metric);
        var unit = measure.Unit;
        var spoken = string.Join(", ", measure.History.Select(v => $"{PageWords.Day(v.Date, page.Today)} {Figures.Plain(unit.Of(v.Value), unit.Decimals, unit.Symbol)}"));
        var drawing = Drawn(measure, ticks);
        if (measure.Change is not { } change)
            return new(name, "", drawing, spoken, Figures.Missing, "", null, measure.Before is null ? "nothing to compare with" : "measured another way", "", Tone.Plain);
        var interval = unit.Of(change.Interval);
        var decimals = unit.DecimalsFor([change.Interval]);
        var said = Directions.Of(measure.Metric, change.Verdict, change.Change is not null);
        return new(name, "", drawing, spoken, Figures.Signed(unit.Of(change.Difference), decimals, unit.Symbol), Figures.Limits(interval?.Low, interval?.High, decimals, signed: true), null,
            said.Words(), Remark(page, measure, change), said.Tone());
    }

    private static string Remark(PlayerPage page, PageMeasure measure, AthleteChange change)
    {
        List<string> parts = [];
        if (measure.Before!.Date != HeadBlock.Compared(page) || measure.Latest.Date != page.Tested) parts.Add($"{PageWords.Day(measure.Before.Date, page.Today)} to {PageWords.Day(measure.Latest.Date, page.Today)}");
        if (change.Verdict == Verdict.ClearLoss) parts.Add("check health, sleep and the testing day first");
        else if (change.Reason is not null && change.Change is not null) parts.Add("day-to-day error not known");
        else if (measure.Before.HowMade != measure.Latest.HowMade || measure.Latest.HowMade.StartsWith("est", StringComparison.Ordinal)) parts.Add("estimated from repetitions");
        return string.Join("; ", parts);
    }

    private static Markup Drawn(PageMeasure measure, AxisTicks ticks)
    {
        var points = measure.History.Select(v => (v.Date, v.Value, Range: measure.Range(v))).ToList();
        double low = points.Min(p => Math.Min(p.Value, p.Range?.Low ?? p.Value)), high = points.Max(p => Math.Max(p.Value, p.Range?.High ?? p.Value));
        var span = high > low ? high - low : 1;
        // Up is better in every row.
        double Y(double value) => (measure.LowerIsBetter ? 1 : -1) * ((value - low) / span * 2 - 1) * Half;
        double X(DateOnly day) => ticks.Scale.Percent(day.DayNumber);
        var marks = new Markup();
        foreach (var p in points.Where(p => p.Range is not null))
            marks.Add($"<line class=\"er\" x1=\"{X(p.Date)}%\" x2=\"{X(p.Date)}%\" y1=\"{Y(p.Range!.Value.Low)}\" y2=\"{Y(p.Range!.Value.High)}\"/>");
        foreach (var (a, b) in points.Zip(points.Skip(1)))
            marks.Add($"<line class=\"pa\" x1=\"{X(a.Date)}%\" x2=\"{X(b.Date)}%\" y1=\"{Y(a.Value)}\" y2=\"{Y(b.Value)}\"/>");
        foreach (var p in points.Take(points.Count - 1))
            marks.Add(measure.Before is not null && p.Date == measure.Before.Date ? Marks.Ring(X(p.Date), Y(p.Value)) : new Markup().Add($"<circle class=\"s\" cx=\"{X(p.Date)}%\" cy=\"{Y(p.Value)}\" r=\"2\"/>"));
        var last = points[^1];
        return marks.Add(measure.IsJudged && measure.Change!.Verdict.IsClear()
            ? new Markup().Add($"<svg x=\"{X(last.Date)}%\" y=\"{Y(last.Value)}\"><path d=\"M-5 0 0-5 5 0 0 5z\"/></svg>")
            : new Markup().Add($"<g class=\"d\"><circle cx=\"{X(last.Date)}%\" cy=\"{Y(last.Value)}\" r=\"3.3\"/></g>"));
    }

    private static string Ground(AxisTicks ticks) => string.Join(',', ticks.Labels.Select(t => string.Create(
        System.Globalization.CultureInfo.InvariantCulture, $"linear-gradient({Palette.Rule},{Palette.Rule}) {ticks.Scale.Percent(t.Value):0.##}% 0/1px 100% no-repeat")));

    private static Markup Axis(AxisTicks ticks)
    {
        var axis = new Markup().Raw("<span class=\"vh\">Your days</span><svg height=\"14\" aria-hidden=\"true\">");
        foreach (var (value, text) in ticks.Labels) axis.Add($"<text class=\"t mid\" x=\"{ticks.Scale.Percent(value)}%\" y=\"11\">{text}</text>");
        return axis.Raw("</svg>");
    }

    private static Markup Key() => new Markup()
        .Raw("<b>better \u2191</b>")
        .Add(Marks.Key(new Markup().Raw("<g class=\"d\"><circle cx=\"9\" r=\"4.2\"/></g>"), "latest"))
        .Add(Marks.Key(Marks.Ring(50, 0), "compared with"))
        .Add(Marks.Key(new Markup().Raw("<line class=\"er\" x1=\"9\" x2=\"9\" y1=\"-7\" y2=\"7\"/>"), "test error, 95\u2009%"))
        .Add(Marks.Key(new Markup().Raw("<svg x=\"9\"><path d=\"M-5 0 0-5 5 0 0 5z\"/></svg>"), "beyond what the test wobbles"));
}
