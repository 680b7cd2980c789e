namespace Analytics.Simulation.Tests.Demo;

/// <summary>The committed demo season.</summary>
internal static class RepositoryFiles
{
    public static string DemoFolder { get; } = CommittedStudy.InRepository("data-demo");
}
