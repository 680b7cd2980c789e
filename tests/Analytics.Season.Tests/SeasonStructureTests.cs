using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests;

/// <summary>Files and folders that are not where or what they should be.</summary>
public sealed class SeasonStructureTests
{
    private const string Day = "testing/2026-03-02/";
    private const string Body = "athlete_id,mass_lb\nP001,225\n";

    [Theory]
    [InlineData("testing/2026-3-2/body.csv", "testing/2026-3-2", "not a date", "2026-03-02")]
    [InlineData("testing/March 2/body.csv", "testing/March 2", "not a date", "2026-03-02")]
    [InlineData("testing/2026-02-30/body.csv", "testing/2026-02-30", "not a date", "2026-03-02")]
    [InlineData("testing/march.xlsx", "testing/march.xlsx", "not a date", "2026-03-02")]
    [InlineData("testing/2026-03-02.xls", "testing/2026-03-02.xls", "(.xls) are not read", ".xlsx")]
    [InlineData(Day + "body.ods", Day + "body.ods", "(.ods) are not read", ".xlsx")]
    [InlineData(Day + "bodies.csv", Day + "bodies.csv", "the name is none of body, lifts, jumps, sprints, agility, throws, stairs", "one of these names")]
    public void Read_MisnamedInput_IsHeldBackNotIgnored(string path, string file, string reason, string remedy)
    {
        using var season = new TemporarySeason().With(path, Body);

        var held = Assert.Single(season.Read().HeldBack);

        Assert.Equal((file, 0, 0), (held.File, held.Line, held.Rows));
        Assert.Contains(reason, held.Reason, StringComparison.Ordinal);
        Assert.Contains(remedy, held.Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("readme.txt")]
    [InlineData("photos/a.jpg")]
    [InlineData("testing/notes.md")]
    [InlineData(Day + "weather.md")]
    [InlineData(Day + "traces/p001.bin")]
    public void Read_OtherFile_IsRemarked(string path)
    {
        using var season = new TemporarySeason().With(path, "x").With(Day + "body.csv", Body);

        var data = season.Read();

        Assert.Empty(data.HeldBack);
        var note = Assert.Single(data.Notes);
        Assert.StartsWith(note.File, path, StringComparison.Ordinal);
        Assert.Contains("not", note.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_FolderWhereAFileShouldBe_IsHeldBack()
    {
        using var season = new TemporarySeason();
        Directory.CreateDirectory(Path.Combine(season.Folder, Day, "lifts.csv"));

        Assert.Contains("missing", Assert.Single(season.Read().HeldBack).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_FileInUseOrUnreadable_IsHeldBackAndOthersAreRead()
    {
        using var season = new TemporarySeason().With(Day + "body.csv", Body).With(Day + "lifts.csv", "athlete_id,lift,load_lb,reps\nP001,deadlift,500,2\n");
        using var lockedFile = new FileStream(Path.Combine(season.Folder, Day, "lifts.csv"), FileMode.Open, FileAccess.ReadWrite, FileShare.None);

        var data = season.Read();

        var held = Assert.Single(data.HeldBack);
        Assert.Equal((Day + "lifts.csv", 0), (held.File, held.Line));
        Assert.StartsWith("The file cannot be read", held.Reason, StringComparison.Ordinal);
        Assert.DoesNotContain(season.Folder, held.Reason, StringComparison.Ordinal);
        Assert.Equal(1, data.Files.Single(f => f.Path == Day + "body.csv").Kept);
    }

    [Theory]
    [InlineData("file")]
    [InlineData("folder")]
    [InlineData("chain")]
    public void Read_LinkOutOfTheSeason_IsNotFollowed(string kind)
    {
        using var season = new TemporarySeason();
        using var outside = new TemporarySeason().With("secret/body.csv", Body);
        Directory.CreateDirectory(Path.Combine(season.Folder, "testing", "2026-03-02"));
        if (kind is "file") File.CreateSymbolicLink(Path.Combine(season.Folder, Day, "body.csv"), Path.Combine(outside.Folder, "secret/body.csv"));
        if (kind is "folder") Directory.CreateSymbolicLink(Path.Combine(season.Folder, "testing", "2026-03-03"), Path.Combine(outside.Folder, "secret"));
        if (kind is "chain")
        {
            Directory.CreateSymbolicLink(Path.Combine(season.Folder, "inner"), Path.Combine(outside.Folder, "secret"));
            File.CreateSymbolicLink(Path.Combine(season.Folder, Day, "body.csv"), "../../inner/body.csv");
        }

        var data = season.Read();

        Assert.Contains("link that leads outside the season folder", Assert.Single(data.HeldBack).Reason, StringComparison.Ordinal);
        Assert.Empty(data.Days);
    }

    [Fact]
    public void Read_LinkInCircle_IsHeldBack()
    {
        using var season = new TemporarySeason();
        Directory.CreateDirectory(Path.Combine(season.Folder, Day));
        File.CreateSymbolicLink(Path.Combine(season.Folder, Day, "body.csv"), "body.csv");

        Assert.Single(season.Read().HeldBack);
    }

    [Fact]
    public void Read_LinkInsideTheSeason_IsFollowed()
    {
        using var season = new TemporarySeason().With("kept/body.csv", Body);
        Directory.CreateDirectory(Path.Combine(season.Folder, Day));
        File.CreateSymbolicLink(Path.Combine(season.Folder, Day, "body.csv"), "../../kept/body.csv");

        Assert.Equal(1, season.Read().Files.Single(f => f.Path == Day + "body.csv").Kept);
    }

    [Fact]
    public void Read_FolderReachedByDots_IsRead()
    {
        using var season = new TemporarySeason().With(Day + "body.csv", Body);

        Assert.Equal(5, SeasonReader.Read(Path.Combine(season.Folder, "testing", "..", ".")).RowsKept);
    }

    [Fact]
    public void Read_HiddenAndLockFiles_AreLeftOut()
    {
        using var season = new TemporarySeason().With(Day + "~$body.xlsx", "x").With(Day + ".DS_Store", "x").With(Day + "BODY.CSV", Body);

        var data = season.Read();

        Assert.Empty(data.Notes);
        Assert.Equal(Day + "BODY.CSV", data.Files[^1].Path);
    }

    [Fact]
    public void Read_FolderAndWorkbookOfOneDay_AreJoinedAndCheckedAgainstEachOther()
    {
        using var season = new TemporarySeason().With(Day + "body.csv", Body)
            .With("testing/2026-03-02.xlsx", TestWorkbook.Of(("body", [["athlete_id", "mass_lb"], ["P001", 225.0], ["P002", 231.0]])));

        var data = season.Read();

        Assert.Equal(2, Assert.Single(data.Days).Athletes.Count);
        var held = Assert.Single(data.HeldBack);
        Assert.Equal(("testing/2026-03-02.xlsx#body", 2), (held.File, held.Line));
        Assert.Contains("already stands in testing/2026-03-02/body.csv line 2", held.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_NoTestingFolder_IsRemarked()
    {
        using var season = new TemporarySeason();

        var data = season.Read();

        Assert.Empty(data.Days);
        Assert.Contains("no folder 'testing'", Assert.Single(data.Notes).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_DayHeldBackWhole_StaysADay()
    {
        using var season = new TemporarySeason().With(Day + "body.csv", "athlete_id,mass_lb\nP9,1\n");

        Assert.Empty(Assert.Single(season.Read().Days).Athletes);
    }
}
