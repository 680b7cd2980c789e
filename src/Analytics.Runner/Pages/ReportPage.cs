using System.Text;

namespace Analytics.Runner.Pages;

/// <summary>
/// Makes the report: one HTML file that fetches nothing. Prose and outputs in the order of the cells; the code
/// folded away at the end; at the foot, what it was made from.
/// </summary>
public static class ReportPage
{
    /// <summary>Makes the page.</summary>
    /// <param name="model">What goes on it.</param>
    public static string Make(PageModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        var markup = new OutputMarkup();
        var rendered = model.Cells.Where(c => !c.LeaveOut)
            .Select(c => (Cell: c, Html: markup.Fit(string.Join("\n", c.Outputs.Select(o => OutputHtml.Render(o, c.Label)).Where(h => h.Length > 0)))))
            .ToList();
        var titleInOutputs = rendered.Select(r => PageTitle.InHtml(r.Html)).FirstOrDefault(t => t is not null);
        var titleInProse = rendered.Where(r => !r.Cell.IsCode).Select(r => Prose.FirstHeading(r.Cell.Source)).FirstOrDefault(t => t is not null);
        var title = titleInOutputs ?? titleInProse ?? Path.GetFileNameWithoutExtension(model.Notebook);

        var main = new StringBuilder();
        if (titleInOutputs is null && titleInProse is null)
            main.Append($"<h1>{Html.Text(title)}</h1>\n");
        if (model.FailedCell is { } failed)
            main.Append(FailureBanner.Make(model.Notebook, failed));
        foreach (var (cell, html) in rendered)
        {
            var content = cell.IsCode ? html : Prose.ToHtml(cell.Source, headingsDown: titleInOutputs is null ? 0 : 1);
            if (content.Length > 0)
                main.Append($"<div class=\"cell\" id=\"{cell.Anchor}\">\n{content}\n</div>\n");
        }

        main.Append(CodeAppendix.Make(model));
        return Assemble(title, markup.HoistedStyles, main.ToString(), ProvenanceFoot.Make(model), model.Charts);
    }

    private static string Assemble(string title, IEnumerable<string> styles, string main, string foot, ChartScript? charts)
    {
        // The library costs a megabyte: a page without charts goes without.
        if (!main.Contains("class=\"fig-data\"", StringComparison.Ordinal))
            charts = null;
        var policy = ContentPolicy.For(charts is null ? [PageParts.Script] : [PageParts.Script, charts.Text]);
        var page = new StringBuilder(charts is null ? 1 << 16 : charts.Packed.Length + (1 << 19));
        page.Append("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
            .Append($"<meta http-equiv=\"Content-Security-Policy\" content=\"{policy}\">\n")
            .Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
            .Append($"<title>{Html.Text(title)}</title>\n<style>\n{PageParts.Style}");
        foreach (var style in styles)
            page.Append(style.Trim()).Append('\n');
        page.Append("</style>\n</head>\n<body>\n<a class=\"skip\" href=\"#report\">Skip to the report</a>\n")
            .Append($"<main id=\"report\">\n{main}</main>\n{foot}");
        if (charts is not null)
            page.Append($"<!-- {charts.Notice} -->\n<script type=\"text/plain\" id=\"chart-library\">{charts.Packed}</script>\n");
        return page.Append($"<script>{PageParts.Script}</script>\n</body>\n</html>\n").ToString();
    }
}
