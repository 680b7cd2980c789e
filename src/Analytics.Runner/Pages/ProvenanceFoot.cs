using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Analytics.Runner.Pages;

/// <summary>The foot of the page: what it was made from. Only the block marked <c>varies</c> differs from run to run.</summary>
internal static partial class ProvenanceFoot
{
    /// <summary>Stands before the only piece of a page that differs from run to run.</summary>
    public const string Opens = "<!--varies-->";

    /// <summary>Stands behind it.</summary>
    public const string Closes = "<!--/varies-->";

    /// <summary>The term of the files whose code was put in.</summary>
    public const string CodeTerm = "With the code of";

    public const string AfterTheTime = $"{Closes}\n</dl>\n</footer>\n";

    public static string BeforeTheTime(PageModel model)
    {
        var provenance = model.Provenance;
        var foot = new StringBuilder("<footer>\n<dl>\n");
        Row(foot, "Notebook", $"{model.Notebook}, SHA-256 {provenance.NotebookSha256}");
        if (provenance.Settings.Count > 0)
            Row(foot, "Settings", string.Join("; ", provenance.Settings.Select(SettingText.ForReaders).Select(s => $"{s.Name} = {s.Literal}")));
        if (provenance.Inserted.Count > 0)
            Row(foot, CodeTerm, CodeText(provenance.Inserted.Select(f => (f.Name, f.Sha256))));
        Row(foot, "Library", provenance.Library);
        return foot.Append(Opens).ToString();
    }

    /// <summary>What the foot says of files whose code was put in.</summary>
    public static string CodeText(IEnumerable<(string Name, string Sha256)> files) => string.Join("; ", files.Select(f => $"{f.Name}, SHA-256 {f.Sha256}"));

    public static string Time(Provenance provenance)
    {
        var started = provenance.Started.ToString("yyyy-MM-ddTHH:mm:sszzz", CultureInfo.InvariantCulture);
        var shown = provenance.Started.ToString("d MMMM yyyy HH:mm 'UTC'zzz", CultureInfo.InvariantCulture);
        var took = provenance.Took.TotalSeconds.ToString("0.0", CultureInfo.InvariantCulture);
        return $"<dt>Made</dt><dd><time datetime=\"{started}\">{Html.Text(shown)}</time>, in {took} s</dd>";
    }

    /// <summary>Whether a text is of the kind <see cref="Time"/> makes: it is the one piece of a page without a digest.</summary>
    public static bool IsTime(string text) => Shape().IsMatch(text);

    private static void Row(StringBuilder foot, string name, string value)
        => foot.Append($"<dt>{name}</dt><dd>{Html.Text(value)}</dd>\n");

    [GeneratedRegex("""\A<dt>Made</dt><dd><time datetime="[-+:T\d]{10,40}">\d{1,2} [A-Z][a-z]+ \d{4} \d{2}:\d{2} UTC(?:\+|-|&#x2B;)\d{2}:\d{2}</time>, in \d+\.\d s</dd>\z""")]
    private static partial Regex Shape();
}
