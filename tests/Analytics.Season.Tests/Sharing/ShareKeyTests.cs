using System.Text.RegularExpressions;
using Analytics.Season.Sharing;
using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests.Sharing;

/// <summary>The key of a season's codes.</summary>
public sealed class ShareKeyTests : IDisposable
{
    private readonly TemporarySeason season = new TemporarySeason().With("testing/2026-03-02/body.csv", "athlete_id,mass_lb\nP001,221\n");

    private string KeyFile => Path.Combine(season.Folder, "share-key.txt");

    public void Dispose() => season.Dispose();

    private string Fault() => Assert.Throws<SeasonException>(() => SeasonShelf.Open(season.Folder, share: "codes")).Message;

    [Fact]
    public void Open_Codes_WritesAPrivateKeyOfItsOwnOnce()
    {
        SeasonShelf.Open(season.Folder, share: "codes");
        var first = File.ReadAllText(KeyFile);
        SeasonShelf.Open(season.Folder, share: "codes");

        Assert.Equal(first, File.ReadAllText(KeyFile));
        Assert.Matches(@"^(#.*\n)+[0-9a-f]{64}\n$", first);
        Assert.Contains("Private", first, StringComparison.Ordinal);
        if (!OperatingSystem.IsWindows()) Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(KeyFile));
        Assert.DoesNotContain(Directory.GetFileSystemEntries(season.Folder), f => f.EndsWith(".tmp", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("names")]
    [InlineData("initials")]
    public void Open_WithoutCodes_WritesNoKey(string share)
    {
        SeasonShelf.Open(season.Folder, share: share);

        Assert.False(File.Exists(KeyFile));
    }

    [Fact]
    public void Open_UnusableSeason_WritesNoKey()
    {
        season.Without("season.json");

        Fault();
        Assert.False(File.Exists(KeyFile));
    }

    [Fact]
    public void Open_KeyFile_IsNoFileOfTheSeason()
    {
        var data = SeasonShelf.Open(season.Folder, share: "codes");
        var read = SeasonReader.Read(season.Folder);

        Assert.DoesNotContain(data.Files.Concat(read.Files), f => f.Path.Contains("key", StringComparison.Ordinal));
        Assert.Empty(data.Notes.Concat(read.Notes));
    }

    [Fact]
    public void Open_OtherSeason_HasAnotherKeyAndOtherCodes()
    {
        using var other = new TemporarySeason();

        var codes = SeasonShelf.Codes(season.Folder).Select(c => c.Code).ToList();

        Assert.Empty(codes.Intersect(SeasonShelf.Codes(other.Folder).Select(c => c.Code)));
        Assert.NotEqual(File.ReadAllText(KeyFile), File.ReadAllText(Path.Combine(other.Folder, "share-key.txt")));
    }

    [Fact]
    public void Open_KeyReplaced_ReadsAnewWithOtherCodes()
    {
        var before = SeasonShelf.Open(season.Folder, share: "codes");
        File.WriteAllText(KeyFile, new string('a', 64));

        Assert.Empty(before.Athletes.Select(a => a.Id).Intersect(SeasonShelf.Open(season.Folder, share: "codes").Athletes.Select(a => a.Id)));
    }

    [Theory]
    [InlineData("")]
    [InlineData("# only a remark\n")]
    [InlineData("abcdef\n")]
    [InlineData("gggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggg\n")]
    [InlineData("aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa\naaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa\n")]
    public void Open_DamagedKey_SaysWhatToDoAndTouchesNothing(string text)
    {
        season.With("share-key.txt", text);

        Assert.Equal("share-key.txt is damaged: it must hold one line of 64 hexadecimal digits beside lines that begin with #. Put back the file from a copy; or delete it, and all codes of the season become others.", Fault());
        Assert.Equal(text, File.ReadAllText(KeyFile));
    }

    [Fact]
    public void Open_HugeKey_IsNotRead()
    {
        season.With("share-key.txt", new string('a', 5000));

        Assert.Contains("far too long for a key", Fault(), StringComparison.Ordinal);
    }

    [Fact]
    public void Open_KeyIsAFolder_SaysSo()
    {
        Directory.CreateDirectory(KeyFile);

        Assert.Contains("is a folder, but codes need a file", Fault(), StringComparison.Ordinal);
    }

    [Fact]
    public void Open_KeyInUse_SaysSoWithoutThePlace()
    {
        season.With("share-key.txt", new string('a', 64));
        using var held = new FileStream(KeyFile, FileMode.Open, FileAccess.ReadWrite, FileShare.None);

        var message = Fault();
        Assert.StartsWith("share-key.txt cannot be read, so no codes can be made", message, StringComparison.Ordinal);
        Assert.DoesNotContain(season.Folder, message, StringComparison.Ordinal);
    }

    [Fact]
    public void Open_ReadOnlyFolder_SaysWhatToDo()
    {
        // Whoever runs the tests as administrator may write everywhere; then there is nothing to see.
        if (OperatingSystem.IsWindows() || Environment.IsPrivilegedProcess) return;
        var mode = File.GetUnixFileMode(season.Folder);
        File.SetUnixFileMode(season.Folder, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        try
        {
            Assert.Matches(new Regex("^Codes need a key, and share-key.txt cannot be written into the season folder: .*Make the folder writable and run once more, or share initials.$"), Fault());
        }
        finally
        {
            File.SetUnixFileMode(season.Folder, mode);
        }
    }

    [Fact]
    public void Make_PlaceThatCannotBeWritten_SaysWhatToDo()
    {
        var message = Assert.Throws<SeasonException>(() => ShareKey.Make(Path.Combine(season.Folder, "season.json"))).Message;

        Assert.StartsWith("Codes need a key, and share-key.txt cannot be written into the season folder", message, StringComparison.Ordinal);
        Assert.EndsWith("Make the folder writable and run once more, or share initials.", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Make_OtherRunWasQuicker_TakesItsKey()
    {
        var first = ShareKey.Make(season.Folder);

        Assert.Equal(first, ShareKey.Make(season.Folder));
        Assert.Equal(first, ShareKey.Find(season.Folder));
    }
}
