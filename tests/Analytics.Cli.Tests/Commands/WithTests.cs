using Analytics.Cli.Tests.Architecture;
using Analytics.Cli.Tests.Promoting;

namespace Analytics.Cli.Tests.Commands;

/// <summary><c>run --with</c> and <c>verify --with</c> on the demo season, by the built program.</summary>
public sealed class WithTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("testing-day")]
    [InlineData("season-report")]
    public async Task RunAndVerify_ReportWithASketch_ShowsItMarkedAndAsksForTheFileAgain(string notebook)
    {
        var ideas = Write("ideas.csx", Ideas.ForSize);
        var made = await RunAsync(notebook, "--with", ideas);
        Assert.True(made.ExitCode == 0, made.Error);
        var page = await File.ReadAllTextAsync(Page(notebook));
        Assert.Contains("With 1 trial metric, not reviewed: Long jump for size.", page, StringComparison.Ordinal);
        Assert.Contains("Long jump for size (trial metric)", page, StringComparison.Ordinal);
        Assert.Contains("<dt>With the code of</dt><dd>ideas.csx, SHA-256 ", page, StringComparison.Ordinal);

        var missing = await VerifyAsync(notebook);
        Assert.Equal(1, missing.ExitCode);
        Assert.Contains("The report was made with the metrics on trial of 'ideas.csx'. Give that file again: --with ideas.csx", missing.Error, StringComparison.Ordinal);

        var same = await VerifyAsync(notebook, "--with", ideas);
        Assert.Equal((0, "same inputs, same numbers"), (same.ExitCode, same.LastLine));

        // The believed range sets how many decimals are shown, and the changed file is named first.
        Write("ideas.csx", Ideas.ForSize.Replace("(0.8, 2.2)", "(0.8, 30)", StringComparison.Ordinal));
        var changed = await VerifyAsync(notebook, "--with", ideas);
        Assert.Equal(2, changed.ExitCode);
        Assert.Contains("Inputs changed: ideas.csx.", changed.Out, StringComparison.Ordinal);
        Assert.StartsWith("inputs changed: ideas.csx; ", changed.LastLine, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Verify_FilesThatDoNotBelong_AreRefused()
    {
        string one = Write("one.csx", Ideas.ForSize), two = Write("two.csx", Ideas.ForSize.Replace("forSize", "other", StringComparison.Ordinal).Replace("long_jump_for_size", "other", StringComparison.Ordinal));
        Assert.Equal(0, (await RunAsync("testing-day", "--with", one, "--with", two)).ExitCode);
        Assert.Contains("in this order: one.csx, two.csx", (await VerifyAsync("testing-day", "--with", two, "--with", one)).Error, StringComparison.Ordinal);
        Assert.Contains("made with one.csx, two.csx only. Leave out --with three.csx", (await VerifyAsync("testing-day", "--with", one, "--with", two, "--with", Write("three.csx", Ideas.ForSize))).Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Run_NotebookWithTaggedCells_TakesThoseAlone()
    {
        var bench = Bench($"{Ideas.ForSize}\nforSize.Label");
        var made = await RunAsync("testing-day", "--with", bench);
        Assert.True(made.ExitCode == 0, made.Error);
        var page = await File.ReadAllTextAsync(Page("testing-day"));
        Assert.Contains(">bench.ipynb, cell 2</h3>", page, StringComparison.Ordinal);
        Assert.Contains("Long jump for size (trial metric)", page, StringComparison.Ordinal);
        Assert.DoesNotContain("notTaken", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Run_SketchThatDoesNotCompile_IsToldWithItsFileCellAndLine()
    {
        var heard = await RunAsync("testing-day", "--with", Bench("// first\nvar a = Sketch.Each<NoTrial>();"));
        Assert.Equal(2, heard.ExitCode);
        Assert.Contains("testing-day.ipynb stopped at bench.ipynb, cell 2, line 2: CompileError: CS0246", heard.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Run_WhatCannotTakeSketches_IsAnErrorOfUsage()
    {
        var ideas = Write("ideas.csx", Ideas.ForSize);
        var contact = await RunAsync("contact-review", "--with", ideas);
        Assert.Equal((1, true), (contact.ExitCode, contact.Error.Contains("'contact-review.ipynb' has no code cell tagged 'report'", StringComparison.Ordinal)));
        var each = await RunAsync("athlete-page", "--each", "athlete", "--with", ideas);
        Assert.Equal((1, true), (each.ExitCode, each.Error.Contains("Leave out --with or --each.", StringComparison.Ordinal)));
        var twice = await RunAsync("testing-day", "--with", ideas, "--with", ideas);
        Assert.Equal((1, true), (twice.ExitCode, twice.Error.Contains("--with is given 'ideas.csx' twice.", StringComparison.Ordinal)));
        var clash = await RunAsync("testing-day", "--with", Write("clash.csx", "var report = Sketch.Day(1);"));
        Assert.Equal((1, true), (clash.ExitCode, clash.Error.Contains("clash.csx, line 1: 'report' is the name of a variable of 'testing-day.ipynb'", StringComparison.Ordinal)));
        Assert.False(Directory.Exists(folder.File("out")));
    }

    [Fact]
    public async Task Help_Run_TellsOfSketches()
    {
        var help = await Heard.RunAsync("help", "run");
        Assert.Contains("--with", help.Out, StringComparison.Ordinal);
        Assert.Contains("tagged sketch", string.Join(' ', help.Out.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    private string Bench(string sketch) => Write("bench.ipynb", TempFolder.NotebookText(("", "var notTaken = 1;"), ("sketch", sketch)));

    private string Write(string name, string text)
    {
        File.WriteAllText(folder.File(name), text);
        return folder.File(name);
    }

    private string Page(string notebook) => folder.File($"out/{notebook}.html");

    private Task<Heard> RunAsync(string notebook, params string[] more) => BuiltProgram.RunAsync(["run", Notebook(notebook), "--out", folder.File("out"), .. more]);

    private Task<Heard> VerifyAsync(string notebook, params string[] more) => BuiltProgram.RunAsync(["verify", Page(notebook), "--season", Repository.Path("data-demo"), "--notebook", Notebook(notebook), .. more]);

    private static string Notebook(string name) => Repository.Path("notebooks", name + ".ipynb");
}
