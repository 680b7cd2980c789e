using Analytics.Cli.Tests.Architecture;

namespace Analytics.Cli.Tests;

/// <summary>Who may know whom, and what the libraries leave to others. The picture is in DEVELOPERS.md.</summary>
public class ArchitectureTests
{
    private static readonly Dictionary<string, string[]> Graph = new()
    {
        ["Analytics.Quantities"] = [],
        ["Analytics.Statistics"] = [],
        ["Analytics.Metrics"] = ["Analytics.Quantities", "Analytics.Statistics"],
        ["Analytics.Planning"] = ["Analytics.Metrics", "Analytics.Quantities", "Analytics.Statistics"],
        ["Analytics.Season"] = ["Analytics.Metrics", "Analytics.Planning", "Analytics.Quantities"],
        ["Analytics.Notebooks"] = ["Analytics.Metrics", "Analytics.Planning", "Analytics.Quantities", "Analytics.Season", "Analytics.Statistics"],
        ["Analytics.Runner"] = [],
        ["Analytics.Cli"] = ["Analytics.Metrics", "Analytics.Notebooks", "Analytics.Planning", "Analytics.Quantities", "Analytics.Runner", "Analytics.Season", "Analytics.Statistics"],
    };

    private static readonly Dictionary<string, string[]> Packages = new()
    {
        ["Analytics.Quantities"] = [],
        ["Analytics.Statistics"] = ["MathNet.Numerics"],
        ["Analytics.Metrics"] = [],
        ["Analytics.Planning"] = ["Google.OrTools"],
        ["Analytics.Season"] = ["CsvHelper", "ExcelDataReader", "Microsoft.Data.Analysis"],
        ["Analytics.Notebooks"] = ["Plotly.NET", "Plotly.NET.CSharp", "Plotly.NET.Interactive"],
        ["Analytics.Runner"] = ["Markdig", "Microsoft.CodeAnalysis.CSharp.Scripting", "Microsoft.DotNet.Interactive"],
        ["Analytics.Cli"] = ["Spectre.Console", "System.CommandLine"],
    };

    public static TheoryData<string> Projects => [.. Graph.Keys];

    /// <summary>Libraries that do no console, clock, culture or file work.</summary>
    public static TheoryData<string> PureLibraries => ["Analytics.Quantities", "Analytics.Statistics", "Analytics.Metrics", "Analytics.Planning", "Analytics.Notebooks"];

    [Fact]
    public void Source_Projects_AreThoseOfTheGraph()
        => Assert.Equal(Graph.Keys.Order(StringComparer.Ordinal),
            Repository.Sources("src", "*.csproj").Select(Path.GetFileNameWithoutExtension).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Projects))]
    public void Project_References_StayInsideTheGraph(string project)
    {
        var file = ProjectFile.Read(project);
        Assert.Empty(file.Projects.Except(Graph[project]));
        Assert.Empty(file.Packages.Except(Packages[project]));
    }

    // A reference can also come in through another project's: the compiled code tells.
    [Theory]
    [MemberData(nameof(Projects))]
    public void Assembly_References_StayInsideTheGraph(string project)
    {
        var used = Compiled(project).References;
        Assert.Empty(used.Where(r => r.StartsWith("Analytics.", StringComparison.Ordinal)).Except(Graph[project]));
    }

    [Theory]
    [MemberData(nameof(Projects))]
    public void Assembly_NotebookKernel_IsKnownToTheRunnerOnly(string project)
    {
        var used = Compiled(project).References.Where(r => r.StartsWith("Microsoft.CodeAnalysis", StringComparison.Ordinal) || r is "Microsoft.DotNet.Interactive" or "Microsoft.DotNet.Interactive.CSharp" or "Microsoft.DotNet.Interactive.Documents");
        if (project == "Analytics.Runner") return;
        Assert.Empty(used);
        Assert.DoesNotContain(ProjectFile.Read(project).Packages, p => p.StartsWith("Microsoft.DotNet.Interactive", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(PureLibraries))]
    public void Library_Members_AreNotConsoleClockCultureFileOrChance(string project)
        => Assert.DoesNotContain(Compiled(project).Members, OutsideWorld.Touches);

    [Theory]
    [MemberData(nameof(PureLibraries))]
    public void Library_NumbersInText_NameTheirCulture(string project) => Assert.Empty(Compiled(project).CultureBoundText);

    [Fact]
    public void TopLevel_Entries_AreTheAgreedOnes()
    {
        string[] agreed = ["Analytics.sln", "DEVELOPERS.md", "LICENSE", "README.md", "data-demo", "docs", "notebooks", "src", "tests"];
        string[] written = ["out", "publish", "TestResults"]; // git-ignored results
        var there = Directory.EnumerateFileSystemEntries(Repository.Root).Select(e => Path.GetFileName(e)).Where(e => !e.StartsWith('.'));
        Assert.Empty(there.Except(agreed).Except(written));
        Assert.Empty(agreed.Except(there));
    }

    [Fact]
    public void Solution_Projects_AreAllThereAre()
    {
        var solution = File.ReadAllText(Repository.Path("Analytics.sln")).Replace('\\', '/');
        var projects = Repository.Sources("src", "*.csproj").Concat(Repository.Sources("tests", "*.csproj"));
        Assert.DoesNotContain(projects, p => !solution.Contains($"\"{p}\"", StringComparison.Ordinal));
    }

    private static CompiledAssembly Compiled(string project) => CompiledAssembly.Read(project == "Analytics.Cli" ? "analytics" : project);
}
