using Analytics.Metrics.Catalogue;

namespace Analytics.Metrics.Tests.Catalogue;

public class CatalogueDocumentTests
{
    private static readonly string Page = Repository.Path("docs", "metrics.md");

    [Fact]
    public void Write_WholeCatalogue_IsTheCommittedPage()
    {
        var expected = CatalogueDocument.Write();
        if (Environment.GetEnvironmentVariable("METRICS_PAGE") == "write") File.WriteAllText(Page, expected);
        Assert.True(File.Exists(Page) && File.ReadAllText(Page).ReplaceLineEndings("\n") == expected,
            "docs/metrics.md is not the catalogue's page; rewrite it with: METRICS_PAGE=write dotnet test tests/Analytics.Metrics.Tests --filter CatalogueDocument");
    }

    [Fact]
    public void Write_OneMetric_SaysWhatIsKnown()
    {
        var metric = BodyMetrics.BodyMass with { Id = "x", Label = "A|B", PublishedError = new(5.8, null, "souza2020"), Sources = ["souza2020", "linthorne2001"] };
        var page = CatalogueDocument.Write([metric]);
        Assert.Contains("| A\\|B | `x` | kg | neither | mean of the attempts | body size |\n", page, StringComparison.Ordinal);
        Assert.Contains("- Plausible: 35 to 220 kg. Decimals shown: 1.\n", page, StringComparison.Ordinal);
        Assert.Contains("no retest: 5.8 % (souza2020).\n", page, StringComparison.Ordinal);
        Assert.Contains("- Sources: souza2020, linthorne2001.\n", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_NothingKnown_SaysSo()
    {
        var page = CatalogueDocument.Write([BodyMetrics.BodyMass]);
        Assert.Contains("no error known", page, StringComparison.Ordinal);
        Assert.Contains("common practice, no source", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_PublishedErrorWithoutFigure_IsRefused()
    {
        var empty = BodyMetrics.BodyMass with { PublishedError = new(null, null, "souza2020") };
        Assert.Contains("souza2020", Assert.Throws<ArgumentException>(() => CatalogueDocument.Write([empty])).Message, StringComparison.Ordinal);
    }
}
