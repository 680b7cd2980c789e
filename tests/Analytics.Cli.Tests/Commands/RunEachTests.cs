using System.Diagnostics;
using Analytics.Season;

namespace Analytics.Cli.Tests.Commands;

/// <summary>The built program over the example season: three athletes with results and, as given here, one without.</summary>
public sealed class RunEachTests : IDisposable
{
    private const string Settings = "string season = \"season\"; string athlete = \"\"; string day = \"latest\"; string share = \"names\"; int n = 1;";

    private readonly TempFolder folder = new();

    public RunEachTests()
    {
        NewSeason.Write(folder.File("season"));
        File.AppendAllText(folder.File("season/athletes.csv"), "P004,Example Newcomer,QB,Backs,74,2004,2\n");
    }

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Run_EachAthlete_MakesAPageForEachWithResults()
    {
        var heard = await RunAsync("Console.Write($\"page of {athlete}.\");", "--each", "athlete");
        Assert.True(heard.ExitCode == 0, heard.Error);
        Assert.Equal(["tiny-P001.html", "tiny-P001.ipynb", "tiny-P002.html", "tiny-P002.ipynb", "tiny-P003.html", "tiny-P003.ipynb", "tiny-batch.json"], Results());
        Assert.Contains("page of P002.", File.ReadAllText(folder.File("out/tiny-P002.html")), StringComparison.Ordinal);
        Assert.Contains("3 made, 0 already there, 0 failed, 1 without results, in ", heard.Out, StringComparison.Ordinal);
        Assert.Contains("tiny.ipynb: P002 Example Linebacker (2 of 3)\n", heard.Error.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        Assert.Contains("No results: 1, no page: P004 Example Newcomer.", heard.Error, StringComparison.Ordinal);

        heard = await RunAsync("Console.Write($\"page of {athlete}.\");", "--each", "athlete");
        Assert.Equal((0, true), (heard.ExitCode, heard.Out.StartsWith("0 made, 3 already there, 0 failed", StringComparison.Ordinal)));

        // Another result of one athlete may move every page: a squad's spread is on all of them.
        File.AppendAllText(folder.File("season/testing/2026-01-19/body.csv"), "P001,262\n");
        heard = await RunAsync("Console.Write($\"page of {athlete}.\");", "--each", "athlete");
        Assert.Contains("3 made, 0 already there", heard.Out, StringComparison.Ordinal);
        heard = await RunAsync("Console.Write($\"page of {athlete}.\");", "--each", "athlete=P003", "--afresh");
        Assert.Contains("1 made, 0 already there, 0 failed, 0 without results", heard.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Run_EachWithOneThatFails_EndsWith2AndNamesHim()
    {
        var heard = await RunAsync("if (athlete == \"P002\")\n    throw new Exception(\"odd\");", "--each", "athlete");
        Assert.Equal(2, heard.ExitCode);
        Assert.Contains("P002 Example Linebacker stopped at cell 2, line 2: Exception: odd", heard.Error, StringComparison.Ordinal);
        Assert.Contains("2 made, 0 already there, 1 failed, 1 without results", heard.Out, StringComparison.Ordinal);
        Assert.Contains("This report is not complete", File.ReadAllText(folder.File("out/tiny-P002.html")), StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", heard.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Run_EachWithABusyOne_EndsWith3AndTheSameCommandGoesOn()
    {
        const string Code = "while (athlete == \"P001\") { }";
        var heard = await RunAsync(Code, "--each", "athlete", "--timeout", "15");
        Assert.Equal(3, heard.ExitCode);
        Assert.Contains("P001 Example Lineman stopped at cell ", heard.Error, StringComparison.Ordinal);
        Assert.Contains("Left: 2: P002 Example Linebacker, P003 Example Receiver. The same command goes on with them.", heard.Error, StringComparison.Ordinal);

        heard = await RunAsync(Code, "--each", "athlete", "--timeout", "15");
        Assert.Equal(3, heard.ExitCode);
        Assert.Contains("2 made, 0 already there, 1 failed", heard.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("Left:", heard.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Run_EachInterrupted_EndsWith130AndTellsHowToGoOn()
    {
        if (OperatingSystem.IsWindows())
            return;
        var notebook = folder.Notebook(Settings, "if (athlete == \"P002\") { System.IO.File.WriteAllText(\"started\", \"\"); System.Threading.Thread.Sleep(3000); }");
        using var program = new BuiltProgram("run", notebook, "--each", "athlete", "--out", folder.File("out"));
        while (!File.Exists(folder.File("started")))
            await Task.Delay(20);
        using (var kill = Process.Start("kill", ["-INT", $"{program.Id}"]))
            await kill.WaitForExitAsync();
        var heard = await program.EndAsync();
        Assert.Equal(130, heard.ExitCode);
        Assert.Contains("Left: 1: P003 Example Receiver. The same command goes on with them.", heard.Error, StringComparison.Ordinal);
        Assert.Equal(["tiny-P001.html", "tiny-P001.ipynb", "tiny-P002.html", "tiny-P002.ipynb", "tiny-batch.json"], Results());
    }

    [Theory]
    [InlineData("'athlete' is given both to --each and to --set", "--each", "athlete", "--set", "athlete=P001")]
    [InlineData("There is no list of values for 'day'. --each takes: athlete", "--each", "day")]
    [InlineData("--each takes the name of a setting", "--each", "=P001")]
    [InlineData("--each takes the name of a setting", "--each", "athlete=")]
    [InlineData("there is no 'P009', 'p001'. There are: P001, P002, P003, P004.", "--each", "athlete=P001,P009,p001")]
    [InlineData("--open opens one report", "--each", "athlete", "--open")]
    [InlineData("--afresh goes with --each", "--afresh")]
    [InlineData("has no setting 'nn'", "--each", "athlete", "--set", "nn=1")]
    public async Task Run_EachThatCannotBeMeant_IsAUsageError(string words, params string[] args)
    {
        var heard = await Heard.RunAsync(["run", folder.Notebook(Settings, "1"), "--out", folder.File("out"), .. args]);
        Assert.Equal(1, heard.ExitCode);
        Assert.Contains(words, heard.Error, StringComparison.Ordinal);
        Assert.Empty(Results());
    }

    [Fact]
    public async Task Run_EachOfANotebookWithoutThatSetting_ListsWhatItHas()
    {
        var heard = await Heard.RunAsync("run", folder.Notebook("string season = \"season\";", "1"), "--out", folder.File("out"), "--each", "athlete");
        Assert.Equal(1, heard.ExitCode);
        Assert.Contains("has no setting 'athlete'", heard.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Run_EachWithoutAnyResult_EndsWith2InWords()
    {
        var heard = await Heard.RunAsync("run", folder.Notebook(Settings, "1"), "--out", folder.File("out"), "--each", "athlete=P004");
        Assert.Equal(2, heard.ExitCode);
        Assert.Contains("so there is no page to make", heard.Error, StringComparison.Ordinal);
    }

    private async Task<Heard> RunAsync(string code, params string[] more)
    {
        return await BuiltProgram.RunAsync(["run", folder.Notebook(Settings, code), "--out", folder.File("out"), .. more]);
    }

    private IEnumerable<string?> Results()
        => Directory.Exists(folder.File("out")) ? Directory.GetFileSystemEntries(folder.File("out")).Select(Path.GetFileName).Order(StringComparer.Ordinal) : [];
}
