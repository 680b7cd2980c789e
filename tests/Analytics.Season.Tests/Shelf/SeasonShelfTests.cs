using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests.Shelf;

/// <summary>A season is read once as long as nothing in its folder changes. One class, so that no other test puts its season on the shelf meanwhile.</summary>
[Collection(nameof(SeasonShelf))]
public sealed class SeasonShelfTests : IDisposable
{
    private readonly TemporarySeason season = new TemporarySeason().With("testing/2026-03-02/body.csv", "athlete_id,mass_lb\nP001,221\n");

    public void Dispose() => season.Dispose();

    [Fact]
    public void Open_Unchanged_HandsOutTheSameSeason() => Assert.Same(SeasonShelf.Open(season.Folder), SeasonShelf.Open(season.Folder + "/testing/.."));

    [Fact]
    public void Open_Codes_AreKeptFromTheFirstTimeOn() => Assert.Same(SeasonShelf.Open(season.Folder, share: "codes"), SeasonShelf.Open(season.Folder, share: "CODES"));

    [Fact]
    public void Open_OtherWord_IsAnotherSeason()
    {
        var named = SeasonShelf.Open(season.Folder);

        Assert.Equal("A. S.", SeasonShelf.Open(season.Folder, share: "initials").Athletes[0].Name);
        Assert.Equal("Ada Stone", SeasonShelf.Open(season.Folder).Athletes[0].Name);
        Assert.Equal("Ada Stone", named.Athletes[0].Name);
    }

    [Fact]
    public void Open_EarlierSeasonChanged_ReadsAnew()
    {
        using var seasons = new TwoSeasons();
        var before = seasons.Open();
        Assert.Same(before, seasons.Open());

        seasons.Earlier.With("testing/2025-02-20/body.csv", "athlete_id,mass_lb\nP001,221\n");

        Assert.Equal(before.Days.Count + 1, seasons.Open().Days.Count);
    }

    [Fact]
    public void Open_OnThreads_ReadsOnce()
    {
        var opened = new SeasonData[8];
        Parallel.For(0, opened.Length, i => opened[i] = SeasonShelf.Open(season.Folder));

        Assert.All(opened, o => Assert.Same(opened[0], o));
    }

    [Fact]
    public void Read_IsNeverKept() => Assert.NotSame(SeasonReader.Read(season.Folder), SeasonReader.Read(season.Folder));

    [Fact]
    public void Open_SameSeasonAsReader()
    {
        var (opened, read) = (SeasonShelf.Open(season.Folder), SeasonReader.Read(season.Folder));

        Assert.Equal(read.Athletes.Select(a => (a.Id, a.Name)), opened.Athletes.Select(a => (a.Id, a.Name)));
        Assert.Equal(read.Files, opened.Files);
        Assert.Empty(opened.Earlier);
    }

    public static TheoryData<string, Action<string>> Changes => new()
    {
        { "changed", f => File.AppendAllText(Path.Combine(f, "testing/2026-03-02/body.csv"), "P002,222\n") },
        { "same length, later", f => Rewrite(Path.Combine(f, "testing/2026-03-02/body.csv"), "athlete_id,mass_lb\nP001,222\n") },
        { "added", f => File.WriteAllText(Path.Combine(f, "testing/2026-03-02/lifts.csv"), "athlete_id,lift,load_lb,reps\nP001,deadlift,500,2\n") },
        { "added deep", f => File.WriteAllText(Path.Combine(Directory.CreateDirectory(Path.Combine(f, "testing/2026-03-02/clips")).FullName, "a.csv"), "x\n") },
        { "removed", f => File.Delete(Path.Combine(f, "testing/2026-03-02/body.csv")) },
        { "renamed", f => File.Move(Path.Combine(f, "testing/2026-03-02/body.csv"), Path.Combine(f, "testing/2026-03-02/Body.csv")) },
        { "empty folder", f => Directory.CreateDirectory(Path.Combine(f, "photos")) },
    };

    [Theory]
    [MemberData(nameof(Changes))]
    public void Open_FileChanged_ReadsAnew(string what, Action<string> change)
    {
        var before = SeasonShelf.Open(season.Folder);

        change(season.Folder);

        Assert.False(ReferenceEquals(before, SeasonShelf.Open(season.Folder)), what);
    }

    [Fact]
    public void Open_OtherSeason_TakesThePlaceOfTheFirst()
    {
        using var other = new TemporarySeason();
        var first = SeasonShelf.Open(season.Folder);
        SeasonShelf.Open(other.Folder);

        Assert.NotSame(first, SeasonShelf.Open(season.Folder));
    }

    [Fact]
    public void Open_FileInUse_IsReadOnceItIsFree()
    {
        var body = Path.Combine(season.Folder, "testing/2026-03-02/body.csv");
        using (new FileStream(body, FileMode.Open, FileAccess.ReadWrite, FileShare.None))
            Assert.StartsWith("The file cannot be read", Assert.Single(SeasonShelf.Open(season.Folder).HeldBack).Reason, StringComparison.Ordinal);

        Assert.Empty(SeasonShelf.Open(season.Folder).HeldBack);
    }

    [Fact]
    public void Open_LinkInCircle_Ends()
    {
        Directory.CreateSymbolicLink(Path.Combine(season.Folder, "testing", "round"), season.Folder);

        Assert.Same(SeasonShelf.Open(season.Folder), SeasonShelf.Open(season.Folder));
    }

    [Fact]
    public void Open_FaultInTheFolder_IsToldEachTimeAndMended()
    {
        var settings = File.ReadAllText(Path.Combine(season.Folder, "season.json"));
        season.With("season.json", "{");

        Assert.Throws<SeasonException>(() => SeasonShelf.Open(season.Folder));
        season.With("season.json", settings);
        Assert.Single(SeasonShelf.Open(season.Folder).Days);
    }

    // Without the later time a rewrite within one tick of the disk's clock would look unchanged.
    private static void Rewrite(string file, string text)
    {
        var before = File.GetLastWriteTimeUtc(file);
        File.WriteAllText(file, text);
        File.SetLastWriteTimeUtc(file, before.AddSeconds(2));
    }
}
