using System.Text.RegularExpressions;
using Analytics.Acceptance.Programs;

namespace Analytics.Acceptance.Reports;

public class SameBytesTests
{
    [Fact]
    public void TestingDay_MadeTwice_DiffersOnlyInTheMarkedBlocks()
    {
        MadeReport first = ReportSet.Demo, second = MadeReport.Make(Repository.TestingDay);
        Assert.Equal(0, first.ExitCode);
        Assert.Equal(Steady(first.Page, "<!--varies-->.*?<!--/varies-->"), Steady(second.Page, "<!--varies-->.*?<!--/varies-->"));
        Assert.Equal(Steady(first.Notebook, "\"varies\": \\{.*?\\}"), Steady(second.Notebook, "\"varies\": \\{.*?\\}"));
    }

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

    [Fact]
    public void ContactReview_MadeTwice_DiffersOnlyInTheMarkedBlocks()
    {
        MadeReport first = ReportSet.Review, second = MadeReport.Make(Repository.ContactReview);
        Assert.Equal(0, first.ExitCode);
        Assert.Equal(Steady(first.Page, "<!--varies-->.*?<!--/varies-->"), Steady(second.Page, "<!--varies-->.*?<!--/varies-->"));
        Assert.DoesNotContain(Repository.Root, File.ReadAllText(first.Page), StringComparison.Ordinal);
    }

    [Fact]
    public void SeasonReport_MadeTwice_DiffersOnlyInTheMarkedBlocks()
    {
        MadeReport first = ReportSet.Season, second = MadeReport.Make(Repository.SeasonReport);
        Assert.Equal(0, first.ExitCode);
        Assert.Equal(Steady(first.Page, "<!--varies-->.*?<!--/varies-->"), Steady(second.Page, "<!--varies-->.*?<!--/varies-->"));
        Assert.DoesNotContain(Repository.Root, File.ReadAllText(first.Page), StringComparison.Ordinal);
    }

    private static string Steady(string file, string varying)
    {
        var text = File.ReadAllText(file);
        Assert.Equal(1, Regex.Count(text, varying, RegexOptions.Singleline));
        return Regex.Replace(text, varying, "", RegexOptions.Singleline);
    }
}
