using System.Runtime.CompilerServices;

namespace Analytics.Simulation.Tests.Demo;

/// <summary>Finds the committed demo season from the place of this source file.</summary>
internal static class RepositoryFiles
{
    public static string DemoFolder { get; } = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Here())!, "../../../data-demo"));

    private static string Here([CallerFilePath] string path = "") => path;
}
