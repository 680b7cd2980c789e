using System.Text.RegularExpressions;
using Analytics.Cli.Rehearsing;
using Analytics.Cli.Tests.Architecture;

namespace Analytics.Cli.Tests.Rehearsing;

public sealed partial class RehearsalTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Run_OwnSeason_GoesThroughToThePageWithChartsChangesAndRowsHeldBack()
    {
        var page = new Rehearsal(Rehearsal.OwnSeason).Run(EarlyStart.Charts);
        Assert.NotNull(page);
        Assert.Contains("class=\"fig-data\"", page, StringComparison.Ordinal);
        Assert.Contains("id=\"chart-library\"", page, StringComparison.Ordinal);
        Assert.Contains("compared with 2 March", page, StringComparison.Ordinal);
        Assert.Contains("2026-03-02.xlsx", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_WithoutItsSeason_ComesToNothingAndSaysNothing()
        => Assert.Null(new Rehearsal(folder.File("missing")).Run(EarlyStart.Charts));

    [Fact]
    public void Rehearsal_Source_CallsEveryPartTheNotebookCalls()
    {
        var notebook = File.ReadAllText(Repository.Path("notebooks", "testing-day.ipynb"));
        var rehearsed = File.ReadAllText(Repository.Path("src", "Analytics.Cli", "Rehearsing", "Rehearsal.cs"));
        var calls = PartOfReport().Matches(notebook).Select(m => m.Value).ToHashSet(StringComparer.Ordinal);
        Assert.NotEmpty(calls);
        Assert.DoesNotContain(calls, c => !rehearsed.Contains(c, StringComparison.Ordinal));
    }

    // A program that sees one processor does not rehearse.
    [Fact]
    public async Task TestingDay_WithAndWithoutRehearsal_IsTheSame()
    {
        Assert.Equal(await MakeAsync("with", []), await MakeAsync("without", new Dictionary<string, string> { ["DOTNET_PROCESSOR_COUNT"] = "1" }));
    }

    private async Task<string> MakeAsync(string name, Dictionary<string, string> environment)
    {
        using var program = new BuiltProgram(environment, "run", Repository.Path("notebooks", "testing-day.ipynb"), "--out", folder.File(name));
        Assert.Equal(0, (await program.EndAsync()).ExitCode);
        return Varying().Replace(File.ReadAllText(folder.File($"{name}/testing-day.html")) + File.ReadAllText(folder.File($"{name}/testing-day.ipynb")), "");
    }

    [GeneratedRegex(@"report\.\w+\(\)")]
    private static partial Regex PartOfReport();

    [GeneratedRegex("""<!--varies-->.*?<!--/varies-->|"varies": \{.*?\}""", RegexOptions.Singleline)]
    private static partial Regex Varying();
}
