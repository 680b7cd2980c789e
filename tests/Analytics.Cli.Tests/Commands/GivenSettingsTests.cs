using Analytics.Cli.Commands;
using Analytics.Runner;

namespace Analytics.Cli.Tests.Commands;

public sealed class GivenSettingsTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("notebooks/n.ipynb", "season", "../season")]
    [InlineData("n.ipynb", "season", "./season")]
    [InlineData("season/n.ipynb", "season", ".")]
    [InlineData("a/b/n.ipynb", "season/", "../../season/")]
    public void From_Season_IsSeenFromTheNotebooksFolder(string notebook, string season, string seen)
    {
        Directory.CreateDirectory(folder.File("season"));
        var given = GivenSettings.From(folder.File(notebook), folder.File(season), null, []);
        Assert.Equal([new("season", seen)], given);
    }

    [Fact]
    public void From_DayAndSet_ComeAsTheyAre()
        => Assert.Equal([new("day", "2026-06-08"), new("unit", "a=b"), new("n", "")], GivenSettings.From("n.ipynb", null, "2026-06-08", ["unit=a=b", "n="]));

    [Theory]
    [InlineData("=1")]
    [InlineData("name")]
    public void From_SetWithoutNameOrValue_IsAUsageError(string set)
    {
        var e = Assert.Throws<NotebookException>(() => GivenSettings.From("n.ipynb", null, null, [set]));
        Assert.Equal(Fault.Usage, e.Kind);
        Assert.Contains($"'{set}'", e.Message, StringComparison.Ordinal);
    }
}
