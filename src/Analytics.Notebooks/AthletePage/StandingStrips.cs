using System.Globalization;
using Analytics.Metrics.Profile;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Charts;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.AthletePage;

/// <summary>Where you stand: each test on one scale, in spreads between players from the middle, better to the right.</summary>
internal static class StandingStrips
{
    // Spreads from the middle to either end; who lies further out stands at the end, with his numbers beside.
    private const double Nearest = 2.4, Furthest = 4.5;

    public static ReportBlock Of(PlayerPage page)
    {
        const string title = "Where you stand";
        if (page.Measures.Count == 0) return new Section(title, "You have not been tested yet. A strip for each test will stand here.");
        var small = page.Measures.Any(m => m.Against is not { IsGroup: true });
        var group = page.Player.Group;
        var lead = page.Measures.All(m => m.Against is null) ? "Too few players did these tests to compare you without showing others' results. Your own values:"
            : small && page.Measures.Any(m => m.Against is { IsGroup: false })
                ? $"Too few in your group did {(page.Measures.All(m => m.Against is not { IsGroup: true }) ? "these tests" : "some tests")}; the whole squad stands there instead. Positions differ, so read it loosely."
                : $"Against the middle of your group{(group.Length > 0 ? ", " + group : "")}. It is no ranking: the page knows no other player's value.";
        var end = End(page);
        return new Section(title, lead, new StripSheet(title, "You (95\u2009% range)", "Middle (two in three)", Ground(end), Axis(), Key(page), [.. page.Measures.Select(m => Line(page, m, end))]) { Kind = "sd" });
    }

    private static StripLine Line(PlayerPage page, PageMeasure measure, double end)
    {
        var unit = measure.Unit;
        var range = unit.Of(measure.Range(measure.Latest));
        var doubt = measure.Latest.Doubts.Count > 0 ? "~" : "";
        var note = measure.Latest.Date == page.Today ? "" : PageWords.Day(measure.Latest.Date, page.Today);
        var value = doubt + Figures.Plain(unit.Of(measure.Latest.Value), unit.Decimals, unit.Symbol);
        var limits = Figures.Limits(range?.Low, range?.High, unit.Decimals);
        if (limits.Length == 0) limits = "(no error known)";
        if (measure.Against is not { } against)
            return new(PageWords.Row(measure.Metric), note, null, "", value, limits, "", "not compared", Why(measure), Tone.Plain);
        var middle = Figures.Plain(unit.Of(against.Middle), unit.Decimals, unit.Symbol);
        var who = against.IsGroup ? "group" : "squad";
        var band = $"{Figures.Plain(unit.Of(against.Middle - against.Spread), unit.Decimals)} to {Figures.Plain(unit.Of(against.Middle + against.Spread), unit.Decimals)}";
        return new(PageWords.Row(measure.Metric), note, Drawn(measure, against, end), Spoken(measure, against, who), value, limits, against.IsGroup ? $"{middle} ({band})" : $"squad {middle} ({band})", Said(measure, against), "", Tone.Plain);
    }

    private static string Why(PageMeasure measure)
        => measure.Standing is null && measure.Reliability.Source == ErrorSource.None ? measure.Reliability.Basis : "too few did this test";

    /// <summary>What can be said, with the probability that names a need.</summary>
    public static string Said(PageMeasure measure, Comparison against)
    {
        if (!against.IsGroup) return "squad shown";
        if (measure.Standing?.ProbabilityBehind is not { } behind) return "cannot tell";
        return behind >= measure.Sure ? "behind the middle" : measure.ProbabilityAhead >= measure.Sure ? "ahead of the middle" : "cannot tell";
    }

    // Positive when better, in spreads.
    private static double Ahead(PageMeasure measure, Comparison against, double value)
        => (measure.LowerIsBetter ? against.Middle - value : value - against.Middle) / against.Spread;

    private static double End(PlayerPage page)
        => Math.Clamp(page.Measures.Where(m => m.Against is not null)
            .SelectMany(m => new[] { m.Latest, m.Change is null ? m.Latest : m.Before! }.Select(v => Math.Abs(Ahead(m, m.Against!, v.Value)) + 0.15)).DefaultIfEmpty(0).Max(), Nearest, Furthest);

    private static Markup Drawn(PageMeasure measure, Comparison against, double end)
    {
        double At(double value) => (Math.Clamp(Ahead(measure, against, value), -end, end) + end) / (2 * end) * 100;
        var marks = new Markup().Add(Marks.Middle(50, -9, 9));
        if (measure.Range(measure.Latest) is { } range) marks.Add(Marks.Span(Math.Min(At(range.Low), At(range.High)), Math.Max(At(range.Low), At(range.High))));
        if (measure.Before is { } before && measure.Change is not null) marks.Add(Marks.Ring(At(before.Value), 0));
        return marks.Add(Marks.Dots(Marks.Dot(At(measure.Latest.Value), 0)));
    }

    private static string Spoken(PageMeasure measure, Comparison against, string who)
    {
        var better = Ahead(measure, against, measure.Latest.Value);
        return string.Create(CultureInfo.InvariantCulture, $"You are {Math.Abs(better):0.0} spreads {(better < 0 ? "behind" : "ahead of")} the middle of your {who}.");
    }

    // The band of one spread about the middle holds about two players in three.
    private static string Ground(double end)
    {
        double from = (end - 1) / (2 * end) * 100, to = (end + 1) / (2 * end) * 100;
        return string.Create(CultureInfo.InvariantCulture, $"linear-gradient(90deg,#0000 {from:0.##}%,{Palette.Band} {from:0.##}% {to:0.##}%,#0000 {to:0.##}%)");
    }

    private static Markup Axis() => new Markup().Raw("<div class=\"ax two\"><span>middle</span><b>better \u2192</b></div>");

    private static Markup Key(PlayerPage page)
    {
        var key = new Markup().Add(Marks.Key(new Markup().Raw("<g class=\"d\"><circle cx=\"9\" r=\"4.2\"/></g>"), "you"));
        if (page.Measures.Any(m => m.Change is not null)) key.Add(Marks.Key(Marks.Ring(50, 0), "you before"));
        return key.Add(Marks.Key(Marks.Middle(50, -7, 7), "middle")).Add(Marks.Key(new Markup().Raw("<rect class=\"b\" width=\"18\" height=\"12\" y=\"-6\"/>"), "about two players in three"));
    }
}
