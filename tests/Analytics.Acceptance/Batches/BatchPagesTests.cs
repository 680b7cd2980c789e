using System.Text.RegularExpressions;
using Analytics.Acceptance.Programs;

namespace Analytics.Acceptance.Batches;

/// <summary>The athlete pages of the demo season, made together and made alone.</summary>
public sealed class BatchPagesTests : IDisposable
{
    private readonly string place = Directory.CreateTempSubdirectory("batch-pages-").FullName;

    public void Dispose() => Directory.Delete(place, recursive: true);

    [Fact]
    public void Run_EachAthlete_WritesWhatARunForHimAloneWrites()
    {
        Run("--each", "athlete=TC12,TC01,TC48", "--out", In("pages"));
        Assert.Equal(7, Directory.GetFileSystemEntries(In("pages")).Length);
        // The last of three: what the first two left behind would show.
        Run("--set", "athlete=TC48", "--out", In("alone"));
        foreach (var ending in (string[])["html", "ipynb"])
            Assert.Equal(Steady($"alone/athlete-page.{ending}"), Steady($"pages/athlete-page-TC48.{ending}"));
        Assert.NotEqual(Steady("pages/athlete-page-TC01.html"), Steady("pages/athlete-page-TC48.html"));
    }

    private static void Run(params string[] more)
    {
        var (code, said, error) = Running.Run("dotnet", [Repository.Program, "run", Path.Combine(Repository.Root, "notebooks", "athlete-page.ipynb"), .. more]);
        Assert.True(code == 0, said + error);
    }

    private string Steady(string file)
        => Regex.Replace(Regex.Replace(File.ReadAllText(In(file)), "<!--varies-->.*?<!--/varies-->", "", RegexOptions.Singleline), "\"varies\": \\{.*?\\}", "", RegexOptions.Singleline);

    private string In(string name) => Path.Combine(place, name);
}
