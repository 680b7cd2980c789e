using System.Text.Json.Nodes;
using Analytics.Acceptance.Programs;
using Analytics.Acceptance.Reports;

namespace Analytics.Acceptance.Jupyter;

/// <summary>The same notebook in Jupyter, with the .NET (C#) kernel as it is installed everywhere.</summary>
public class JupyterTests
{
    [JupyterFact]
    public void TestingDay_InJupyter_GivesWhatTheRunnerGives()
    {
        var jupyter = Outputs(Execute(Repository.TestingDay));
        var own = Outputs(ReportSet.Demo.Notebook);
        Assert.Equal(own.Count, jupyter.Count);
        for (var i = 0; i < own.Count; i++)
            Assert.Equal(own[i], jupyter[i]);
        Assert.Contains(own, o => o.Contains("class=\"fig\"", StringComparison.Ordinal));
    }

    [JupyterFact]
    public void ContactReview_InJupyter_GivesWhatTheRunnerGives()
    {
        var own = Outputs(ReportSet.Review.Notebook);
        Assert.Equal(own, Outputs(Execute(Repository.ContactReview)));
        Assert.Contains(own, o => o.Contains("class=\"fig\"", StringComparison.Ordinal));
    }

    [JupyterFact]
    public void SeasonReport_InJupyter_GivesWhatTheRunnerGives()
    {
        var own = Outputs(ReportSet.Season.Notebook);
        Assert.Equal(own, Outputs(Execute(Repository.SeasonReport)));
        Assert.Contains(own, o => o.Contains("class=\"fig\"", StringComparison.Ordinal));
    }

    [JupyterFact]
    public void AthletePage_InJupyter_GivesWhatTheRunnerGives()
    {
        var own = Outputs(ReportSet.Page.Notebook);
        Assert.Equal(own, Outputs(Execute(Repository.AthletePage)));
        Assert.Contains(own, o => o.Contains("class=\"fig\"", StringComparison.Ordinal));
    }

    // The solver has a native library, which that kernel finds by the kit alone.
    [JupyterFact]
    public void TrainingWeek_InJupyter_GivesWhatTheRunnerGives()
    {
        var own = Outputs(ReportSet.Week.Notebook);
        Assert.Equal(own, Outputs(Execute(Repository.TrainingWeek)));
        Assert.Contains(own, o => o.Contains("class=\"mx\"", StringComparison.Ordinal));
    }

    // Three sketches of rising difficulty: written in its cells, judged, compared, and shown in a report.
    [JupyterFact]
    public void MetricBench_InJupyter_GivesWhatTheRunnerGives()
    {
        var own = Outputs(ReportSet.Bench.Notebook);
        Assert.Equal(own, Outputs(Execute(Repository.MetricBench)));
        Assert.Contains(own, o => o.Contains("class=\"fig\"", StringComparison.Ordinal));
    }

    [JupyterFact]
    public void PlainChart_InJupyter_IsDrawnByTheNewerChartLibrary()
    {
        var executed = Execute(OwnNotebooks.WithPlainChart(Path.Combine(Repository.Root, "src", "Analytics.Cli", "bin", "Release", "net10.0")));
        Assert.Contains("True", string.Concat(Outputs(executed)), StringComparison.Ordinal);
    }

    [JupyterFact]
    public void PlainChart_InTheRunner_WorksTheSame()
    {
        var report = MadeReport.Make(OwnNotebooks.WithPlainChart(Path.Combine(Repository.Root, "src", "Analytics.Cli", "bin", "Release", "net10.0")));
        Assert.Equal(0, report.ExitCode);
        Assert.Contains("True", string.Concat(Outputs(report.Notebook)), StringComparison.Ordinal);
    }

    private static string Execute(string notebook)
    {
        Assert.True(Found.Nbconvert is not null, "No Jupyter with the .NET (C#) kernel, and skips are forbidden.");
        var folder = Directory.CreateTempSubdirectory("analytics-jupyter-").FullName;
        var (code, _, error) = Running.Run(Found.Nbconvert, ["--to", "notebook", "--execute", notebook, "--output-dir", folder, "--output", "executed.ipynb"]);
        Assert.True(code == 0, error);
        return Path.Combine(folder, "executed.ipynb");
    }

    /// <summary>What the cells put out, as text; the HTML where there is HTML.</summary>
    private static List<string> Outputs(string notebook)
        => [.. JsonNode.Parse(File.ReadAllText(notebook))!["cells"]!.AsArray()
            .Where(c => c!["cell_type"]!.GetValue<string>() == "code")
            .SelectMany(c => c!["outputs"]!.AsArray())
            .Select(o => Text(o!["text"] ?? o["data"]?["text/html"] ?? o["data"]?["text/plain"]))
            // Jupyter's kernel announces itself in the first cell.
            .Where(o => !o.Contains("dotnet-interactive-this-cell", StringComparison.Ordinal))];

    private static string Text(JsonNode? node) => node switch
    {
        JsonArray lines => string.Concat(lines.Select(l => l!.GetValue<string>())),
        null => "",
        _ => node.GetValue<string>(),
    };
}
