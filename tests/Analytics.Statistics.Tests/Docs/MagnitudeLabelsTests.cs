using System.Globalization;
using System.Text.RegularExpressions;
using Analytics.Statistics.Change;
using Analytics.Statistics.Tests.Accuracy;

namespace Analytics.Statistics.Tests.Docs;

/// <summary>Every percentage of docs/methods/no-magnitude-labels.md that can be computed is computed again.</summary>
public partial class MagnitudeLabelsTests
{
    private static readonly string[] s_lines = File.ReadAllLines(Page());

    [Theory]
    [InlineData(8)]
    [InlineData(15)]
    [InlineData(30)]
    [InlineData(50)]
    [InlineData(100)]
    public void Table_GroupSizes_HoldTheRates(int n)
    {
        var ratio = MagnitudeLabels.Ratio(n);
        Assert.Equal([Percent(MagnitudeLabels.Clinical(ratio)), Percent(MagnitudeLabels.Likely(ratio)), Percent(MagnitudeLabels.Possible(ratio))], Cells($"{n}"));
    }

    [Fact]
    public void Table_WorstCases_HoldRateAndPlace() => Assert.Equal(
        [
            Worst(MagnitudeLabels.Clinical, MagnitudeLabels.WorstClinical),
            Worst(MagnitudeLabels.Likely, MagnitudeLabels.WorstLikely),
            Worst(MagnitudeLabels.Possible, MagnitudeLabels.WorstPossible),
        ],
        Cells("worst"));

    // No neighbour of the named place is worse.
    [Fact]
    public void WorstCases_AreTheWorst()
    {
        (Func<double, double> Rate, double At)[] labels =
        [
            (MagnitudeLabels.Clinical, MagnitudeLabels.WorstClinical), (MagnitudeLabels.Likely, MagnitudeLabels.WorstLikely), (MagnitudeLabels.Possible, MagnitudeLabels.WorstPossible),
        ];
        Assert.All(labels, l => Assert.All(Enumerable.Range(0, 500), i => Assert.True(l.Rate(i / 100.0) <= l.Rate(l.At) + 1e-12)));
    }

    [Theory]
    [InlineData("normal, mean 0, SD 2", 0, 2)]
    [InlineData("normal, mean 0, SD 1", 0, 1)]
    [InlineData("normal, mean 1, SD 2", 1, 2)]
    public void Table_Priors_HoldTheChances(string name, double mean, double sd)
    {
        var change = IndividualChange.Between(0, 3, 2, double.PositiveInfinity);
        Assert.Equal([Percent(ChangePosterior.Of(change, ChangePrior.Stated(mean, sd, "page")).Shares(1).Above)], Cells(name));
        Assert.Equal([Percent(change.Shares(1).Above)], Cells("flat"));
    }

    private static string Worst(Func<double, double> rate, double at) => string.Create(CultureInfo.InvariantCulture, $"{Percent(rate(at))} at d/se = {at:0.00}");

    private static string Percent(double share) => (100 * share).ToString("0.0", CultureInfo.InvariantCulture) + " %";

    private static string[] Cells(string row)
    {
        var line = Assert.Single(s_lines, l => l.StartsWith($"| {row} |", StringComparison.Ordinal));
        return [.. Bar().Split(line.Trim('|')).Skip(1).Select(c => c.Trim())];
    }

    private static string Page()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Analytics.sln"))) folder = folder.Parent;
        return Path.Combine(folder?.FullName ?? throw new DirectoryNotFoundException("Analytics.sln was not found above the tests."), "docs", "methods", "no-magnitude-labels.md");
    }

    [GeneratedRegex(@"\|")]
    private static partial Regex Bar();
}
