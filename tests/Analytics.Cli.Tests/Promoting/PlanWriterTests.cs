using Analytics.Cli.Promoting;
using Analytics.Runner;

namespace Analytics.Cli.Tests.Promoting;

public sealed class PlanWriterTests : IDisposable
{
    private readonly TinyClone clone = new();

    public void Dispose() => clone.Dispose();

    public static TheoryData<string> Places => ["src/Analytics.Metrics/New/A.cs", "tests/New/B.cs", "docs/metrics.md"];

    [Theory]
    [MemberData(nameof(Places))]
    public void Write_DiskFullMidway_TakesEverythingAway(string full)
    {
        var plan = Plan();
        var writer = new PlanWriter((path, mode) => path == clone.In(full) ? new FullDisk(path, mode) : new FileStream(path, mode, FileAccess.Write));
        var failure = Assert.Throws<NotebookException>(() => writer.Write(plan));
        Assert.Contains("could not be written", failure.Message, StringComparison.Ordinal);
        Assert.Contains("No space is left. What had been written was taken away again.", failure.Message, StringComparison.Ordinal);
        Untouched();
    }

    [Fact]
    public void Write_FileThatCameMeanwhile_StaysAsItIs()
    {
        var plan = Plan();
        clone.Write("tests/New/B.cs", "mine");
        Assert.Throws<NotebookException>(() => new PlanWriter().Write(plan));
        Assert.Equal("mine", clone.Read("tests/New/B.cs"));
        File.Delete(clone.In("tests/New/B.cs"));
        Directory.Delete(clone.In("tests/New"));
        Untouched();
    }

    [Fact]
    public void Write_GitThatRefuses_TakesEverythingAway()
    {
        clone.Write(".gitignore", "B.cs\n");
        clone.Commit();
        Assert.Contains("git add refused", Assert.Throws<NotebookException>(() => new PlanWriter().Write(Plan())).Message, StringComparison.Ordinal);
        Untouched();
    }

    private void Untouched()
    {
        Assert.Equal("", clone.Status);
        Assert.False(Directory.Exists(clone.In("src/Analytics.Metrics/New")));
        Assert.False(Directory.Exists(clone.In("tests/New")));
    }

    private PromotionPlan Plan() => new(Clone.Find(clone.Root),
    [
        new("src/Analytics.Metrics/New/A.cs", "// a\n", true),
        new("tests/New/B.cs", "// b\n", true),
        new("docs/metrics.md", "another page\n", false),
    ])
    {
        Name = PromotedName.Of("x"), Folder = "New", Values = (1, 1, 0), IsFormulaCode = false,
    };

    private sealed class FullDisk(string path, FileMode mode) : FileStream(path, mode, FileAccess.Write)
    {
        public override void Write(ReadOnlySpan<byte> buffer)
        {
            base.Write(buffer[..3].ToArray(), 0, 3);
            throw new IOException("No space is left.");
        }

        public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));
    }
}
