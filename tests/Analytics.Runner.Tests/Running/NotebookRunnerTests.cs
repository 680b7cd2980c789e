using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Analytics.Runner.Files;
using Analytics.Runner.Kernels;
using Analytics.Runner.Running;

namespace Analytics.Runner.Tests.Running;

[Collection(Kernels.KernelTests.Name)]
public sealed class NotebookRunnerTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task RunAsync_GoodNotebook_WritesPageAndExecutedNotebook()
    {
        var notebook = new TinyNotebook().Markdown("# Day").Settings("double share = 7; // of one").Code("").Code("Console.WriteLine(share / 2);\n\"last\"");
        var result = await Run(notebook, settings: [new("share", "3")]);
        Assert.Equal(RunEnding.Complete, result.Ending);
        Assert.Null(result.Failure);
        Assert.Contains("1.5", File.ReadAllText(result.PageFile), StringComparison.Ordinal);

        var cells = JsonNode.Parse(File.ReadAllText(result.NotebookFile))!["cells"]!.AsArray();
        Assert.Equal([null, 1, 2, null, 3], cells.Select(c => c!["execution_count"]?.GetValue<int>()));
        var outputs = cells[4]!["outputs"]!.AsArray();
        Assert.Equal("1.5\n", outputs[0]!["text"]![0]!.GetValue<string>());
        Assert.Equal("last", outputs[1]!["data"]!["text/plain"]![0]!.GetValue<string>());
        Assert.Equal(3, outputs[1]!["execution_count"]!.GetValue<int>());
    }

    [Fact]
    public async Task RunAsync_CellThatShowsATable_WritesItBesideTheReport()
    {
        var result = await Run(new TinyNotebook().Code("\"a,b\\n1,2\\n\".DisplayAs(\"text/csv\");").Code("1"));
        Assert.Equal(Path.ChangeExtension(result.PageFile, ".csv"), Assert.Single(result.TableFiles));
        // The mark by which spreadsheets know UTF-8, then the text.
        Assert.Equal([0xEF, 0xBB, 0xBF, .. "a,b\n1,2\n"u8], File.ReadAllBytes(result.TableFiles[0]));
    }

    [Fact]
    public async Task RunAsync_Provenance_StandsInMetadataWithoutAbsolutePaths()
    {
        var notebook = new TinyNotebook().Settings($"string season = \"{folder.Path.Replace('\\', '/')}/spring\"; int n = 2;").Code("1");
        var result = await Run(notebook);
        var run = JsonNode.Parse(File.ReadAllText(result.NotebookFile))!["metadata"]!["analytics_run"]!;
        Assert.Equal("\"spring\"", run["settings"]!["season"]!.GetValue<string>());
        Assert.Equal("2", run["settings"]!["n"]!.GetValue<string>());
        Assert.Equal("Kit 1.0", run["library"]!.GetValue<string>());
        Assert.Equal("complete", run["ending"]!.GetValue<string>());
        Assert.Equal(Sha256(folder.File("tiny.ipynb")), run["notebook_sha256"]!.GetValue<string>());
        Assert.Contains("season = &quot;spring&quot;", File.ReadAllText(result.PageFile), StringComparison.Ordinal);
    }

    [Fact]
    public async Task RunAsync_FailingCell_StopsThereAndStillWritesBoth()
    {
        var notebook = new TinyNotebook().Code("Console.Write(\"before\");").Code("var a = new int[1];\na[3] = 1;").Code("Console.Write(\"after\");");
        var result = await Run(notebook);
        Assert.Equal(RunEnding.Failed, result.Ending);
        Assert.Equal("cell 2", result.FailedCell);
        Assert.Equal("IndexOutOfRangeException", result.Failure!.Kind);
        Assert.Equal(2, result.Failure.Line);
        var page = File.ReadAllText(result.PageFile);
        Assert.Contains("stopped at <a href=\"#code-part-2\">cell 2, line 2</a>", page, StringComparison.Ordinal);
        Assert.Contains("before", page, StringComparison.Ordinal);
        var cells = JsonNode.Parse(File.ReadAllText(result.NotebookFile))!["cells"]!.AsArray();
        Assert.Equal("IndexOutOfRangeException", cells[1]!["outputs"]![0]!["ename"]!.GetValue<string>());
        Assert.Null(cells[2]!["execution_count"]);
        Assert.Empty(cells[2]!["outputs"]!.AsArray());
    }

    [Fact]
    public async Task RunAsync_FailureInInjectedCellOrAfter_CountsCellsAsTheAuthorDoes()
    {
        var notebook = new TinyNotebook().Settings("int n = 1;").Code("throw new Exception($\"n is {n}\");");
        var result = await Run(notebook, settings: [new("n", "5")]);
        Assert.Equal("cell 2", result.FailedCell);
        Assert.Equal("n is 5", result.Failure!.Message);
    }

    [Fact]
    public async Task RunAsync_BusyCell_TimesOutAndKeepsWhatItHadSaid()
    {
        var notebook = new TinyNotebook().Code("var end = DateTime.UtcNow.AddSeconds(20);\nConsole.Write(\"so far\");\nwhile (DateTime.UtcNow < end) { }");
        var result = await Run(notebook, timeout: TimeSpan.FromSeconds(6));
        Assert.Equal(RunEnding.TimedOut, result.Ending);
        Assert.Equal("cell 1", result.FailedCell);
        Assert.Equal("TimeOut", result.Failure!.Kind);
        Assert.Contains("6 s", result.Failure.Message, StringComparison.Ordinal);
        Assert.Contains("so far", File.ReadAllText(result.PageFile), StringComparison.Ordinal);
    }

    [Fact]
    public async Task RunAsync_Stopped_WritesNothing()
    {
        var notebook = new TinyNotebook().Code("1").Code("2").WriteTo(folder);
        using var stop = new CancellationTokenSource();
        var progress = new Heard { OnCell = index => { if (index == 2) stop.Cancel(); } };
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => Runner().RunAsync(Request(notebook), progress, stop.Token));
        Assert.Empty(Directory.GetFileSystemEntries(folder.File("out")));
    }

    [Fact]
    public async Task RunAsync_NotebooksPlace_IsItsFolderWithInvariantCulture()
    {
        File.WriteAllText(folder.File("near.txt"), "found");
        var before = Environment.CurrentDirectory;
        var notebook = new TinyNotebook().Code("Console.Write(System.IO.File.ReadAllText(\"near.txt\") + \" \" + System.Globalization.CultureInfo.CurrentCulture.Name + $\"{0.5:0.0}\");");
        var result = await Run(notebook);
        Assert.Null(result.Failure);
        Assert.Contains("found 0.5", File.ReadAllText(result.PageFile), StringComparison.Ordinal);
        Assert.Equal(before, Environment.CurrentDirectory);
    }

    [Fact]
    public async Task RunAsync_Twice_GivesTheSameBytesButForTheMarkedBlock()
    {
        var notebook = new TinyNotebook().Markdown("# T").Code("new[] { 1.5, 2 }").Code("display(new { a = 1, b = \"x\" });").Code("new Dictionary<string, int> { [\"k\"] = 1 }");
        var first = await Run(notebook);
        var (page, executed) = (File.ReadAllText(first.PageFile), File.ReadAllText(first.NotebookFile));
        var second = await Run(notebook);
        Assert.Equal(Steady(page), Steady(File.ReadAllText(second.PageFile)));
        Assert.Equal(Steady(executed), Steady(File.ReadAllText(second.NotebookFile)));
    }

    [Fact]
    public async Task MakeAsync_HandsOverWhatRunAsyncWrites_AndWritesNothing()
    {
        var notebook = new TinyNotebook().Markdown("# T").Code("1.5").Code("throw new Exception(\"no\");");
        var written = await Run(notebook);
        var (page, executed) = (File.ReadAllText(written.PageFile), File.ReadAllText(written.NotebookFile));
        Directory.Delete(folder.File("out"), recursive: true);
        var made = await Runner().MakeAsync(Request(folder.File("tiny.ipynb")), new Heard());
        Assert.False(Directory.Exists(folder.File("out")));
        Assert.Equal((written.Ending, written.FailedCell, written.Failure!.Message), (made.Ending, made.FailedCell, made.Failure!.Message));
        Assert.Equal(Steady(page), Steady(System.Text.Encoding.UTF8.GetString(made.Content.Page)));
        Assert.Equal(Steady(executed), Steady(System.Text.Encoding.UTF8.GetString(made.Content.Notebook)));
    }

    [Fact]
    public async Task RunAsync_Progress_HearsEveryCodeCellThatHoldsCode()
    {
        var heard = new Heard();
        await Runner().RunAsync(Request(new TinyNotebook().Markdown("x").Code(" ").Code("1").Code("2").WriteTo(folder)), heard);
        Assert.Equal(["cell 2 1/2", "cell 3 2/2", "writing"], heard.Lines);
    }

    [Fact]
    public async Task RunAsync_MissingNotebook_NamesThoseThatAreThere()
    {
        new TinyNotebook().WriteTo(folder, "season-report.ipynb");
        var e = await Assert.ThrowsAsync<NotebookException>(() => Runner().RunAsync(Request(folder.File("seasonreport.ipynb")), new Heard()));
        Assert.Equal(Fault.Usage, e.Kind);
        Assert.Contains("season-report.ipynb", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task RunAsync_BinaryFile_IsNoNotebook()
    {
        File.WriteAllBytes(folder.File("b.ipynb"), [0xff, 0xfe, 0x00]);
        var e = await Assert.ThrowsAsync<NotebookException>(() => Runner().RunAsync(Request(folder.File("b.ipynb")), new Heard()));
        Assert.Equal(Fault.Data, e.Kind);
        Assert.Contains("not UTF-8", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task RunAsync_OutIsTheNotebooksOwnFolder_RefusesToOverwriteIt()
    {
        var notebook = new TinyNotebook().Code("1").WriteTo(folder);
        var before = File.ReadAllBytes(notebook);
        var e = await Assert.ThrowsAsync<NotebookException>(() => Runner().RunAsync(Request(notebook) with { OutFolder = folder.Path }, new Heard()));
        Assert.Equal(Fault.Usage, e.Kind);
        Assert.Equal(before, File.ReadAllBytes(notebook));
    }

    private static NotebookRunner Runner()
        => new(() => new InteractiveKernel(new HostAssemblies(AppContext.BaseDirectory), () => { }), new ResultFiles(), TimeProvider.System);

    private static string Steady(string text)
        => Regex.Replace(Regex.Replace(text, "<!--varies-->.*?<!--/varies-->", "", RegexOptions.Singleline), "\"varies\": \\{.*?\\}", "", RegexOptions.Singleline);

    private static string Sha256(string path)
        => Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(path)));

    private RunRequest Request(string notebook) => new() { Notebook = notebook, OutFolder = folder.File("out"), Library = "Kit 1.0" };

    private Task<RunResult> Run(TinyNotebook notebook, KeyValuePair<string, string>[]? settings = null, TimeSpan? timeout = null)
        => Runner().RunAsync(Request(notebook.WriteTo(folder)) with { Settings = settings ?? [], Timeout = timeout ?? TimeSpan.FromMinutes(2) }, new Heard());

    private sealed class Heard : IRunProgress
    {
        public List<string> Lines { get; } = [];

        public Action<int> OnCell { get; init; } = _ => { };

        public void CellStarts(string label, int index, int count)
        {
            Lines.Add($"{label} {index}/{count}");
            OnCell(index);
        }

        public void Writing() => Lines.Add("writing");
    }
}
