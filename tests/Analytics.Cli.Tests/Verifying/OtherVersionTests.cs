using System.Globalization;

namespace Analytics.Cli.Tests.Verifying;

/// <summary>A small report of our own notebook, made with this version and said to be of another one.</summary>
public sealed class OtherVersionTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Verify_SettingsOfEveryKind_AreGivenAgain()
    {
        var notebook = folder.Notebook(
            "string season = \".\"; double share = 1.5; int n = 2; bool all = false; string word = \"a\"; DateOnly from = new DateOnly(2026, 1, 2); double? cap = null;",
            "HTML($\"<p>{share} {n} {all} {word} {from:O} {cap}</p>\")");
        await RunAsync(notebook, "--set", "share=2.25", "--set", "n=-3", "--set", "all=true", "--set", "word=b \"c\"; d", "--set", "from=2026-03-04", "--set", "cap=7");
        Assert.Contains("<p>2.25 -3 True b \"c\"; d 2026-03-04 7</p>", await File.ReadAllTextAsync(folder.File("out/tiny.html")), StringComparison.Ordinal);
        var heard = await VerifyAsync(notebook);
        Assert.Equal((0, "same inputs, same numbers"), (heard.ExitCode, heard.LastLine));
    }

    [Fact]
    public async Task Verify_AnotherPath_HasToBeGiven()
    {
        Directory.CreateDirectory(folder.File("norms"));
        var notebook = folder.Notebook("string season = \".\"; string norms = \"./a\";", "System.IO.Path.GetFileName(norms)");
        await RunAsync(notebook, "--set", "norms=./norms");
        var asked = await VerifyAsync(notebook);
        Assert.Equal(1, asked.ExitCode);
        Assert.Contains("--set norms=PATH", asked.Error, StringComparison.Ordinal);
        Assert.Equal(0, (await VerifyAsync(notebook, "--set", "norms=./norms")).ExitCode);
    }

    [Fact]
    public async Task Verify_NumberThatFollowsTheClock_Differs()
    {
        var notebook = folder.Notebook("string season = \".\";", "HTML($\"<table><caption>Chance</caption><tr><th>what</th><th>how much</th></tr><tr><th>it</th><td>{Environment.ProcessId}.5</td></tr></table>\")");
        await RunAsync(notebook);
        var heard = await VerifyAsync(notebook);
        Assert.Equal(2, heard.ExitCode);
        Assert.Contains("table 'Chance', row 'it', column 'how much': report says '", heard.Out, StringComparison.Ordinal);
        Assert.StartsWith("numbers differ: 1 place", heard.LastLine, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Verify_ManyDifferences_ShowsTwentyAndCountsTheRest()
    {
        var notebook = folder.Notebook("string season = \".\";", "HTML(\"<ul>\" + string.Concat(Enumerable.Range(1, 30).Select(i => $\"<li>{i}: {Environment.ProcessId}</li>\")) + \"</ul>\")");
        await RunAsync(notebook);
        var heard = await VerifyAsync(notebook);
        Assert.Equal(20, heard.Out.Split('\n').Count(l => l.Contains(": report says '", StringComparison.Ordinal)));
        Assert.Contains("  and 10 more places", heard.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Verify_FailedRun_FailsAgainInTheSameWay()
    {
        var notebook = folder.Notebook("string season = \".\";", "var zero = 0; var a = 1 / zero;");
        await RunAsync(notebook);
        var heard = await VerifyAsync(notebook);
        Assert.Contains("ended early (failed)", heard.Out, StringComparison.Ordinal);
        Assert.Equal((0, "same inputs, same numbers"), (heard.ExitCode, heard.LastLine));
    }

    [Fact]
    public async Task Verify_AnotherLibrary_IsSaidAndNoFailure()
    {
        var notebook = folder.Notebook("string season = \".\";", "HTML(\"<p>7 lb</p>\")");
        await RunAsync(notebook);
        var version = LibraryName.Text;
        var page = await File.ReadAllTextAsync(folder.File("out/tiny.html"));
        await File.WriteAllTextAsync(folder.File("out/tiny.html"), ForgedProof.Consistent(page, version, string.Create(CultureInfo.InvariantCulture, $"{version[..^1]}9")).Replace($"\"library\":\"{version}\"", $"\"library\":\"{version[..^1]}9\"", StringComparison.Ordinal));
        var heard = await VerifyAsync(notebook);
        Assert.Contains($"Library: the report was made with {version[..^1]}9, this is {version}.", heard.Out, StringComparison.Ordinal);
        Assert.StartsWith("same inputs, same numbers; drawings, styles", heard.LastLine, StringComparison.Ordinal);
        Assert.Equal(0, heard.ExitCode);
    }

    private async Task RunAsync(string notebook, params string[] more)
    {
        using var program = new BuiltProgram(["run", notebook, "--season", folder.Path, "--out", folder.File("out"), .. more]);
        await program.EndAsync();
    }

    private async Task<Heard> VerifyAsync(string notebook, params string[] more)
    {
        return await BuiltProgram.RunAsync(["verify", folder.File("out/tiny.html"), "--season", folder.Path, "--notebook", notebook, .. more]);
    }
}
