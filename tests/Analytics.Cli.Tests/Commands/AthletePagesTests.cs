using Analytics.Cli.Commands;
using Analytics.Runner.Running;
using Analytics.Season;

namespace Analytics.Cli.Tests.Commands;

public sealed class AthletePagesTests : IDisposable
{
    private readonly TempFolder folder = new();

    public AthletePagesTests() => NewSeason.Write(folder.File("season"));

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Open_SeasonOfTheNotebook_IsFoundFromItsFolder()
    {
        Directory.CreateDirectory(folder.File("notebooks"));
        var notebook = Path.Combine(folder.File("notebooks"), "n.ipynb");
        File.Move(folder.Notebook("string season = \"../season\"; string athlete = \"\";"), notebook);
        var pages = AthletePages.Open(new RunRequest { Notebook = notebook, OutFolder = "out", Library = "" });
        Assert.Equal(["P001", "P002", "P003"], pages.Items.Select(i => i.Value));
        Assert.Equal("P001 Example Lineman", pages.Items[0].Label);
        Assert.Empty(pages.WithoutResults);
        Assert.Matches("^[0-9a-f]{64}$", pages.InputsSha256);
    }

    [Fact]
    public void Open_GivenDay_CountsResultsUntilThen()
    {
        File.AppendAllText(folder.File("season/athletes.csv"), "P004,Example Newcomer,QB,Backs,74,2004,2\n");
        File.AppendAllText(folder.File("season/testing/2026-01-22/body.csv"), "P004,231\n");
        Assert.Contains("P004", Open("latest").Items.Select(i => i.Value));
        Assert.Equal(["P004"], Open("2026-01-19").WithoutResults.Select(i => i.Value));
    }

    [Fact]
    public void Open_ChangedInput_HasAnotherDigest()
    {
        var before = Open("latest").InputsSha256;
        Assert.Equal(before, Open("latest").InputsSha256);
        File.AppendAllText(folder.File("season/testing/2026-01-22/body.csv"), "P003,190\n");
        Assert.NotEqual(before, Open("latest").InputsSha256);
    }

    private AthletePages Open(string day) => AthletePages.Open(new RunRequest
    {
        Notebook = folder.Notebook("string season = \"season\"; string athlete = \"\"; string day = \"\";"),
        Settings = [new("day", day)],
        OutFolder = "out",
        Library = "",
    });
}
