using System.Text.RegularExpressions;
using Analytics.Runner.Pages;

namespace Analytics.Runner.Proofs;

/// <summary>The charts of a page: what each is called, and its data.</summary>
internal static partial class PageCharts
{
    /// <summary>Title and data of every chart; null when the data cannot be unpacked.</summary>
    public static IReadOnlyList<KeyValuePair<string, string>>? Read(ReportFile report)
    {
        var part = report.Part(PartNames.Charts);
        if (part.Length == 0)
            return [];
        try
        {
            var data = PackedText.Unzip(PackedText.Decode(Packed().Match(part).Groups["data"].Value), ReportFile.LargestBytes).Split(ChartData.Begins).Skip(1).ToList();
            var titles = Titles(report.Parts.Select(p => p.Value));
            return [.. data.Select((d, i) => new KeyValuePair<string, string>(titles.GetValueOrDefault(i, ""), d))];
        }
        catch (Exception e) when (e is FormatException or InvalidDataException)
        {
            return null;
        }
    }

    /// <summary>The chart library as it runs; null when it cannot be unpacked.</summary>
    public static string? Library(string part)
    {
        try
        {
            return PackedText.Unzip(PackedText.Decode(LibraryText().Match(part).Groups["text"].Value), ReportFile.LargestBytes);
        }
        catch (Exception e) when (e is FormatException or InvalidDataException)
        {
            return null;
        }
    }

    private static Dictionary<int, string> Titles(IEnumerable<string> parts)
    {
        var titles = new Dictionary<int, string>();
        foreach (var match in parts.SelectMany(p => Figure().Matches(p)))
        {
            if (int.TryParse(match.Groups["at"].Value, out var at))
                titles.TryAdd(at, ContentReader.Read(match.Groups["title"].Value) is [PageHeading heading, ..] ? heading.Text : "");
        }

        return titles;
    }

    [GeneratedRegex("""<script type="text/plain" id="chart-data">(?<data>[^<]*)</script>""")]
    private static partial Regex Packed();

    [GeneratedRegex("""<script type="text/plain" id="chart-library">(?<text>[^<]*)</script>""")]
    private static partial Regex LibraryText();

    // Titles hold at most a few inline tags; the bound keeps hostile pages from costing more than one pass.
    [GeneratedRegex("""(?<title><figcaption[^>]{0,200}>(?:(?!</figcaption>).){0,2000}</figcaption>)(?:(?!<figcaption).)*?class="fig-data" data-at="(?<at>\d{1,6})">""", RegexOptions.Singleline)]
    private static partial Regex Figure();
}
