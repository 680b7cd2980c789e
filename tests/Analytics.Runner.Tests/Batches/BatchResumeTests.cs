using Analytics.Runner.Batches;

namespace Analytics.Runner.Tests.Batches;

[Collection(Kernels.KernelTests.Name)]
public sealed class BatchResumeTests : IDisposable
{
    private readonly Batch batch = new();

    public BatchResumeTests() => Write("who");

    public void Dispose() => batch.Dispose();

    [Fact]
    public async Task RunAsync_SameThingsAgain_LeavesEveryFileAsItIs()
    {
        var request = batch.Request("a", "b");
        await Batch.RunAsync(request);
        var before = Snapshot();
        var again = await Batch.RunAsync(request);
        Assert.Equal((0, 2), (again.Made, again.AlreadyThere));
        Assert.Equal(before, Snapshot());
    }

    [Theory]
    [InlineData("tiny-a.html", "</main>", "</main> ")]
    [InlineData("tiny-a.ipynb", "\"who\"", "\"she\"")]
    public async Task RunAsync_PageThatIsNotAsWritten_IsMadeAnew(string file, string was, string becomes)
    {
        var request = batch.Request("a", "b");
        await Batch.RunAsync(request);
        var text = batch.Read(file);
        Assert.Contains(was, text, StringComparison.Ordinal);
        File.WriteAllText(batch.File(file), text.Replace(was, becomes, StringComparison.Ordinal));
        var again = await Batch.RunAsync(request);
        Assert.Equal((1, 1), (again.Made, again.AlreadyThere));
        Assert.Equal(Batch.Steady(text), Batch.Steady(batch.Read(file)));
    }

    [Fact]
    public async Task RunAsync_HalfOrMissingPage_IsMadeAnew()
    {
        var request = batch.Request("a", "b", "c");
        await Batch.RunAsync(request);
        File.WriteAllBytes(batch.File("tiny-a.html"), File.ReadAllBytes(batch.File("tiny-a.html"))[..^20]);
        File.Delete(batch.File("tiny-b.ipynb"));
        Assert.Equal((2, 1), Count(await Batch.RunAsync(request)));
        Assert.Equal((0, 3), Count(await Batch.RunAsync(request)));
    }

    [Fact]
    public async Task RunAsync_MadeFromOtherThings_IsMadeAnew()
    {
        var request = batch.Request("a") with { MadeFrom = Digest("1") };
        await Batch.RunAsync(request);
        Assert.Equal((0, 1), Count(await Batch.RunAsync(request)));
        request = request with { MadeFrom = Digest("2") };
        Assert.Equal((1, 0), Count(await Batch.RunAsync(request)));
        request = request with { Run = request.Run with { Library = "Kit 1.1" } };
        Assert.Equal((1, 0), Count(await Batch.RunAsync(request)));
        request = request with { Run = request.Run with { Settings = [new("n", "3")] } };
        Assert.Equal((1, 0), Count(await Batch.RunAsync(request)));
        Write("who + n");
        Assert.Equal((1, 0), Count(await Batch.RunAsync(request)));
        Assert.Equal((0, 1), Count(await Batch.RunAsync(request)));
        Assert.Equal((1, 0), Count(await Batch.RunAsync(request with { Afresh = true })));
    }

    [Fact]
    public async Task RunAsync_FolderElsewhere_IsTheSameThing()
    {
        var request = batch.Request("a");
        await Batch.RunAsync(request with { Run = request.Run with { Settings = [new("season", "../here/spring")] } });
        Assert.Equal((0, 1), Count(await Batch.RunAsync(request with { Run = request.Run with { Settings = [new("season", "/there/spring")] } })));
    }

    [Fact]
    public async Task RunAsync_FailedPage_IsTriedAgain()
    {
        Write("System.IO.File.Exists(\"mended\") ? who : throw new Exception(\"not yet\")");
        Assert.Equal((0, 0), Count(await Batch.RunAsync(batch.Request("a"))));
        File.WriteAllText(batch.Folder.File("mended"), "");
        Assert.Equal((1, 0), Count(await Batch.RunAsync(batch.Request("a"))));
    }

    [Fact]
    public async Task RunAsync_SomeValuesOnly_LeavesTheOthersAndTheirNotes()
    {
        var all = batch.Request("a", "b", "c");
        var some = all with { Items = [all.Items[1]] };
        Assert.Equal((1, 0), Count(await Batch.RunAsync(some)));
        Assert.Equal((2, 1), Count(await Batch.RunAsync(all)));
        Assert.Equal((0, 1), Count(await Batch.RunAsync(some)));
        Assert.Equal((0, 3), Count(await Batch.RunAsync(all)));
    }

    [Fact]
    public async Task RunAsync_PagesOfOtherValues_AreToldAsOutOfDate()
    {
        await Batch.RunAsync(batch.Request("a", "gone"));
        var result = await Batch.RunAsync(batch.Request("a") with { MadeFrom = Digest("2") });
        Assert.Equal(["tiny-gone.html"], result.OutOfDate);
        File.Delete(batch.File("tiny-gone.html"));
        Assert.Empty((await Batch.RunAsync(batch.Request("a") with { MadeFrom = Digest("2") })).OutOfDate);
    }

    [Theory]
    [InlineData("{\"pages\": [{\"value\": 3}, null, 7")]
    [InlineData("{\"pages\": 5}")]
    [InlineData("[]")]
    [InlineData("")]
    public async Task RunAsync_DamagedJournal_MakesAllAnew(string journal)
    {
        await Batch.RunAsync(batch.Request("a", "b"));
        File.WriteAllText(batch.File("tiny-batch.json"), journal);
        Assert.Equal((2, 0), Count(await Batch.RunAsync(batch.Request("a", "b"))));
        Assert.Equal((0, 2), Count(await Batch.RunAsync(batch.Request("a", "b"))));
    }

    [Fact]
    public async Task RunAsync_LeftoversOfAKilledRun_AreCleanedUpAndNothingElse()
    {
        Directory.CreateDirectory(batch.Out);
        string[] leftovers = [".tiny-a.html.77.tmp", ".tiny-b.ipynb.123456.tmp", ".tiny-batch.json.5.tmp"];
        string[] others = [".tiny-z.html.77.tmp", ".tiny-a.html.tmp", "tiny-a.html.77.tmp", ".other.html.77.tmp"];
        foreach (var name in leftovers.Concat(others))
            File.WriteAllText(batch.File(name), "half");
        await Batch.RunAsync(batch.Request("a", "b"));
        Assert.Equal([.. others.Concat(["tiny-a.html", "tiny-a.ipynb", "tiny-b.html", "tiny-b.ipynb", "tiny-batch.json"]).Order(StringComparer.Ordinal)], batch.Files());
    }

    [Fact]
    public async Task RunAsync_AnotherAtWorkInTheFolder_IsRefused()
    {
        Directory.CreateDirectory(batch.Out);
        using (Analytics.Runner.Files.FolderLock.Take(batch.File(".tiny-batch.lock"), "tiny.ipynb"))
        {
            var e = await Assert.ThrowsAsync<NotebookException>(() => Batch.RunAsync(batch.Request("a")));
            Assert.Contains("is at work", e.Message, StringComparison.Ordinal);
        }

        // The file alone, as a killed process leaves it, is no lock.
        File.WriteAllText(batch.File(".tiny-batch.lock"), "");
        Assert.Equal((1, 0), Count(await Batch.RunAsync(batch.Request("a"))));
        Assert.DoesNotContain(".tiny-batch.lock", batch.Files());
    }

    [Fact]
    public async Task Journal_TwoUninterruptedBatches_AreTheSameBytes()
    {
        await Batch.RunAsync(batch.Request("b", "a"));
        var first = batch.Read("tiny-batch.json");
        await Batch.RunAsync(batch.Request("b", "a") with { Afresh = true });
        Assert.Equal(first, batch.Read("tiny-batch.json"));
        Assert.DoesNotContain(batch.Folder.Path, first, StringComparison.Ordinal);
    }

    private static (int Made, int AlreadyThere) Count(BatchResult result) => (result.Made, result.AlreadyThere);

    private static Dictionary<string, string> Digest(string value) => new() { ["data"] = value };

    private void Write(string code) => new TinyNotebook().Settings("string who = \"\"; string season = \"\"; int n = 2;").Code(code).WriteTo(batch.Folder);

    private List<(string, DateTime, string)> Snapshot()
        => [.. Directory.GetFiles(batch.Out).Order(StringComparer.Ordinal).Select(f => (f, File.GetLastWriteTimeUtc(f), Convert.ToHexString(File.ReadAllBytes(f))))];
}
