using System.Globalization;
using System.Text;

namespace Analytics.Runner.Pages;

/// <summary>The foot of the page: what it was made from. Only the block marked <c>varies</c> differs from run to run.</summary>
internal static class ProvenanceFoot
{
    public static string Make(PageModel model)
    {
        var provenance = model.Provenance;
        var settings = provenance.Settings.Select(SettingText.ForReaders).Select(s => $"{s.Name} = {s.Literal}").ToList();
        var foot = new StringBuilder("<footer>\n<dl>\n");
        Row(foot, "Notebook", $"{model.Notebook}, SHA-256 {provenance.NotebookSha256}");
        if (settings.Count > 0)
            Row(foot, "Settings", string.Join("; ", settings));
        Row(foot, "Library", provenance.Library);
        foot.Append("<!--varies-->");
        var started = provenance.Started.ToString("yyyy-MM-ddTHH:mm:sszzz", CultureInfo.InvariantCulture);
        var shown = provenance.Started.ToString("d MMMM yyyy HH:mm 'UTC'zzz", CultureInfo.InvariantCulture);
        var took = provenance.Took.TotalSeconds.ToString("0.0", CultureInfo.InvariantCulture);
        foot.Append($"<dt>Made</dt><dd><time datetime=\"{started}\">{Html.Text(shown)}</time>, in {took} s</dd>");
        return foot.Append("<!--/varies-->\n</dl>\n</footer>\n").ToString();
    }

    private static void Row(StringBuilder foot, string name, string value)
        => foot.Append($"<dt>{name}</dt><dd>{Html.Text(value)}</dd>\n");
}
