using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Charts;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.ContactReview;

/// <summary>Small pictures side by side, as many as the width holds.</summary>
internal sealed class SideBySide(IEnumerable<ReportBlock> blocks) : ReportBlock
{
    private readonly IReadOnlyList<ReportBlock> all = [.. blocks];

    public override void WriteHtml(Markup html) => SmallCharts.Write(html, all);

    public override string ToText() => Join(all.Select(b => b.ToText()));
}
