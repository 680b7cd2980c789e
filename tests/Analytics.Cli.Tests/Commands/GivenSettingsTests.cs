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
        var given = GivenSettings.From(folder.File(notebook), new RunOptions { Season = folder.File(season) });
        Assert.Equal([new("season", seen)], given);
    }

    [Fact]
    public void From_DayAndSet_ComeAsTheyAre()
        => Assert.Equal([new("day", "2026-06-08"), new("unit", "a=b"), new("n", "")], GivenSettings.From("n.ipynb", new RunOptions { Day = "2026-06-08", Set = ["unit=a=b", "n="] }));

    [Theory]
    [InlineData("=1")]
    [InlineData("name")]
    public void From_SetWithoutNameOrValue_IsAUsageError(string set)
    {
        var e = Assert.Throws<NotebookException>(() => GivenSettings.From("n.ipynb", new RunOptions { Set = [set] }));
        Assert.Equal(Fault.Usage, e.Kind);
        Assert.Contains($"'{set}'", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void From_EarlierSeasons_StandInOneSettingInTheOrderGiven()
    {
        foreach (var season in new[] { "2024", "2025", "now" })
            Directory.CreateDirectory(folder.File(season));
        var given = GivenSettings.From(folder.File("notebooks/n.ipynb"), new RunOptions { Season = folder.File("now"), Earlier = [folder.File("2024"), folder.File("2025")], Share = "Codes" });
        Assert.Equal([new("season", "../now"), new("earlier", "../2024;../2025"), new("share", "codes")], given);
    }

    [Fact]
    public void From_EarlierSeasonThatIsNotThere_IsAUsageErrorThatDoesNotTellToMakeOne()
    {
        var e = Assert.Throws<NotebookException>(() => GivenSettings.From("n.ipynb", new RunOptions { Earlier = ["no-such-folder"] }));
        Assert.Equal((Fault.Usage, "There is no season folder 'no-such-folder' to join. Check the spelling."), (e.Kind, e.Message));
    }

    [Theory]
    [InlineData("a;b", "--earlier names one folder")]
    [InlineData("x;y/2025", "--earlier names one folder")]
    public void From_EarlierSeasonWithASemicolon_IsAUsageError(string earlier, string says)
    {
        Directory.CreateDirectory(folder.File(earlier));
        var e = Assert.Throws<NotebookException>(() => GivenSettings.From(folder.File("n.ipynb"), new RunOptions { Earlier = [folder.File(earlier)] }));
        Assert.Equal(Fault.Usage, e.Kind);
        Assert.StartsWith(says, e.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("nothing")]
    public void From_OtherShareWord_ListsTheThree(string word)
    {
        var e = Assert.Throws<NotebookException>(() => GivenSettings.From("n.ipynb", new RunOptions { Share = word }));
        Assert.Equal((Fault.Usage, $"--share is one of names, initials, codes, not '{word}'."), (e.Kind, e.Message));
    }
}
