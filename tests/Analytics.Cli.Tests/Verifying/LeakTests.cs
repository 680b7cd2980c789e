using System.Text.Json.Nodes;

namespace Analytics.Cli.Tests.Verifying;

/// <summary>Neither result tells where things lay on the disk of whoever made it.</summary>
public sealed class LeakTests : IDisposable
{
    private static readonly string[] Hidden = ["home-of-jo-smith", "secret-club", "analytics-tests-"];

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    private string Season => Directory.CreateDirectory(folder.File("home-of-jo-smith/secret-club/season")).FullName;

    [Fact]
    public async Task Run_DemoSeasonInASecretPlace_TellsItsLastNameOnly()
    {
        foreach (var file in Directory.EnumerateFiles(DemoReport.Season, "*", SearchOption.AllDirectories).Where(f => !f.Contains("2026-0", StringComparison.Ordinal) || f.Contains("2026-06-08", StringComparison.Ordinal)))
        {
            var target = Path.Combine(Season, Path.GetRelativePath(DemoReport.Season, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }

        var (page, notebook) = await RunAsync(DemoReport.Notebook, 0);
        Assert.Contains("season = &quot;season&quot;", page, StringComparison.Ordinal);
        var settings = JsonNode.Parse(notebook)!["cells"]!.AsArray().Single(c => c!["id"]!.GetValue<string>() == "settings-for-this-run")!["source"]!.AsArray();
        Assert.Equal("string season = \"season\";", settings[1]!.GetValue<string>());
    }

    [Fact]
    public async Task Run_SeasonThatCannotBeRead_TellsItsLastNameOnly()
    {
        var (page, notebook) = await RunAsync(DemoReport.Notebook, 2);
        Assert.Contains("This report is not complete", page, StringComparison.Ordinal);
        Assert.Contains("\"ename\": \"SeasonException\"", notebook, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Run_CellsThatTellPaths_AreMadeNeutral()
    {
        var own = Directory.CreateDirectory(folder.File("home-of-jo-smith/notebooks")).FullName;
        var tiny = folder.Notebook(
            "string season = \".\";",
            "Console.WriteLine(season);\nConsole.Error.WriteLine(System.IO.Path.GetFullPath(season));\nSystem.IO.Path.GetFullPath(season).Display();\nHTML($\"<p>{Environment.CurrentDirectory}, {System.IO.Path.GetFullPath(season + \"/../other.csv\")}, {AppContext.BaseDirectory}, /home/jo-smith/x, C:\\\\Users\\\\jo-smith\\\\x</p>\").Display();",
            "throw new System.IO.FileNotFoundException($\"Could not find '{System.IO.Path.GetFullPath(season)}/testing/a.csv' or '{season}/b.csv'.\");");
        File.Move(tiny, Path.Combine(own, "tiny.ipynb"));
        var (page, notebook) = await RunAsync(Path.Combine(own, "tiny.ipynb"), 2);
        Assert.All([page, notebook], text =>
        {
            Assert.DoesNotContain("jo-smith", text, StringComparison.Ordinal);
            Assert.DoesNotContain(AppContext.BaseDirectory.TrimEnd('/', '\\'), text, StringComparison.Ordinal);
            Assert.Contains("(notebook folder)", text, StringComparison.Ordinal);
            Assert.Contains("(folder)/other.csv", text, StringComparison.Ordinal);
        });
        Assert.Contains("Could not find &#x27;season/testing/a.csv&#x27; or &#x27;season/b.csv&#x27;.", page, StringComparison.Ordinal);
        var cells = JsonNode.Parse(notebook)!["cells"]!.AsArray();
        Assert.Equal("Could not find 'season/testing/a.csv' or 'season/b.csv'.", cells[^1]!["outputs"]![0]!["evalue"]!.GetValue<string>());
    }

    private async Task<(string Page, string Notebook)> RunAsync(string notebook, int code)
    {
        var heard = await BuiltProgram.RunAsync("run", notebook, "--season", Season, "--out", folder.File("out"));
        Assert.True(heard.ExitCode == code, heard.Error);
        var stem = folder.File("out/" + Path.GetFileNameWithoutExtension(notebook));
        var results = (Page: await File.ReadAllTextAsync(stem + ".html"), Notebook: await File.ReadAllTextAsync(stem + ".ipynb"));
        Assert.All(Hidden, h => Assert.DoesNotContain(h, results.Page, StringComparison.Ordinal));
        Assert.All(Hidden, h => Assert.DoesNotContain(h, results.Notebook, StringComparison.Ordinal));
        return results;
    }
}
