using Analytics.Cli.Tests.Architecture;

namespace Analytics.Cli.Tests.Verifying;

/// <summary>A report of the demo season's latest day but one, made once by the built program, and copies of the season to change.</summary>
public sealed class DemoReport : IDisposable
{
    public const string Day = "2026-04-13";

    private readonly TempFolder folder = new();

    public DemoReport()
    {
        using var program = new BuiltProgram("run", Notebook, "--season", Season, "--day", Day, "--out", folder.File("out"));
        Made = program.EndAsync().GetAwaiter().GetResult().ExitCode;
        Text = File.ReadAllText(folder.File("out/testing-day.html"));
    }

    public static string Notebook { get; } = Repository.Path("notebooks", "testing-day.ipynb");

    public static string Season { get; } = Repository.Path("data-demo");

    public int Made { get; }

    /// <summary>The report as made.</summary>
    public string Text { get; }

    public void Dispose() => folder.Dispose();

    /// <summary>Writes a page and verifies it by the built program.</summary>
    internal async Task<Heard> VerifyAsync(string page, params string[] more)
    {
        var file = Path.Combine(Directory.CreateDirectory(folder.File(Guid.NewGuid().ToString("N"))).FullName, "report.html");
        await File.WriteAllTextAsync(file, page);
        return await BuiltProgram.RunAsync(["verify", file, .. more]);
    }

    internal Task<Heard> VerifyAgainstAsync(string season, string page) => VerifyAsync(page, "--season", season, "--notebook", Notebook);

    /// <summary>The page with one piece of text put in the place of another, which must be there.</summary>
    internal string With(string old, string other)
    {
        var at = Text.IndexOf(old, StringComparison.Ordinal);
        Assert.True(at >= 0, $"The report holds no '{old}'.");
        return Text[..at] + other + Text[(at + old.Length)..];
    }

    /// <summary>A copy of the season that may be changed.</summary>
    internal string SeasonCopy(string name)
    {
        var copy = folder.File(name);
        foreach (var file in Directory.EnumerateFiles(Season, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(copy, Path.GetRelativePath(Season, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }

        return copy;
    }
}
