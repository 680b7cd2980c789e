using Analytics.Runner.Batches;

namespace Analytics.Runner.Tests.Batches;

[Collection(Kernels.KernelTests.Name)]
public sealed class BatchRunnerTests : IDisposable
{
    private readonly Batch batch = new();

    public void Dispose() => batch.Dispose();

    [Fact]
    public async Task RunAsync_EachPage_IsWhatARunAloneWrites()
    {
        // Variables of every kind change in every run: none of it may be seen by the next.
        Write(new TinyNotebook().Markdown("# Page").Code("var seen = new List<string>(); int runs = 0;").Settings("string who = \"nobody\"; // whose page\nint n = 2;")
            .Code("seen.Add(who); runs++; n++;\nrecord Note(string Text);\nstring Upper(string text) => text.ToUpperInvariant();")
            .Code("Console.WriteLine($\"{string.Join(',', seen)} {runs} {n}\"); who = who + \"!\";\nMicrosoft.DotNet.Interactive.Formatting.Formatter.Register<Note>((v, w) => w.Write(v.Text + who), \"text/html\");")
            .Code("display(new Note(Upper(who)));\nnew { who, late = DateTime.UnixEpoch }"));
        var request = batch.Request("ann", "\"bob\"\\", "cy");
        request = request with { Run = request.Run with { Settings = [new("n", "7")] } };
        var result = await Batch.RunAsync(request);
        Assert.Equal((BatchEnding.Complete, 3, 0, 0), (result.Ending, result.Made, result.AlreadyThere, result.Failed.Count));
        string[] stems = ["tiny-ann", "tiny-bob-c294d73b", "tiny-cy"];
        for (var i = 0; i < stems.Length; i++)
        {
            var (page, notebook) = await batch.AloneAsync(request, request.Items[i].Value);
            Assert.Equal(page, Batch.Steady(batch.Read(stems[i] + ".html")));
            Assert.Equal(notebook, Batch.Steady(batch.Read(stems[i] + ".ipynb")));
        }

        Assert.Contains("ann 1 8", batch.Read("tiny-ann.html"), StringComparison.Ordinal);
        Assert.Contains("cy 1 8", batch.Read("tiny-cy.html"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task RunAsync_CellsWithStaticState_AreCompiledForEachPage()
    {
        Write(new TinyNotebook().Settings("string who = \"\";").Code("class Memory { public static int Runs; }").Code("Console.Write($\"{who} {++Memory.Runs}.\");"));
        await Batch.RunAsync(batch.Request("a", "b"));
        Assert.Contains("b 1.", batch.Read("tiny-b.html"), StringComparison.Ordinal);
        Assert.Equal((await batch.AloneAsync(batch.Request("b"), "b")).Page, Batch.Steady(batch.Read("tiny-b.html")));
    }

    [Fact]
    public async Task RunAsync_Progress_TellsEachPageOnce()
    {
        Simple();
        var heard = new BatchHeard();
        await Batch.RunAsync(batch.Request("a", "b"), heard);
        Assert.Equal(["2 to make, 0 there", "a 1/2", "b 2/2", "finishing"], heard.Lines);
        Assert.Equal(["tiny-a.html", "tiny-a.ipynb", "tiny-b.html", "tiny-b.ipynb", "tiny-batch.json"], batch.Files());
    }

    [Fact]
    public async Task RunAsync_OneFails_TheOthersAreMadeAndItIsNamed()
    {
        Write(new TinyNotebook().Settings("string who = \"\";").Code("Console.Write(\"before\");").Code("if (who == \"b\")\n    throw new InvalidOperationException(\"not b\");").Code("Console.Write(\"after\");"));
        var request = batch.Request("a", "b", "c");
        var result = await Batch.RunAsync(request);
        Assert.Equal((BatchEnding.Complete, 2), (result.Ending, result.Made));
        var failed = Assert.Single(result.Failed);
        Assert.Equal(("b", "cell 3", 2, "not b", batch.File("tiny-b.html")), (failed.Item.Value, failed.Cell, failed.Failure.Line, failed.Failure.Message, failed.Page));
        Assert.Equal((await batch.AloneAsync(request, "b")).Page, Batch.Steady(batch.Read("tiny-b.html")));
        Assert.Contains("This report is not complete", batch.Read("tiny-b.html"), StringComparison.Ordinal);
        Assert.Equal((await batch.AloneAsync(request, "c")).Page, Batch.Steady(batch.Read("tiny-c.html")));
    }

    [Fact]
    public async Task RunAsync_FirstFails_TheOthersAreWhatARunAloneWrites()
    {
        Write(new TinyNotebook().Settings("string who = \"\";").Code("if (who == \"a\") throw new Exception(\"no\");").Code("var x = who; x"));
        var request = batch.Request("a", "b");
        var result = await Batch.RunAsync(request);
        Assert.Equal("a", Assert.Single(result.Failed).Item.Value);
        Assert.Equal((await batch.AloneAsync(request, "b")).Page, Batch.Steady(batch.Read("tiny-b.html")));
    }

    [Fact]
    public async Task RunAsync_CellThatDoesNotCompile_FailsEveryPageWithItsMessage()
    {
        Write(new TinyNotebook().Settings("string who = \"\";").Code("var x = nothing;"));
        var result = await Batch.RunAsync(batch.Request("a", "b"));
        Assert.Equal(["CompileError", "CompileError"], result.Failed.Select(f => f.Failure.Kind));
        Assert.Equal(0, result.Made);
    }

    [Fact]
    public async Task RunAsync_BusyCell_EndsTheBatchWithWhatThereIs()
    {
        Write(new TinyNotebook().Settings("string who = \"\";").Code("Console.Write(\"so far\"); var end = DateTime.UtcNow.AddSeconds(who == \"b\" ? 25 : 0); while (DateTime.UtcNow < end) { }"));
        var request = batch.Request("a", "b", "c");
        var result = await Batch.RunAsync(request with { Run = request.Run with { Timeout = TimeSpan.FromSeconds(8) } });
        Assert.Equal((BatchEnding.TimedOut, 1), (result.Ending, result.Made));
        Assert.Equal("TimeOut", Assert.Single(result.Failed).Failure.Kind);
        Assert.Equal(["c"], result.Left.Select(i => i.Value));
        Assert.Contains("so far", batch.Read("tiny-b.html"), StringComparison.Ordinal);

        // The one that would block the others again is tried last.
        var heard = new BatchHeard();
        var next = await Batch.RunAsync(request, heard);
        Assert.Equal(["2 to make, 1 there", "c 1/2", "b 2/2", "finishing"], heard.Lines);
        Assert.Equal((BatchEnding.Complete, 2, 1), (next.Ending, next.Made, next.AlreadyThere));
    }

    [Fact]
    public async Task RunAsync_Stopped_FinishesThePageItIsAtAndTellsWhatIsLeft()
    {
        Simple();
        using var stop = new CancellationTokenSource();
        var result = await Batch.RunAsync(batch.Request("a", "b", "c"), new BatchHeard { OnStart = index => { if (index == 2) stop.Cancel(); } }, stop.Token);
        Assert.Equal((BatchEnding.Stopped, 2), (result.Ending, result.Made));
        Assert.Equal(["c"], result.Left.Select(i => i.Value));
        Assert.Equal(["tiny-a.html", "tiny-a.ipynb", "tiny-b.html", "tiny-b.ipynb", "tiny-batch.json"], batch.Files());
    }

    [Theory]
    [InlineData("int who = 1;", "only a string setting")]
    [InlineData("string other = \"\";", "has no setting 'who'")]
    public async Task RunAsync_SettingThatCannotVary_IsAUsageError(string settings, string words)
    {
        Write(new TinyNotebook().Settings(settings).Code("1"));
        var e = await Assert.ThrowsAsync<NotebookException>(() => Batch.RunAsync(batch.Request("1")));
        Assert.Equal(Fault.Usage, e.Kind);
        Assert.Contains(words, e.Message, StringComparison.Ordinal);
        Assert.False(Directory.Exists(batch.Out));
    }

    [Fact]
    public async Task RunAsync_NotebookChangedMeanwhile_StopsInWords()
    {
        Simple();
        var change = new BatchHeard { OnStart = index => { if (index == 2) Write(new TinyNotebook().Settings("string who = \"\";").Code("2")); } };
        var e = await Assert.ThrowsAsync<NotebookException>(() => Batch.RunAsync(batch.Request("a", "b"), change));
        Assert.Contains("was changed", e.Message, StringComparison.Ordinal);
    }

    private void Simple() => Write(new TinyNotebook().Settings("string who = \"\";").Code("who"));

    private void Write(TinyNotebook notebook) => notebook.WriteTo(batch.Folder);
}
