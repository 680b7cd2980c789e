using Analytics.Notebooks.Blocks;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>The sheets of the week.</summary>
internal static class SheetsBlock
{
    public static ReportBlock Of(WeekView view)
    {
        if (view.Plan is null) return WeekLoads.Of(view);
        if (view.Only is not null) return view.Sessions.Count == 0 ? new Together() : new PlayerSheet(view);
        var sheets = SessionSheet.Of(view.Week).Select(s => (ReportBlock)new SheetBlock(view.Week, s)).ToList();
        return new SheetStack(FormattableString.Invariant($"{sheets.Count} session sheets"), sheets);
    }
}

/// <summary>Sheets one below the other; on paper each begins a page.</summary>
internal sealed class SheetStack(string title, IReadOnlyList<ReportBlock> sheets) : ReportBlock
{
    public override void WriteHtml(Look.Markup html)
    {
        html.Add($"<div class=\"se shs\"><h2>{title}</h2><p class=\"ld\">Printed, each is one page across. A bold figure is the working load, small figures are warm-up sets: load\u00D7repetitions.</p>");
        foreach (var sheet in sheets) sheet.WriteHtml(html);
        html.Raw("</div>");
    }

    public override string ToText() => Join([title, .. sheets.Select(s => s.ToText())]);
}
