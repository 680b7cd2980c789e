namespace Analytics.Cli.Tests.Commands;

public sealed class NewSeasonCommandTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task NewSeason_NewFolder_WritesTheFilesItLists()
    {
        var heard = await Heard.RunAsync("new-season", folder.File("s"));
        Assert.Equal(0, heard.ExitCode);
        Assert.Contains("athletes.csv", heard.Out, StringComparison.Ordinal);
        Assert.Contains("analytics check", heard.Out, StringComparison.Ordinal);
        foreach (var file in Directory.GetFiles(folder.File("s"), "*", SearchOption.AllDirectories))
            Assert.Contains(Path.GetRelativePath(folder.File("s"), file).Replace('\\', '/'), heard.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task NewSeason_FolderInUse_OverwritesNothingAndEndsWith2()
    {
        Directory.CreateDirectory(folder.File("s"));
        File.WriteAllText(folder.File("s/athletes.csv"), "mine");
        var heard = await Heard.RunAsync("new-season", folder.File("s"));
        Assert.Equal(2, heard.ExitCode);
        Assert.Equal("mine", File.ReadAllText(folder.File("s/athletes.csv")));
        Assert.Single(Directory.GetFileSystemEntries(folder.File("s")));
        Assert.NotEqual("", heard.Error);
    }
}
