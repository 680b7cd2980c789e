using Analytics.Metrics.Tests;

namespace Analytics.Statistics.Tests.Accuracy;

public sealed class AccuracyDocumentTests
{
    private static readonly string s_page = Repository.Path("docs", "accuracy.md");

    [Fact]
    public void Write_AllSections_IsTheCommittedPage()
    {
        var made = AccuracyDocument.Write();
        if (Environment.GetEnvironmentVariable("ACCURACY_PAGE") == "write") File.WriteAllText(s_page, made);
        var difference = File.Exists(s_page) ? AccuracyDigits.Difference(File.ReadAllText(s_page), made) : "the page is missing";
        Assert.True(difference is null,
            $"docs/accuracy.md is not what the sections say: {difference}\nRewrite it with: ACCURACY_PAGE=write dotnet test tests/Analytics.Statistics.Tests --filter AccuracyDocument");
    }

    [Theory]
    [InlineData("| a | ≥ 12 | ≈ 9 |", "| a | ≥ 11 | ≈ 11 |", true)]
    [InlineData("| a | ≥ 12 | ≈ 9 |", "| a | ≥ 10 | ≈ 9 |", false)]
    [InlineData("| a | ≥ 12 | ≈ 9 |", "| a | ≥ 12 | ≈ 13 |", false)]
    [InlineData("| a | 12 |", "| a | 11 |", false)]
    [InlineData("| a | ≥ 12 |", "| a | ≈ 12 |", false)]
    [InlineData("| a |", "| a |\n| b |", false)]
    public void Difference_LetsADigitPass_AndNothingElse(string committed, string made, bool same)
        => Assert.Equal(same, AccuracyDigits.Difference(committed, made) is null);

    [Fact]
    public void Every_printed_figure_is_the_rounded_one_or_has_a_remark()
    {
        foreach (var section in PrintedFigure.All.Select(f => f.Section).Distinct().Intersect(AccuracyTests.All.Select(s => s.Section)))
        {
            var checks = AccuracyTests.BookOf(section).Checks.ToLookup(c => (c.Row.Case, c.Row.Quantity));
            foreach (var figure in PrintedFigure.All.Where(f => f.Section == section))
                foreach (var check in checks[(figure.Case, figure.Quantity)])
                    Assert.True(figure.Agrees(check.Actual) == (figure.Remark.Length == 0), $"{figure}: {check}");
        }
    }

    [Fact]
    public void Every_printed_figure_names_a_known_source()
    {
        var references = File.ReadAllText(Repository.Path("docs", "references.md"));
        Assert.All(PrintedFigure.All, f => Assert.Contains($"**{f.Source}**", references, StringComparison.Ordinal));
    }
}
