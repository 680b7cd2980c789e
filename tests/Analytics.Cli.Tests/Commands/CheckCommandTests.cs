namespace Analytics.Cli.Tests.Commands;

public sealed class CheckCommandTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Check_SeasonWithExamples_KeepsEveryRow()
    {
        await Heard.RunAsync("new-season", folder.File("s"));
        var heard = await Heard.RunAsync("check", folder.File("s"));
        Assert.Equal(0, heard.ExitCode);
        Assert.Matches(@"All \d+ rows read were kept", heard.Out);
    }

    [Fact]
    public async Task Check_RowOfAnUnknownAthlete_IsListedAndEndsWith2()
    {
        await Heard.RunAsync("new-season", folder.File("s"));
        var lifts = Directory.GetFiles(folder.File("s"), "lifts.csv", SearchOption.AllDirectories)[0];
        var lines = File.ReadAllLines(lifts);
        File.WriteAllLines(lifts, [.. lines, "nobody" + lines[1][lines[1].IndexOf(',', StringComparison.Ordinal)..]]);
        var heard = await Heard.RunAsync("check", folder.File("s"));
        Assert.Equal(2, heard.ExitCode);
        Assert.Contains($"lifts.csv, line {lines.Length + 1}", heard.Out, StringComparison.Ordinal);
        Assert.Contains("'nobody'", heard.Out, StringComparison.Ordinal);
        Assert.Contains("1 held back", heard.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Check_MissingFolder_EndsWith2AndSaysWhatToDo()
    {
        var heard = await Heard.RunAsync("check", folder.File("none"));
        Assert.Equal(2, heard.ExitCode);
        Assert.Contains("none", heard.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", heard.Error, StringComparison.Ordinal);
    }
}
