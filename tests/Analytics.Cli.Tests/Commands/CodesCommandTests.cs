using Analytics.Season;

namespace Analytics.Cli.Tests.Commands;

public sealed class CodesCommandTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Codes_Season_ListsWhoIsWhoAsReportsCallThem()
    {
        await Heard.RunAsync("new-season", folder.File("s"));
        var heard = await Heard.RunAsync("codes", folder.File("s"));
        var shared = SeasonShelf.Open(folder.File("s"), share: "codes").Athletes.Select(a => a.Name).ToHashSet();
        var lines = heard.Out.Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(0, heard.ExitCode);
        Assert.Matches("^athlete_id +name +code$", lines[0]);
        Assert.Matches("^P001 +Example Lineman +[0-9A-Z]{5}$", lines[1]);
        Assert.Equal(shared, lines.Skip(1).Select(l => l[^5..]).ToHashSet());
        Assert.Contains("Private", heard.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Codes_Twice_AreTheSame()
    {
        await Heard.RunAsync("new-season", folder.File("s"));
        Assert.Equal((await Heard.RunAsync("codes", folder.File("s"))).Out, (await Heard.RunAsync("codes", folder.File("s"))).Out);
    }

    [Fact]
    public async Task Codes_EarlierSeason_ListsItsPlayersToo()
    {
        await Heard.RunAsync("new-season", folder.File("s"));
        await Heard.RunAsync("new-season", folder.File("before"));
        var settings = folder.File("before/season.json");
        File.WriteAllText(settings, File.ReadAllText(settings).Replace("2026", "2025", StringComparison.Ordinal));
        File.WriteAllText(folder.File("before/athletes.csv"), "athlete_id,name\nP9,Gone Kicker\n");
        foreach (var file in new[] { "before/sessions.csv", "before/availability.csv" })
            File.Delete(folder.File(file));
        Directory.Delete(folder.File("before/testing"), recursive: true);
        var heard = await Heard.RunAsync("codes", folder.File("s"), "--earlier", folder.File("before"));
        Assert.Equal("", heard.Error.Replace("Private: keep this list; do not send it with a report.", "", StringComparison.Ordinal).Trim());
        Assert.Matches("(?m)^P9 +Gone Kicker +[0-9A-Z]{5}", heard.Out);
        Assert.Matches("(?m)^P001 +Example Lineman +[0-9A-Z]{5}", heard.Out);
    }

    [Fact]
    public async Task Codes_Help_SaysItIsPrivate()
        => Assert.Contains("Private", (await Heard.RunAsync("codes", "--help")).Out, StringComparison.Ordinal);

    [Fact]
    public async Task Codes_DamagedKey_EndsWith2AndSaysWhatToDo()
    {
        await Heard.RunAsync("new-season", folder.File("s"));
        File.WriteAllText(folder.File("s/share-key.txt"), "x");
        var heard = await Heard.RunAsync("codes", folder.File("s"));
        Assert.Equal((2, ""), (heard.ExitCode, heard.Out));
        Assert.Contains("share-key.txt is damaged", heard.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", heard.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Codes_MissingFolder_EndsWith2()
    {
        var heard = await Heard.RunAsync("codes", folder.File("none"));
        Assert.Equal(2, heard.ExitCode);
        Assert.Contains("none", heard.Error, StringComparison.Ordinal);
    }
}
