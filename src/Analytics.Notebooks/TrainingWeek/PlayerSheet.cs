using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Planning.Plans;
using static System.FormattableString;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>The week of one player on one sheet.</summary>
internal sealed class PlayerSheet(WeekView view) : ReportBlock
{
    private WeekContext Week => view.Week;

    private string Id => view.Only!.Id;

    // A sheet of many exercises is set smaller, so that it stays on its page: points of a page, a heading with its table head, and a row.
    private int Percent => 5 * Math.Clamp((int)(20 * 690 / (40 + view.Sessions.Sum(s => 48 + 25.0 * Items(s).Count()))), 10, 20);

    public override void WriteHtml(Markup html)
    {
        var marks = new SheetMarks();
        html.Raw(Invariant($"<section class=\"sh ps z{Percent}\">"));
        foreach (var session in view.Sessions)
        {
            html.Add($"<h3>{WeekWords.Day(session.Slot.Date)} <span>{Place(session)}</span></h3>");
            html.Add($"<table class=\"mx\"><caption>{WeekWords.Session(session.Slot)}: loads in {Week.Training.Weights.Unit}</caption><thead><tr><th scope=\"col\">Exercise</th><th scope=\"col\">Sets</th><th scope=\"col\">Load</th><th scope=\"col\">How</th><th scope=\"col\">Why</th></tr></thead><tbody>");
            foreach (var item in Items(session))
            {
                html.Add($"<tr><th scope=\"row\"><i>{item.Letter}</i> {OutsideText.Label(item.Item.Exercise.Name)}</th><td data-l=\"sets\"><b>{WeekWords.Sets(item.Item)}</b></td><td data-l=\"load\"><span>");
                SheetBlock.WriteLoad(html, LoadText.Of(Week, Week.Load(Id, item.Item, session.Slot.Date), marks, [], withUnit: true));
                html.Add($"</span></td><td data-l=\"how\">{How(item.Item)}</td><td data-l=\"why\">{Why(session, item)}</td></tr>");
            }

            html.Raw("</tbody></table>");
        }

        if (marks.Text.Length > 0) html.Add($"<p class=\"lg\">{marks.Text}.</p>");
        html.Add($"<p class=\"cx\">{SheetCautions.Of(view.Sessions.SelectMany(Items).Select(i => i.Item))}</p></section>");
    }

    private IEnumerable<SheetItem> Items(UnitSession session)
        => SessionSheet.Lettered(session).Where(i => i.Own is not { } own || own.ForNeed.Contains(Id) || own.ByDefault.Contains(Id)).Select((i, at) => i with { Letter = WeekWords.Letter(at) });

    private static string Place(UnitSession session)
        => Invariant($"{(session.Slot.Start is { } start ? Invariant($"{start:HH\\:mm} \u00B7 ") : "")}{WeekWords.Kind(session.Kind)} \u00B7 {session.Slot.Minutes}\u2009min{(session.Slot.Room.Length > 0 ? " \u00B7 " + session.Slot.Room : "")}");

    private static string How(PlannedItem item) => string.Join(", ", new[] { WeekWords.Effort(item), WeekWords.Way(item) }.Where(t => t.Length > 0));

    private string Why(UnitSession session, SheetItem item)
        => item.Own is { } own ? SessionSheet.Why(Week.Player(Id), own) : session.IsApart ? "what your restrictions leave; ask licensed staff first" : "what your group does";

    public override string ToText()
    {
        var marks = new SheetMarks();
        List<string> lines = [];
        foreach (var session in view.Sessions)
        {
            lines.Add($"{WeekWords.Day(session.Slot.Date)}, {Place(session)}");
            lines.AddRange(Items(session).Select(i => $"- {i.Letter} {i.Item.Exercise.Name} {WeekWords.Sets(i.Item)}: {Loaded(session, i, marks)}{How(i.Item)}; {Why(session, i)}"));
        }

        if (marks.Text.Length > 0) lines.Add(marks.Text);
        return string.Join('\n', lines);
    }

    private string Loaded(UnitSession session, SheetItem item, SheetMarks marks)
    {
        var load = LoadText.Of(Week, Week.Load(Id, item.Item, session.Slot.Date), marks, [], withUnit: true);
        return load.Main.Length > 0 ? $"{load.Main} {load.Marks}".TrimEnd() + ", " : "";
    }
}
