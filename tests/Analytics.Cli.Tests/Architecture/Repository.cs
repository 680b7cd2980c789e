namespace Analytics.Cli.Tests.Architecture;

/// <summary>Files of the working copy the tests run from.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    public static string Path(params string[] parts) => System.IO.Path.Combine([Root, .. parts]);

    /// <summary>Source files under a folder, build output left out; path from the root with forward slashes.</summary>
    public static IEnumerable<string> Sources(string folder, string pattern)
        => Directory.EnumerateFiles(Path(folder), pattern, SearchOption.AllDirectories)
            .Select(f => System.IO.Path.GetRelativePath(Root, f).Replace('\\', '/'))
            .Where(f => !f.Split('/').Any(part => part is "bin" or "obj"));

    private static string Find()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
            if (File.Exists(System.IO.Path.Combine(at.FullName, "Analytics.sln"))) return at.FullName;
        throw new DirectoryNotFoundException($"No Analytics.sln above {AppContext.BaseDirectory}; run the tests inside the working copy.");
    }
}
