namespace Analytics.Cli.Tests.Verifying;

/// <summary>A page of one athlete over two seasons, shared by codes.</summary>
public sealed class JoinedSeasonsTests : IDisposable
{
    private readonly TempFolder folder = new();
    private readonly string notebook;

    public JoinedSeasonsTests()
    {
        NewSeasonAsync("now").GetAwaiter().GetResult();
        NewSeasonAsync("then").GetAwaiter().GetResult();
        MoveBack();
        notebook = folder.Notebook(
            "string season = \".\"; string earlier = \"\"; string share = \"names\"; string athlete = \"\";",
            """
            #r "bin/Analytics.Season.dll"
            var data = Analytics.Season.SeasonShelf.Open(season, earlier, share);
            HTML("<table><caption>Athletes</caption><tr><th>Name</th><th>Days</th></tr>" + string.Concat(data.Athletes.Select(a => $"<tr><th>{a.Name}</th><td>{data.Days.Count(d => d.Athletes.Any(x => x.AthleteId == a.Id))}</td></tr>")) + "</table>")
            """,
            "HTML(\"<table><caption>Files read</caption><tr><th>File</th><th>SHA-256</th></tr>\" + string.Concat(data.Files.Select(f => $\"<tr><th>{f.Path}</th><td>{f.Sha256}</td></tr>\")) + \"</table>\")");
    }

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Verify_EarlierSeasonAndCodes_NeedsTheFolderAndNamesItsFiles()
    {
        var made = await RunAsync("run", notebook, "--season", folder.File("now"), "--set", "earlier=./then", "--set", "share=codes", "--set", "athlete=P001", "--out", folder.File("out"));
        Assert.True(made.ExitCode == 0, made.Error);
        Assert.DoesNotContain("Example Lineman", await File.ReadAllTextAsync(folder.File("out/tiny.html")), StringComparison.Ordinal);

        var asked = await VerifyAsync();
        Assert.Equal(1, asked.ExitCode);
        Assert.Contains("in folders called 'then'. Say where they are with --earlier", asked.Error, StringComparison.Ordinal);

        var same = await VerifyAsync("--earlier", folder.File("then"));
        Assert.Equal((0, "same inputs, same numbers"), (same.ExitCode, same.LastLine));

        File.AppendAllText(folder.File("then/availability.csv"), "\n");
        var changed = await VerifyAsync("--earlier", folder.File("then"));
        Assert.Equal((2, "inputs changed: 2025/availability.csv; the numbers are the same"), (changed.ExitCode, changed.LastLine));
    }

    private async Task NewSeasonAsync(string name) => Assert.Equal(0, (await Heard.RunAsync("new-season", folder.File(name))).ExitCode);

    // The same example a year before.
    private void MoveBack()
    {
        var then = folder.File("then");
        Directory.Delete(Path.Combine(then, "testing", "2026-01-22"), recursive: true);
        Directory.Move(Path.Combine(then, "testing", "2026-01-19"), Path.Combine(then, "testing", "2025-01-19"));
        foreach (var file in Directory.EnumerateFiles(then))
            File.WriteAllText(file, string.Join('\n', File.ReadAllLines(file).Where(l => !l.Contains("\"retests\"", StringComparison.Ordinal))).Replace("2026", "2025", StringComparison.Ordinal));
    }

    private static async Task<Heard> RunAsync(params string[] args)
    {
        return await BuiltProgram.RunAsync(args);
    }

    private Task<Heard> VerifyAsync(params string[] more) => RunAsync(["verify", folder.File("out/tiny.html"), "--season", folder.File("now"), "--notebook", notebook, .. more]);
}
