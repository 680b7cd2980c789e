using Analytics.Runner.Kernels;
using Analytics.Runner.Outputs;

namespace Analytics.Cli.Tests;

/// <summary>What a cell that ends in a result of the library shows, in the real kernel.</summary>
[Collection(InProcessKernel.Name)]
public sealed class ResultInNotebookTests : IDisposable
{
    private const string References = """
        #r "Analytics.Statistics.dll"
        #r "Analytics.Notebooks.dll"
        using Analytics.Statistics.Summaries;
        using Analytics.Notebooks.Tables;

        """;

    private readonly InteractiveKernel kernel = new(new HostAssemblies(AppContext.BaseDirectory), () => { });

    public void Dispose() => kernel.Dispose();

    [Fact]
    public async Task AResult_ShowsATableAndText()
    {
        var shown = await Run("MeanEstimate.Of(new double[] { 1, 2, 3, 4, 5 })");
        Assert.StartsWith("<table><caption>Estimate</caption>", shown.Form("text/html"), StringComparison.Ordinal);
        Assert.Contains("<td>1.037 to 4.963 (95 %)</td>", shown.Form("text/html"), StringComparison.Ordinal);
        Assert.StartsWith("Estimate\n", shown.Form("text/plain"), StringComparison.Ordinal);
        Assert.Contains("From: 5 observations", shown.Form("text/plain"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task AResult_AfterRegister_HasTheLookOfTheReports()
    {
        var shown = await Run("ResultTable.Register();\nMeanEstimate.Of(new double[] { 1, 2, 3, 4, 5 })");
        Assert.Contains("class=\"dt few", shown.Form("text/html"), StringComparison.Ordinal);
        Assert.StartsWith("Estimate\n", shown.Form("text/plain"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task ABlockMadeOfAResult_ShowsTheSame()
    {
        var shown = await Run("ResultTable.Of(MeanEstimate.Of(new double[] { 1, 2, 3, 4, 5 }))");
        Assert.Contains("class=\"dt few", shown.Form("text/html"), StringComparison.Ordinal);
        Assert.Contains("mean with Student t interval", shown.Form("text/plain"), StringComparison.Ordinal);
    }

    private async Task<DisplayOutput> Run(string source)
    {
        var outputs = new OutputList();
        var failure = await kernel.RunAsync(new CellCode("cell 1", References + source), outputs);
        Assert.True(failure is null, failure?.Message);
        var shown = Assert.IsType<DisplayOutput>(Assert.Single(outputs.Snapshot()));
        Assert.True(shown.IsResult);
        return shown;
    }
}

/// <summary>A kernel takes the console, culture and formatters of the process: nothing else runs beside it.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public class InProcessKernel
{
    public const string Name = "kernel in this process";
}
