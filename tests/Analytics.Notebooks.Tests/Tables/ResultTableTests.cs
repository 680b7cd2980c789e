using System.Xml.Linq;
using Analytics.Notebooks.Tables;
using Analytics.Statistics.Summaries;

namespace Analytics.Notebooks.Tests.Tables;

public sealed class ResultTableTests
{
    // Mean 3, SD sqrt(2.5), t(0.975; 4) = 2.776445 (any t table): 3 ± 2.776445 · sqrt(0.5) = 1.0367568 to 4.9632432.
    private static readonly Analytics.Statistics.Estimate Mean = MeanEstimate.Of([1, 2, 3, 4, 5]);

    [Fact]
    public void ToTable_HasTheFiguresWithTheirDoubt()
    {
        var table = Mean.ToTable();
        Assert.Equal(["figure", "value", "interval", "SE"], table.Columns.Select(c => c.Head));
        Assert.Equal([false, true, true, true], table.Columns.Select(c => c.Numeric));
        Assert.Equal(["value", "3", "1.037 to 4.963 (95 %)", "0.7071"], table.Rows.Single().Select(c => c.Text));
    }

    [Fact]
    public void Of_NamesMethodAndBasis_InHtmlAndText()
    {
        var block = ResultTable.Of(Mean);
        var page = XElement.Parse("<x>" + block.ToHtml() + "</x>");
        Assert.StartsWith("dt", page.Descendants("table").Single().Attribute("class")!.Value, StringComparison.Ordinal);
        Assert.Contains("mean with Student t interval", page.Value, StringComparison.Ordinal);
        Assert.Contains("From: 5 observations.", block.ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void ToTable_WithoutError_SaysSo()
        => Assert.Equal("no error known", MeanEstimate.Of([4]).ToTable().Rows.Single()[^1].Text);
}
