using System.Diagnostics;

namespace Analytics.Cli.Tests.Commands;

/// <summary>The built program, each time in a process of its own.</summary>
public sealed class RunCommandTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Run_GoodNotebook_SaysWhereTheResultsAre()
    {
        var heard = await RunAsync(folder.Notebook("string season = \".\"; string day = \"\"; double share = 1;", "Console.WriteLine($\"{day} {share / 4} {season}\");"),
            "--day", "2026-06-08", "--season", folder.Path, "--set", "share=3");
        Assert.Equal((0, "0.75"), (heard.ExitCode, File.ReadAllText(folder.File("out/tiny.html")).Contains("2026-06-08 0.75 .", StringComparison.Ordinal) ? "0.75" : heard.Error));
        Assert.Contains("tiny.html", heard.Out, StringComparison.Ordinal);
        Assert.Contains("tiny.ipynb: cell 2 (3 of 3)", heard.Error, StringComparison.Ordinal);
        Assert.Equal(["tiny.html", "tiny.ipynb"], Results());
    }

    [Fact]
    public async Task Run_NotebookWithoutThatSetting_IsAUsageErrorThatListsTheKnownOnes()
    {
        var heard = await RunAsync(folder.Notebook("int players = 1;"), "--day", "2026-06-08");
        Assert.Equal(1, heard.ExitCode);
        Assert.Contains("has no setting 'day'", heard.Error, StringComparison.Ordinal);
        Assert.Contains("players (int), now 1", heard.Error, StringComparison.Ordinal);
        Assert.Empty(Results());
    }

    [Fact]
    public async Task Run_FailingCell_EndsWith2AndNamesFileCellLineAndMessage()
    {
        var heard = await RunAsync(folder.Notebook("int n = 0;", "var a = 1;\nvar b = a / n;"));
        Assert.Equal(2, heard.ExitCode);
        Assert.Contains("tiny.ipynb stopped at cell 2, line 2: DivideByZeroException: Attempted to divide by zero.", heard.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", heard.Error, StringComparison.Ordinal);
        Assert.Equal(["tiny.html", "tiny.ipynb"], Results());
    }

    [Fact]
    public async Task Run_DamagedNotebook_EndsWith2()
    {
        File.WriteAllText(folder.File("tiny.ipynb"), "{\"cells\":");
        var heard = await RunAsync(folder.File("tiny.ipynb"));
        Assert.Equal(2, heard.ExitCode);
        Assert.Contains("'tiny.ipynb' is not valid JSON", heard.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Run_EndlessCell_EndsWith3AndWritesWhatThereIs()
    {
        var notebook = folder.Notebook("Console.WriteLine(\"so far\");", "while (true) { }");
        var heard = await RunAsync(notebook, "--timeout", "12");
        // On a busy machine the first cell alone may take that long; the limit is then the wrong one, not the program.
        for (var limit = 48; limit <= 192 && !heard.Error.Contains("stopped at cell 2", StringComparison.Ordinal); limit *= 4)
            heard = await RunAsync(notebook, "--timeout", $"{limit}");
        Assert.Equal(3, heard.ExitCode);
        Assert.Contains("stopped at cell 2: TimeOut", heard.Error, StringComparison.Ordinal);
        Assert.Contains("so far", File.ReadAllText(folder.File("out/tiny.html")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Run_CellThatEndsTheProcess_EndsWith2AndWritesWhatThereIs()
    {
        var heard = await RunAsync(folder.Notebook("Console.WriteLine(\"so far\");", "Environment.Exit(0);"));
        Assert.Equal(2, heard.ExitCode);
        var page = File.ReadAllText(folder.File("out/tiny.html"));
        Assert.Contains("so far", page, StringComparison.Ordinal);
        Assert.Contains("The cell ended the whole process.", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Run_Interrupted_WritesNothing()
    {
        if (OperatingSystem.IsWindows())
            return;
        using var program = new BuiltProgram("run", folder.Notebook("System.IO.File.WriteAllText(\"started\", \"\");", "while (true) { }"), "--out", folder.File("out"));
        while (!File.Exists(folder.File("started")))
            await Task.Delay(50);
        using (var kill = Process.Start("kill", ["-INT", $"{program.Id}"]))
            await kill.WaitForExitAsync();
        var heard = await program.EndAsync();
        Assert.Equal(130, heard.ExitCode);
        Assert.Contains("Nothing was written", heard.Error, StringComparison.Ordinal);
        Assert.Empty(Results());
    }

    [Fact]
    public async Task Run_OutThatIsAFile_EndsWith2BeforeAnyCellRuns()
    {
        File.WriteAllText(folder.File("out"), "");
        var heard = await RunAsync(folder.Notebook("System.IO.File.WriteAllText(\"started\", \"\");"));
        Assert.Equal(2, heard.ExitCode);
        Assert.Contains("cannot be written", heard.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(folder.File("started")));
    }

    private async Task<Heard> RunAsync(string notebook, params string[] more)
    {
        return await BuiltProgram.RunAsync(["run", notebook, "--out", folder.File("out"), .. more]);
    }

    private IEnumerable<string?> Results()
        => Directory.Exists(folder.File("out")) ? Directory.GetFileSystemEntries(folder.File("out")).Select(Path.GetFileName).Order(StringComparer.Ordinal) : [];
}
