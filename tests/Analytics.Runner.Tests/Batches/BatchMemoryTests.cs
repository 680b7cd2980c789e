namespace Analytics.Runner.Tests.Batches;

[Collection(Kernels.KernelTests.Name)]
public sealed class BatchMemoryTests : IDisposable
{
    private readonly Batch batch = new();

    public void Dispose() => batch.Dispose();

    [Fact]
    public async Task RunAsync_ThreeHundredPages_KeepsNoMoreThanAHundred()
    {
        // Each run holds a megabyte in a variable and shows a page of text: kept once per run, either would show.
        new TinyNotebook().Settings("string who = \"\";").Code("var big = new byte[1 << 20];\nvar shown = new string('x', 20_000) + who;").Code("shown").WriteTo(batch.Folder);
        long after100 = 0, after300 = 0;
        var heard = new BatchHeard
        {
            OnStart = index =>
            {
                if (index == 101)
                    after100 = GC.GetTotalMemory(forceFullCollection: true);
                if (index == 301)
                    after300 = GC.GetTotalMemory(forceFullCollection: true);
            },
        };
        var result = await Batch.RunAsync(batch.Request([.. Enumerable.Range(1, 301).Select(i => $"p{i:000}")]), heard);
        Assert.Equal(301, result.Made);
        // 200 pages more: of each the journal keeps its entry of less than 2 kB.
        Assert.InRange(after300 - after100, long.MinValue, 2 << 20);
    }
}
