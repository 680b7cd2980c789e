using System.Text;
using Analytics.Runner.Proofs;

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

        var charts = rendered.Exists(r => r.Html.Contains("class=\"fig-data\"", StringComparison.Ordinal)) ? model.Charts : null;
        var data = new ChartData();
        // The library costs a megabyte: a page without charts goes without.
        var page = new PageText(charts is null ? 1 << 16 : charts.Packed.Length + (1 << 19));
        page.Part(PartNames.Head, Head(title, markup.HoistedStyles, charts))
            .Part(PartNames.Opening, Opening(model, titleInOutputs is null && titleInProse is null ? title : null));
        foreach (var (cell, html) in rendered)
        {
            var content = cell.IsCode ? html : Prose.ToHtml(cell.Source, headingsDown: titleInOutputs is null ? 0 : 1);
            if (content.Length > 0)
                page.Results(cell.Anchor, $"<div class=\"cell\" id=\"{cell.Anchor}\">\n{(charts is null ? content : data.TakeFrom(content))}\n</div>\n");
        }

        page.Part(PartNames.Code, CodeAppendix.Make(model) + "</main>\n")
            .Part(PartNames.Foot, ProvenanceFoot.BeforeTheTime(model))
            .Free(ProvenanceFoot.Time(model.Provenance))
            .Part(PartNames.FootEnd, ProvenanceFoot.AfterTheTime);
        return Finish(page, model, charts, data);
    }

    private static string Head(string title, IEnumerable<string> styles, ChartScript? charts)
    {
        var policy = ContentPolicy.For(charts is null ? [PageParts.Script] : [PageParts.Script, charts.Text]);
        var head = new StringBuilder("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
            .Append($"<meta http-equiv=\"Content-Security-Policy\" content=\"{policy}\">\n")
            .Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
            .Append($"<title>{Html.Text(title)}</title>\n<style>\n{PageParts.Style}");
        foreach (var style in styles)
            head.Append(style.Trim()).Append('\n');
        return head.Append("</style>\n</head>\n").ToString();
    }

    private static string Opening(PageModel model, string? heading)
        => "<body>\n<a class=\"skip\" href=\"#report\">Skip to the report</a>\n<main id=\"report\">\n"
            + (heading is null ? "" : $"<h1>{Html.Text(heading)}</h1>\n")
            + (model.FailedCell is { } failed ? FailureBanner.Make(model.Notebook, failed) : "");

    // The proof tells the digests of all other parts, so also of those that follow it.
    private static string Finish(PageText page, PageModel model, ChartScript? charts, ChartData data)
    {
        var drawn = charts is null ? ""
            : $"<script type=\"text/plain\" id=\"chart-data\">{data.Packed()}</script>\n<!-- {charts.Notice} -->\n<script type=\"text/plain\" id=\"chart-library\">{charts.Packed}</script>\n";
        var script = $"<script>{PageParts.Script}</script>\n</body>\n</html>\n";
        page.Free(ProofScript.Make(model, page, [PageText.Of(PartNames.Charts, drawn), PageText.Of(PartNames.Script, script)]));
        return page.Part(PartNames.Charts, drawn).Part(PartNames.Script, script).ToString();
    }
}
