namespace Analytics.Season.Tests.Support;

/// <summary>Finds files of the repository from where the tests run.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "Analytics.sln"))) return folder.FullName;
        throw new InvalidOperationException("Analytics.sln was not found above the tests.");
    }
}
