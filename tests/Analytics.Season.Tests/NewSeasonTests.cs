using Analytics.Season.Tests.Support;
using Analytics.Season.Training;

namespace Analytics.Season.Tests;

public sealed class NewSeasonTests : IDisposable
{
    private readonly string parent = Path.Combine(Path.GetTempPath(), "season-tests", Guid.NewGuid().ToString("N"));

    public NewSeasonTests() => Directory.CreateDirectory(parent);

    public void Dispose() => Directory.Delete(parent, recursive: true);

    [Fact]
    public void Write_NewFolder_ReadsBackWithNothingHeldBackAndNoRemarks()
    {
        var folder = Path.Combine(parent, "spring");

        var files = NewSeason.Write(folder);

        var data = SeasonReader.Read(folder);
        Ledger.Check(data);
        Assert.Empty(data.HeldBack);
        Assert.Empty(data.Notes);
        Assert.Equal(files.Order(StringComparer.Ordinal), data.Files.Select(f => f.Path).Order(StringComparer.Ordinal));
        Assert.Equal(2, data.Days.Count);
        Assert.Equal([2, 1, 0], data.Sessions.Select(s => s.Exercises.Count));
        // Every table of a testing day has an example.
        Assert.Equal(8, data.Days[0].Athletes.SelectMany(a => a.Trials).Select(t => t.GetType()).Distinct().Count());
        Assert.Equal(["KB", "RM"], data.Days[0].Athletes.SelectMany(a => a.Trials).Select(t => t.Tester).OfType<string>().Distinct());
        Assert.Equal(TrainingFolder.Files.Select(f => f + ".csv"), data.Training.OwnFiles);
        Assert.Equal((4, 1, 2, 2, 2), (data.Training.Sessions.Count, data.Training.Games.Count, data.Training.Restrictions.Count, data.Training.Earlier.Count, data.Training.Targets.Count));
        Assert.Equal(["spring"], Directory.EnumerateFileSystemEntries(parent).Select(Path.GetFileName));
    }

    [Fact]
    public void Write_EmptyFolder_IsFilled()
    {
        NewSeason.Write(Directory.CreateDirectory(Path.Combine(parent, "empty")).FullName);

        Assert.Empty(SeasonReader.Read(Path.Combine(parent, "empty")).HeldBack);
    }

    [Fact]
    public void Write_FolderWithSomethingInIt_RefusesAndLeavesItAlone()
    {
        File.WriteAllText(Path.Combine(parent, "mine.txt"), "mine");

        var message = Assert.Throws<SeasonException>(() => NewSeason.Write(parent)).Message;

        Assert.Contains("not empty, and nothing is ever overwritten", message, StringComparison.Ordinal);
        Assert.Equal(["mine.txt"], Directory.EnumerateFileSystemEntries(parent).Select(Path.GetFileName));
    }

    [Fact]
    public void Write_OverAFile_Refuses()
    {
        var file = Path.Combine(parent, "mine.txt");
        File.WriteAllText(file, "mine");

        Assert.Contains("is a file", Assert.Throws<SeasonException>(() => NewSeason.Write(file)).Message, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(file));
    }

    [Fact]
    public void Write_BelowAFile_SaysThatItCannotBeWritten()
    {
        var file = Path.Combine(parent, "mine.txt");
        File.WriteAllText(file, "mine");

        Assert.Contains("cannot be written to", Assert.Throws<SeasonException>(() => NewSeason.Write(Path.Combine(file, "spring"))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_NoName_Refuses() => Assert.Contains("No folder was given", Assert.Throws<SeasonException>(() => NewSeason.Write(" ")).Message, StringComparison.Ordinal);
}
