using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace Analytics.Runner.Pages;

/// <summary>
/// Gathers the data of a page's charts, which are alike enough to shrink to a sixth when packed together. Each chart
/// keeps an empty element that says which data are its own.
/// </summary>
internal sealed partial class ChartData
{
    /// <summary>Stands before the data of each chart.</summary>
    public const char Begins = '\u001E';

    private readonly List<string> charts = [];

    /// <summary>Takes the data out of a piece of the page.</summary>
    public string TakeFrom(string html) => Data().Replace(html, match =>
    {
        charts.Add(match.Groups["json"].Value);
        return string.Create(CultureInfo.InvariantCulture, $"<script type=\"application/json\" class=\"fig-data\" data-at=\"{charts.Count - 1}\"></script>");
    });

    /// <summary>All of it packed, as a sequence of JSON texts (RFC 7464): a broken one leaves the others whole.</summary>
    public string Packed()
    {
        using var stream = new MemoryStream();
        using (var zip = new GZipStream(stream, CompressionLevel.SmallestSize, leaveOpen: true))
            zip.Write(Encoding.UTF8.GetBytes(string.Concat(charts.Select(c => $"{Begins}{c.Replace(Begins, ' ')}"))));
        return PackedText.Encode(stream.GetBuffer().AsSpan(0, (int)stream.Length));
    }

    [GeneratedRegex("""<script type="application/json" class="fig-data">(?<json>[^<]*)</script>""")]
    private static partial Regex Data();
}
