using System.Text;
using Analytics.Runner.Files;

namespace Analytics.Runner.Tests.Files;

public sealed class ResultFilesTests : IDisposable
{
    private readonly TempFolder folder = new();

    private ResultTarget Target => new(folder.File("r.html"), folder.File("r.ipynb"));

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Write_Results_ReplacesEarlierOnesAndLeavesNothingElse()
    {
        File.WriteAllText(Target.Page, "old");
        new ResultFiles().Write(Target, Content("page", "notebook"));
        Assert.Equal("page", File.ReadAllText(Target.Page));
        Assert.Equal("notebook", File.ReadAllText(Target.Notebook));
        Assert.Equal(["r.html", "r.ipynb"], Names());
    }

    [Fact]
    public void Write_DiskFullAtTheSecondFile_ChangesNothingAndSaysSo()
    {
        File.WriteAllText(Target.Page, "old page");
        File.WriteAllText(Target.Notebook, "old notebook");
        var files = new ResultFiles(path => path.Contains(".ipynb", StringComparison.Ordinal) ? new FullDisk(path) : File.Create(path));
        var e = Assert.Throws<NotebookException>(() => files.Write(Target, Content("page", "notebook")));
        Assert.Equal(Fault.Data, e.Kind);
        Assert.Contains(folder.Path, e.Message, StringComparison.Ordinal);
        Assert.Contains("No space left on device", e.Message, StringComparison.Ordinal);
        Assert.Contains("--out", e.Message, StringComparison.Ordinal);
        Assert.Equal("old page", File.ReadAllText(Target.Page));
        Assert.Equal("old notebook", File.ReadAllText(Target.Notebook));
        Assert.Equal(["r.html", "r.ipynb"], Names());
    }

    [Fact]
    public void Write_Tables_StandBesideTheReportUnderItsName()
    {
        new ResultFiles().Write(Target, Content("page", "notebook") with { Tables = ["a;b"u8.ToArray(), "c"u8.ToArray()] });
        Assert.Equal(["r-2.csv", "r.csv", "r.html", "r.ipynb"], Names());
        Assert.Equal("a;b", File.ReadAllText(folder.File("r.csv")));
        Assert.Equal("c", File.ReadAllText(folder.File("r-2.csv")));
    }

    [Fact]
    public void Write_DiskFullAtATable_ChangesNothing()
    {
        File.WriteAllText(Target.Page, "old page");
        File.WriteAllText(folder.File("r.csv"), "old table");
        var files = new ResultFiles(path => path.Contains(".csv", StringComparison.Ordinal) ? new FullDisk(path) : File.Create(path));
        Assert.Throws<NotebookException>(() => files.Write(Target, Content("page", "notebook") with { Tables = ["a;b;c"u8.ToArray()] }));
        Assert.Equal("old page", File.ReadAllText(Target.Page));
        Assert.Equal("old table", File.ReadAllText(folder.File("r.csv")));
        Assert.Equal(["r.csv", "r.html"], Names());
    }

    [Fact]
    public void Write_TheSystemsFullDevice_SaysThereIsNoSpace()
    {
        if (!File.Exists("/dev/full"))
            return;
        var files = new ResultFiles(_ => new FileStream("/dev/full", FileMode.Open, FileAccess.Write));
        var e = Assert.Throws<NotebookException>(() => files.Write(Target, Content("page", "notebook")));
        Assert.Contains("No space left on device", e.Message, StringComparison.Ordinal);
        Assert.Empty(Names());
    }

    [Fact]
    public void Prepare_FolderNameTakenByAFile_IsAnErrorBeforeTheRun()
    {
        File.WriteAllText(folder.File("taken"), "");
        var target = new ResultTarget(folder.File("taken/r.html"), folder.File("taken/r.ipynb"));
        var e = Assert.Throws<NotebookException>(() => new ResultFiles().Prepare(target));
        Assert.Equal(Fault.Data, e.Kind);
        Assert.Contains("taken", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Prepare_FolderThatCannotBeWritten_IsAnErrorBeforeTheRun()
    {
        var files = new ResultFiles(path => throw new UnauthorizedAccessException($"Access to the path '{path}' is denied."));
        var e = Assert.Throws<NotebookException>(() => files.Prepare(Target));
        Assert.Contains("denied", e.Message, StringComparison.Ordinal);
        Assert.Contains(folder.Path, e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Prepare_MissingFolder_IsMade()
    {
        var target = new ResultTarget(folder.File("a/b/r.html"), folder.File("a/b/r.ipynb"));
        new ResultFiles().Prepare(target);
        Assert.Empty(Directory.GetFiles(folder.File("a/b")));
    }

    private static ResultContent Content(string page, string notebook) => new(Encoding.UTF8.GetBytes(page), Encoding.UTF8.GetBytes(notebook));

    private IEnumerable<string?> Names() => Directory.GetFiles(folder.Path).Select(Path.GetFileName).Order(StringComparer.Ordinal);

    /// <summary>A file on a disk that has room for four bytes.</summary>
    private sealed class FullDisk(string path) : FileStream(path, FileMode.Create, FileAccess.Write)
    {
        public override void Write(ReadOnlySpan<byte> buffer)
        {
            base.Write(buffer[..4]);
            throw new IOException("No space left on device");
        }
    }
}
