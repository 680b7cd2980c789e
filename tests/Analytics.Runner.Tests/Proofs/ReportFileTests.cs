using System.Text;
using System.Text.RegularExpressions;
using Analytics.Runner.Outputs;
using Analytics.Runner.Pages;
using Analytics.Runner.Proofs;
using Analytics.Runner.Settings;
using Analytics.Runner.Tests.Pages;

namespace Analytics.Runner.Tests.Proofs;

public class ReportFileTests
{
    private static readonly string Page = Made("7");

    [Fact]
    public void Parse_PageAsMade_HoldsTogetherAndTellsWhatItWasMadeFrom()
    {
        var report = ReportFile.Parse(Page, "r.html");
        Assert.Empty(report.Changed);
        Assert.Equal(("tiny.ipynb", "00ff", "Kit 1.0", "complete"), (report.Proof.Notebook, report.Proof.NotebookSha256, report.Proof.Library, report.Proof.Ending));
        Assert.Equal([new ProofSetting("season", "spring", true, true), new ProofSetting("from", "2026-03-02", false, false), new ProofSetting("share", "2.5", false, false)], report.Proof.Settings);
        Assert.Equal([new ProofInput("a.csv", new string('a', 64)), new ProofInput("b.csv", "")], report.Proof.Inputs);
        Assert.Equal(["head", "opening", "part-1", "part-2", "part-3", "code", "foot", "foot-end", "charts", "script"], report.Parts.Select(p => p.Key));
        Assert.Equal(new PageLine("It is 7 lb."), report.Proof.Values.Single(v => v.Key == "part-1").Value[^1]);
    }

    [Fact]
    public void Parts_AllTogether_AreThePageButForTimeAndProof()
    {
        var rest = Regex.Replace(Page, "(?<=<!--varies-->).*(?=<!--/varies-->)|<script type=\"application/json\" id=\"proof\">.*?</script>\n", "");
        Assert.Equal(rest, string.Concat(ReportFile.Parse(Page, "r.html").Parts.Select(p => p.Value)));
    }

    // Some sixty characters of every part: all but the time and the proof.
    [Fact]
    public void Parse_AnyCharacterChanged_IsFoundInItsPart()
    {
        var report = ReportFile.Parse(Page, "r.html");
        var at = 0;
        foreach (var (name, text) in report.Parts)
        {
            at = Page.IndexOf(text, at, StringComparison.Ordinal);
            for (var i = 0; i < text.Length; i += 1 + (text.Length / 60))
            {
                var changed = Page[..(at + i)] + (text[i] == '8' ? '9' : '8') + Page[(at + i + 1)..];
                Assert.Contains(name, ReportFile.Parse(changed, "r.html").Changed);
            }
        }
    }

    [Theory]
    [InlineData("It is 7 lb", "It is 17 lb", "part-1")]
    [InlineData("<div class=\"cell\" id=\"part-2\">", "<p>more</p><div class=\"cell\" id=\"part-2\">", "part-1")]
    [InlineData("<footer>", "<p>more</p><footer>", "code")]
    [InlineData("</html>\n", "</html>\n<p>more</p>", "script")]
    [InlineData("<!doctype html>", "<p>more</p><!doctype html>", "head")]
    public void Parse_PartOfAnotherLength_IsTheOnlyOneChanged(string old, string other, string part)
        => Assert.Equal([part], ReportFile.Parse(Page.Replace(old, other, StringComparison.Ordinal), "r.html").Changed);

    [Fact]
    public void Parse_PartTakenOut_IsChanged()
    {
        var without = Regex.Replace(Page, "<div class=\"cell\" id=\"part-2\">.*?\n</div>\n", "", RegexOptions.Singleline);
        Assert.Contains("part-2", ReportFile.Parse(without, "r.html").Changed);
    }

    [Fact]
    public void Of_ChartWithAnotherNumber_IsNamedByItsTitle()
    {
        var comparison = ReportComparison.Of(ReportFile.Parse(Made("7", "{\"y\":[1,2,3]}"), "r.html"), ReportFile.Parse(Made("7", "{\"y\":[1,4,3]}"), "r.html"));
        var difference = Assert.Single(comparison.Values);
        Assert.Equal(("data of the chart 'Three points'", "{\"y\":[1,2,3]}", "{\"y\":[1,4,3]}"), (difference.Place, difference.Reported, difference.Expected));
    }

    [Fact]
    public void Of_SameNumbersInOtherMarkup_IsADifferenceOfTheSameLibraryOnly()
    {
        var same = ReportComparison.Of(ReportFile.Parse(Made("7", mark: " data-x=\"8\""), "r.html"), ReportFile.Parse(Page, "r.html"));
        Assert.StartsWith("drawing or markup under 'Day'", Assert.Single(same.Values).Place, StringComparison.Ordinal);
        var other = ReportComparison.Of(ReportFile.Parse(Made("7", mark: " data-x=\"8\"", library: "Kit 0.9"), "r.html"), ReportFile.Parse(Page, "r.html"));
        Assert.Empty(other.Values);
    }

    private static string Made(string number, string chart = "{\"y\":[1,2,3]}", string mark = "", string library = "Kit 1.0") => ReportPage.Make(new PageModel
    {
        Notebook = "tiny.ipynb",
        Charts = new ChartScript(() => Zipped.Bytes("var Plotly = 1;"), "a library"),
        Cells =
        [
            Cell("part-1", $"<h1>Day</h1><p{mark}>It is {number} lb.</p>"),
            Cell("part-2", $"<figure class=\"fig\"><figcaption>Three points</figcaption><script type=\"application/json\" class=\"fig-data\">{chart}</script></figure>"),
            Cell("part-3", $"<table><caption>Files read</caption><tr><th>File</th><th>Rows</th><th>SHA-256</th></tr><tr><th>a.csv</th><td>1</td><td>{new string('a', 64)}</td></tr><tr><th>b.csv</th><td>1</td><td>not read</td></tr></table>"),
        ],
        Provenance = new Provenance
        {
            NotebookSha256 = "00ff",
            Settings = [Setting("season", "string", "\"../x/spring\""), Setting("from", "DateOnly", "new DateOnly(2026, 3, 2)"), Setting("share", "double", "2.5d")],
            Given = ["season"],
            Library = library,
            Ending = "complete",
            Started = new DateTimeOffset(2026, 6, 8, 19, 42, 0, TimeSpan.FromHours(-5)),
            Took = TimeSpan.FromSeconds(1.25),
        },
    });

    private static PageCell Cell(string anchor, string html)
        => new() { IsCode = true, Label = "cell " + anchor[^1], Anchor = anchor, Source = "code", Outputs = [new DisplayOutput([new OutputForm("text/html", html)], true)] };

    private static Setting Setting(string name, string type, string literal) => new(name, SettingType.Find(type)!, literal, "");
}
