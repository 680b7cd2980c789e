using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Analytics.Runner.Outputs;
using Analytics.Runner.Pages;

namespace Analytics.Runner.Tests.Pages;

public class ReportPageTests
{
    private const string Figure = "<figure class=\"fig\"><script type=\"application/json\" class=\"fig-data\">{}</script></figure>";

    [Fact]
    public void Make_TitleInOutput_NamesThePageAndKeepsOneFirstHeading()
    {
        var page = ReportPage.Make(Model(Prose("# The notebook\n\n## Part"), Code(Html("<h1>Testing day, <b>8 June</b></h1>"))));
        Assert.Contains("<title>Testing day, 8 June</title>", page, StringComparison.Ordinal);
        Assert.Equal(1, Regex.Count(page, "<h1"));
        Assert.Contains("<h2>The notebook</h2>", page, StringComparison.Ordinal);
        Assert.Contains("<h3>Part</h3>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Make_TitleInProse_NamesThePage()
    {
        var page = ReportPage.Make(Model(Prose("# A *good* day\n\nText")));
        Assert.Contains("<title>A good day</title>", page, StringComparison.Ordinal);
        Assert.Contains("<h1>A <em>good</em> day</h1>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Make_NoTitleAnywhere_TakesTheNotebooksName()
        => Assert.Contains("<h1>tiny</h1>", ReportPage.Make(Model(Code(Html("<p>x</p>")))), StringComparison.Ordinal);

    [Fact]
    public void Make_Policy_ListsExactlyTheHashesOfThePagesScripts()
    {
        var charts = new ChartScript(() => Zipped.Bytes("var Plotly = 1;"), "a library");
        var page = ReportPage.Make(Model(Code(Html(Figure))) with { Charts = charts });
        var own = Regex.Match(page, "<script>(.*?)</script>", RegexOptions.Singleline).Groups[1].Value;
        var policy = Regex.Match(page, "Content-Security-Policy\" content=\"([^\"]*)\"").Groups[1].Value;
        Assert.Equal(
            $"default-src 'none'; script-src '{Hash(own)}' '{Hash("var Plotly = 1;")}'; style-src 'unsafe-inline'; img-src data: blob:; base-uri 'none'; form-action 'none'",
            policy);
        Assert.True(page.IndexOf("Content-Security-Policy", StringComparison.Ordinal) < page.IndexOf("<script", StringComparison.Ordinal));
    }

    [Fact]
    public void Make_NoChart_CarriesNoLibrary()
    {
        var page = ReportPage.Make(Model(Code(Html("<p>x</p>"))) with { Charts = new ChartScript(() => throw new InvalidOperationException("read"), "a library") });
        Assert.DoesNotContain("a library", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Make_TextOfAllKinds_IsEscaped()
    {
        const string Bad = "<img src=x onerror=alert(1)>";
        var page = ReportPage.Make(Model(
            Prose($"Text {Bad}"),
            Code(new StreamOutput(false, Bad), new DisplayOutput([new OutputForm("text/plain", Bad)], true)) with { Source = $"// {Bad}" })
            with
        { Notebook = Bad + ".ipynb" });
        Assert.DoesNotContain("<img", page, StringComparison.Ordinal);
        Assert.Equal(8, Regex.Count(page, "&lt;img src=x onerror=alert\\(1\\)"));
    }

    [Fact]
    public void Make_LeftOutCell_ShowsOnlyItsCode()
    {
        var page = ReportPage.Make(Model(Code(Html("<p>hidden output</p>")) with { LeaveOut = true, Source = "var shown = 1;" }));
        Assert.DoesNotContain("hidden output", page, StringComparison.Ordinal);
        Assert.Contains("var shown = 1;", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Make_FailedCell_HasABannerThatLinksToTheCell()
    {
        var failed = Code(new StreamOutput(false, "before"), new ErrorOutput(new CellFailure("DivideByZeroException", "Attempted to <divide>.", 3, ["  at cell 1, line 2", "  at cell 2, line 3"])));
        var page = ReportPage.Make(Model(Prose("# T"), failed with { Label = "cell 2", Anchor = "part-2" }, Code() with { WasRun = false, Label = "cell 3", Source = "2" }));
        Assert.Contains("tiny.ipynb stopped at <a href=\"#code-part-2\">cell 2, line 3</a>", page, StringComparison.Ordinal);
        Assert.Contains("Attempted to &lt;divide&gt;.", page, StringComparison.Ordinal);
        Assert.Contains("id=\"code-part-2\"", page, StringComparison.Ordinal);
        Assert.Contains("<details class=\"how\" open>", page, StringComparison.Ordinal);
        Assert.Contains("at cell 1, line 2", page, StringComparison.Ordinal);
        Assert.Contains("Cell 3 (not run)", page, StringComparison.Ordinal);
        Assert.Contains("before", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Make_Twice_DiffersOnlyInTheMarkedBlock()
    {
        var model = Model(Code(Html(Figure)));
        var later = model with { Provenance = model.Provenance with { Started = model.Provenance.Started.AddHours(3), Took = TimeSpan.FromSeconds(9) } };
        string first = ReportPage.Make(model), second = ReportPage.Make(later);
        Assert.NotEqual(first, second);
        Assert.Equal(WithoutVarying(first), WithoutVarying(second));
    }

    private static string WithoutVarying(string page) => Regex.Replace(page, "<!--varies-->.*?<!--/varies-->", "", RegexOptions.Singleline);

    private static string Hash(string script) => "sha256-" + Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(script)));

    private static DisplayOutput Html(string html) => new([new OutputForm("text/html", html), new OutputForm("text/plain", "plain")], true);

    private static PageCell Prose(string markdown) => new() { IsCode = false, Anchor = "part-1", Source = markdown };

    private static PageCell Code(params CellOutput[] outputs) => new() { IsCode = true, Label = "cell 1", Anchor = "part-9", Source = "code", Outputs = outputs };

    private static PageModel Model(params PageCell[] cells) => new()
    {
        Notebook = "tiny.ipynb",
        Cells = cells,
        Provenance = new Provenance
        {
            NotebookSha256 = "00ff",
            Settings = [],
            Library = "Kit 1.0",
            Ending = "complete",
            Started = new DateTimeOffset(2026, 6, 8, 19, 42, 0, TimeSpan.FromHours(2)),
            Took = TimeSpan.FromSeconds(1.25),
        },
    };
}
