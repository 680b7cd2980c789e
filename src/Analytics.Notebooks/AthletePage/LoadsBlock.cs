using System.Globalization;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;

namespace Analytics.Notebooks.AthletePage;

/// <summary>The next loads: lift by lift, with the 1RM they come from and its age.</summary>
internal static class LoadsBlock
{
    private const string Title = "Next loads, for your coach to change";

    public static ReportBlock Of(PlayerPage page)
    {
        if (page.Status.IsOut)
            return new Section(Title, $"None while you are listed as {page.Status.Text}{(page.Status.IsLater ? ", which began after these tests" : "")}: see medical staff first.");
        if (page.Loads.Count == 0) return new Section(Title, "Test first: no lift of yours was tested. Start with an empty bar and your coach.");
        var bar = page.Bar;
        var table = DataTable.Of("Loads from your latest tests", page.Loads, t => t
            .Text("Lift", l => new Cell(PageWords.Lift(l.Test.Lift)))
            .Text("Your 1RM (95\u2009% range)", l => new Cell($"{(l.Test.Doubt is null ? "" : "~")}{bar.Lifted(l.Test.Kilograms)} {Range(l, bar)}".TrimEnd(), $"{l.Test.HowMade}, {Age(page, l)}"))
            .Text("Lighter day", l => Set(l, 0, bar))
            .Text("Heavier day", l => Set(l, 1, bar))
            .Text("Loads from", l => Basis(l, bar)));
        List<Block> blocks = [table];
        if (page.Status.IsLimited) blocks.Insert(0, new Callout($"You are listed as {page.Status.Text}: medical staff say first which of these you may do."));
        return new Section(Title, "", [.. blocks]);
    }

    private static string Range(NextLoad load, LoadUnit bar)
        => load.Test.Range is { } range ? Figures.Limits(range.Low * bar.PerKilogram, range.High * bar.PerKilogram, bar.Decimals) : "(no error known)";

    private static string Age(PlayerPage page, NextLoad load)
    {
        var days = page.Today.DayNumber - load.Test.Date.DayNumber;
        return days == 0 ? PageWords.Day(load.Test.Date, page.Today) : string.Create(CultureInfo.InvariantCulture,
            $"{PageWords.Day(load.Test.Date, page.Today)}, {(days < 14 ? $"{days} day{(days == 1 ? "" : "s")}" : $"{days / 7} weeks")} old");
    }

    private static Cell Set(NextLoad load, int index, LoadUnit bar)
    {
        if (load.TestFirst is not null) return index == 0 ? new Cell("test first") : Cell.Missing;
        var set = load.Sets[index];
        List<string> notes = [Figures.Plain(set.Scheme.Percent, 0, "%")];
        if (set.IsCapped) notes.Add("held at what you have lifted");
        else if (LoadScheme.Reserve(load.Test.Lift, set.Scheme) is { } left && !load.IsLowerSide) notes.Add(string.Create(CultureInfo.InvariantCulture, $"about {left:0} left"));
        if (set.IsAboveTested) notes.Add("above any load you have tested: only with your coach");
        return new Cell(PageWords.Set(set, bar), string.Join(", ", notes));
    }

    private static Cell Basis(NextLoad load, LoadUnit bar)
        => load.TestFirst is { } why ? new Cell(null, why)
            : load.IsLowerSide ? new Cell($"{bar.Lifted(load.BaseKilograms)}, lower side", string.Join("; ", load.Reasons)) : new Cell("the 1RM");
}
