using System.Text.RegularExpressions;
using Analytics.Acceptance.Programs;

namespace Analytics.Acceptance.Reports;

public class SameBytesTests
{
    [Fact]
    public void TestingDay_MadeTwice_DiffersOnlyInTheMarkedBlocks() => AssertSameTwice(ReportSet.Demo, Repository.TestingDay);

    [Fact]
    public void ContactReview_MadeTwice_DiffersOnlyInTheMarkedBlocks() => AssertSameTwice(ReportSet.Review, Repository.ContactReview);

    [Fact]
    public void SeasonReport_MadeTwice_DiffersOnlyInTheMarkedBlocks() => AssertSameTwice(ReportSet.Season, Repository.SeasonReport);

    [Fact]
    public void AthletePage_MadeTwice_DiffersOnlyInTheMarkedBlocks() => AssertSameTwice(ReportSet.Page, Repository.AthletePage);

    [Fact]
    public void TrainingWeek_MadeTwice_DiffersOnlyInTheMarkedBlocks() => AssertSameTwice(ReportSet.Week, Repository.TrainingWeek);

    [Fact]
    public void MetricBench_MadeTwice_DiffersOnlyInTheMarkedBlocks() => AssertSameTwice(ReportSet.Bench, Repository.MetricBench);

    [Fact]
    public void TestingDay_Results_TellNothingOfTheDiskTheyWereMadeOn()
    {
        var report = ReportSet.Demo;
        foreach (var file in new[] { report.Page, report.Notebook })
        {
            var text = File.ReadAllText(file);
            Assert.DoesNotContain(Repository.Root, text, StringComparison.Ordinal);
            Assert.DoesNotContain(Path.GetDirectoryName(file)!, text, StringComparison.Ordinal);
            Assert.DoesNotContain(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile) + "/", text, StringComparison.Ordinal);
        }
    }

    private static void AssertSameTwice(MadeReport first, string notebook)
    {
        var second = MadeReport.Make(notebook);
        Assert.Equal(0, first.ExitCode);
        Assert.Equal(Steady(first.Page, "<!--varies-->.*?<!--/varies-->"), Steady(second.Page, "<!--varies-->.*?<!--/varies-->"));
        Assert.Equal(Steady(first.Notebook, "\"varies\": \\{.*?\\}"), Steady(second.Notebook, "\"varies\": \\{.*?\\}"));
        foreach (var file in new[] { first.Page, first.Notebook }) Assert.DoesNotContain(Repository.Root, File.ReadAllText(file), StringComparison.Ordinal);
    }

    private static string Steady(string file, string varying)
    {
        var text = File.ReadAllText(file);
        Assert.Equal(1, Regex.Count(text, varying, RegexOptions.Singleline));
        return Regex.Replace(text, varying, "", RegexOptions.Singleline);
    }
}
