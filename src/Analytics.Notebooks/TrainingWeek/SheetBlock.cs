using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Plans;
using static System.FormattableString;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>The sheet of one group in one session: one printed page, landscape.</summary>
internal sealed class SheetBlock(WeekContext week, SessionSheet sheet) : ReportBlock
{
    private string Unit => week.Training.Weights.Unit;

    private DateOnly Day => sheet.First.Slot.Date;

    public override void WriteHtml(Markup html)
    {
        html.Raw(FormattableString.Invariant($"<section class=\"sh z{SheetSize.Percent(week, sheet, Cautions())}\">"));
        html.Add($"<h3>{OutsideText.Label(sheet.First.Group)} <span>{Title()}</span></h3>");
        var marks = new SheetMarks();
        if (sheet.Main is { } main)
        {
            WriteExercises(html);
            WriteLoads(html, marks);
        }

        if (sheet.Apart.Count > 0) html.Raw("<div class=\"al\">");
        foreach (var unit in sheet.Apart) html.Add($"<p><b>{OutsideText.Label(week.Player(unit.Players[0]).Name)}</b>, apart, what his restrictions leave: {ApartLine.Of(week, unit, marks)}</p>");
        if (sheet.Apart.Count > 0) html.Raw("</div>");
        if (marks.Text.Length > 0) html.Add($"<p class=\"lg\">{marks.Text}.</p>");
        html.Add($"<p class=\"cx\">{Cautions()}</p></section>");
    }

    private string Title()
    {
        var slot = sheet.First.Slot;
        var start = slot.Start is { } time ? Invariant($", {time:HH\\:mm}") : "";
        var planned = sheet.Main is { } main ? Invariant($" ({main.Minutes:0} planned)") : "";
        return Invariant($"{WeekWords.Day(slot.Date)}{start} \u00B7 {WeekWords.Kind(sheet.First.Kind)} \u00B7 {slot.Minutes}\u2009min{planned}{(slot.Room.Length > 0 ? " \u00B7 " + OutsideText.Label(slot.Room) : "")}");
    }

    private void WriteExercises(Markup html)
    {
        html.Raw("<ul class=\"ex\">");
        foreach (var item in sheet.Items)
        {
            html.Add($"<li><i>{item.Letter}</i><span><b>{OutsideText.Label(item.Item.Exercise.Name)}</b> {WeekWords.Sets(item.Item)} {WeekWords.Effort(item.Item)}{(item.Own is null ? "" : " \u00B7 own work")}");
            string[] notes = [WeekWords.Way(item.Item), .. sheet.Common(week, item)];
            html.Add($"<small>{string.Join("; ", notes)}</small></span></li>");
        }

        html.Raw("</ul>");
    }

    private void WriteLoads(Markup html, SheetMarks marks)
    {
        var hasOwn = sheet.Items.Any(i => i.Own is not null);
        html.Add($"<table class=\"mx\"><caption>{OutsideText.Label(sheet.First.Group)}, {WeekWords.Session(sheet.First.Slot)}: working load in {Unit}, warm-up sets small</caption><thead><tr><th scope=\"col\">Player</th>");
        foreach (var item in sheet.Shared) html.Add($"<th scope=\"col\"><i>{item.Letter}</i> {OutsideText.Label(item.Item.Exercise.Name)}</th>");
        if (hasOwn) html.Raw("<th scope=\"col\">Own work</th>");
        html.Raw("</tr></thead><tbody>");
        foreach (var player in sheet.Players)
        {
            html.Add($"<tr><th scope=\"row\"{Long(player.Name)}>{OutsideText.Label(player.Name)}</th>");
            foreach (var item in sheet.Shared)
            {
                html.Add($"<td data-l=\"{item.Letter} {OutsideText.Label(item.Item.Exercise.Name)}\"><span>");
                WriteLoad(html, LoadText.Of(week, week.Load(player.Id, item.Item, Day), marks, sheet.Common(week, item)));
                html.Raw("</span></td>");
            }

            if (hasOwn) WriteOwn(html, marks, player);
            html.Raw("</tr>");
        }

        html.Raw("</tbody></table>");
    }

    private void WriteOwn(Markup html, SheetMarks marks, Planning.People.PlanPlayer player)
    {
        html.Raw("<td class=\"ow\" data-l=\"own work\"><span>");
        if (sheet.OwnOf(player.Id) is not { Own: { } own } item) html.Raw(Figures.Missing);
        else
        {
            html.Add($"<i>{item.Letter}</i> {OutsideText.Label(item.Item.Exercise.Name)} ");
            WriteLoad(html, LoadText.Of(week, week.Load(player.Id, item.Item, Day), marks, sheet.Common(week, item), withUnit: true));
            html.Add($"<small class=\"{(own.ForNeed.Contains(player.Id) ? "y nd" : "y")}\">{SessionSheet.Why(player, own)}</small>");
        }

        html.Raw("</span></td>");
    }

    /// <summary>Load, marks, warm-up.</summary>
    internal static void WriteLoad(Markup html, LoadText load)
    {
        if (load.Main.Length == 0) return;
        html.Add($"<b{(load.IsWord ? new Markup().Raw(" class=\"w\"") : new Markup())}>{load.Main}</b>");
        if (load.Marks.Length > 0) html.Add($"<sup>{load.Marks}</sup>");
        if (load.Ramp.Length > 0) html.Add($" <small>{load.Ramp}</small>");
    }

    private static Markup Long(string name) => new Markup().Raw(OutsideText.HasLongWord(name) ? " class=\"lg-w\"" : "");

    private string Cautions() => SheetCautions.Of(sheet.Items.Select(i => i.Item).Concat(sheet.Apart.SelectMany(u => u.For(u.Players[0]))));

    public override string ToText()
    {
        var marks = new SheetMarks();
        List<string> lines = [$"{sheet.First.Group}, {Title()}"];
        foreach (var item in sheet.Items) lines.Add($"{item.Letter} {item.Item.Exercise.Name} {WeekWords.Sets(item.Item)} {WeekWords.Effort(item.Item)}, {WeekWords.Way(item.Item)}{(item.Own is null ? "" : ", own work")}");
        foreach (var player in sheet.Players)
        {
            IEnumerable<string> loads = sheet.Shared.Select(i => $"{i.Letter} {Plain(i.Item, player.Id, marks)}");
            if (sheet.OwnOf(player.Id) is { Own: { } own } mine) loads = loads.Append($"own {mine.Letter} {Plain(mine.Item, player.Id, marks)} {SessionSheet.Why(player, own)}");
            lines.Add($"- {player.Name}: {string.Join("; ", loads)}");
        }

        lines.AddRange(sheet.Apart.Select(u => $"- {week.Player(u.Players[0]).Name}, apart: {ApartLine.Of(week, u, marks)}"));
        if (marks.Text.Length > 0) lines.Add(marks.Text);
        lines.Add(Cautions());
        return string.Join('\n', lines);
    }

    private string Plain(PlannedItem item, string player, SheetMarks marks)
    {
        var load = LoadText.Of(week, week.Load(player, item, Day), marks, []);
        return $"{load.Main} {load.Marks}".TrimEnd();
    }
}
