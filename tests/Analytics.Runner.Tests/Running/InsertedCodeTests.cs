using System.Text.Json.Nodes;
using Analytics.Runner.Files;
using Analytics.Runner.Kernels;
using Analytics.Runner.Proofs;
using Analytics.Runner.Running;
using Analytics.Runner.Sources;

namespace Analytics.Runner.Tests.Running;

/// <summary>Code of another file, put in for one run.</summary>
[Collection(Kernels.KernelTests.Name)]
public sealed class InsertedCodeTests : IDisposable
{
    private readonly TempFolder folder = new();

    private static TinyNotebook Notebook => new TinyNotebook().Code("var list = new List<string> { \"own\" };", "place").Code("string.Join(',', list)");

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task RunAsync_Inserted_RunsBehindTheTaggedCellAndStandsInAppendixFootAndProof()
    {
        var result = await Run(Notebook, "var more = \"<b>\";\n\"not shown\"");
        Assert.Equal((RunEnding.Complete, null), (result.Ending, result.Failure));
        var page = File.ReadAllText(result.PageFile);
        Assert.Contains("own,&lt;b&gt;", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<p>not shown", page, StringComparison.Ordinal);
        Assert.Contains("<h3 id=\"head-with-1\">ideas.csx</h3>", page, StringComparison.Ordinal);
        // Cells keep the numbers and links their author knows.
        Assert.Contains("<h3 id=\"head-part-2\">Cell 2</h3>", page, StringComparison.Ordinal);
        Assert.Contains($"<dt>With the code of</dt><dd>ideas.csx, SHA-256 {Digest}</dd>", page, StringComparison.Ordinal);
        var report = ReportFile.Parse(page, "tiny.html");
        Assert.Equal([new ProofInput("ideas.csx", Digest)], report.Proof.With);
        Assert.Empty(report.Changed);
        var run = JsonNode.Parse(File.ReadAllText(result.NotebookFile))!["metadata"]!["analytics_run"]!;
        Assert.Equal(Digest, run["with"]![0]!["sha256"]!.GetValue<string>());
    }

    [Fact]
    public async Task RunAsync_NothingInserted_TellsNothingOfIt()
    {
        var result = await Run(Notebook, null);
        var page = File.ReadAllText(result.PageFile);
        Assert.DoesNotContain("With the code of", page, StringComparison.Ordinal);
        Assert.DoesNotContain("\"with\"", page, StringComparison.Ordinal);
        Assert.DoesNotContain("\"with\"", File.ReadAllText(result.NotebookFile), StringComparison.Ordinal);
    }

    [Fact]
    public async Task RunAsync_SameTwice_GivesTheSamePageButForTheTime()
    {
        async Task<string[]> Parts() => [.. ReportFile.Read((await Run(Notebook, "var more = \"x\";")).PageFile).Parts.Select(p => p.Value)];
        Assert.Equal(await Parts(), await Parts());
    }

    [Fact]
    public async Task RunAsync_ExecutedNotebookRunAgain_LosesWhatWasPutIn()
    {
        var first = await Run(Notebook, "var more = \"x\";");
        Assert.Contains("injected-code", File.ReadAllText(first.NotebookFile), StringComparison.Ordinal);
        var again = await Runner().RunAsync(Request(first.NotebookFile, null) with { OutFolder = folder.File("again") }, new Silent());
        Assert.DoesNotContain("injected-code", File.ReadAllText(again.NotebookFile), StringComparison.Ordinal);
        Assert.DoesNotContain("own,x", File.ReadAllText(again.PageFile), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("var a = 1;\nvar more = \"x\" + unknown;", "ideas.csx", 2, "CS0103")]
    [InlineData("var more = \"x\";\n\nvar n = (new int[1])[5];", "ideas.csx", 3, "IndexOutOfRangeException")]
    [InlineData("var a = 1;", "list with ideas.csx", 1, "CS0103")]
    public async Task RunAsync_InsertedCodeFails_IsToldWithItsFileAndLine(string code, string place, int line, string says)
    {
        var result = await Run(Notebook, code);
        Assert.Equal(RunEnding.Failed, result.Ending);
        Assert.Equal((place, line), (result.FailedCell, result.Failure!.Line));
        Assert.Contains(says, result.Failure.Kind + result.Failure.Message, StringComparison.Ordinal);
        Assert.Contains($">{place}, line {line}</a>", File.ReadAllText(result.PageFile), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "'tiny.ipynb' has no code cell tagged 'place', so it is not known where to put the code of 'ideas.csx'. Tag the cell that declares 'list'")]
    [InlineData("var other = 1;", "The cell of 'tiny.ipynb' tagged 'place' declares no variable 'list'")]
    [InlineData("var list = 1; var more = 2;", "ideas.csx, line 2: 'more' is the name of a variable of 'tiny.ipynb'. Give it another name.")]
    public async Task RunAsync_NotebookThatCannotTakeIt_IsAnErrorOfUsage(string cell, string says)
    {
        var notebook = cell.Length == 0 ? new TinyNotebook().Code("var list = 1;") : new TinyNotebook().Code(cell, "place");
        var failure = await Assert.ThrowsAsync<NotebookException>(() => Run(notebook, "\nvar more = \"x\";"));
        Assert.Equal(Fault.Usage, failure.Kind);
        Assert.Contains(says, failure.Message, StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.File("out")));
    }

    [Fact]
    public async Task RunAsync_TwoTaggedCells_IsAnErrorOfUsage()
    {
        var failure = await Assert.ThrowsAsync<NotebookException>(() => Run(new TinyNotebook().Code("var list = 1;", "place").Code("var b = 1;", "place"), "var more = 1;"));
        Assert.Contains("has 2 cells tagged 'place'", failure.Message, StringComparison.Ordinal);
    }

    private static string Digest { get; } = new('a', 64);

    private static NotebookRunner Runner() => new(() => new InteractiveKernel(new HostAssemblies(AppContext.BaseDirectory), () => { }), new ResultFiles(), TimeProvider.System);

    private RunRequest Request(string notebook, string? code) => new()
    {
        Notebook = notebook,
        OutFolder = folder.File("out"),
        Library = "Kit 1.0",
        Inserted = code is null ? null : new()
        {
            AfterTag = "place",
            Variable = "list",
            Files = [new("ideas.csx", Digest, [new("ideas.csx", code)])],
            Parts = [new("ideas.csx", code), new("list with ideas.csx", "list.Add(more);")],
        },
    };

    private Task<RunResult> Run(TinyNotebook notebook, string? code) => Runner().RunAsync(Request(notebook.WriteTo(folder), code), new Silent());
}
