using Analytics.Runner;

namespace Analytics.Cli.Promoting;

/// <summary>A clone of this program's repository.</summary>
internal sealed class Clone
{
    public const string Library = "src/Analytics.Metrics", Tests = "tests/Analytics.Metrics.Tests";

    public const string AddedMetrics = "src/Analytics.Metrics/Catalogue/AddedMetrics.cs";

    public const string MetricsPage = "docs/metrics.md", References = "docs/references.md", Changelog = "docs/changelog.md";

    public const string FrozenSeason = "tests/oracles/frozen-season/season";

    private static readonly string[] s_parts = ["Analytics.sln", Library, Tests, AddedMetrics, MetricsPage, References, Changelog, FrozenSeason];

    private Clone(string root) => (Root, Git) = (root, new Git(root));

    /// <summary>Full path of its folder.</summary>
    public string Root { get; }

    public Git Git { get; }

    /// <summary>The full path of a file or folder of the clone.</summary>
    public string Full(string path) => Path.Combine(Root, path.Replace('/', Path.DirectorySeparatorChar));

    /// <summary>The text of a file of the clone.</summary>
    public string Read(string path) => File.ReadAllText(Full(path));

    /// <summary>Finds the clone a folder lies in.</summary>
    /// <exception cref="NotebookException">It lies in none, or not in a whole one.</exception>
    public static Clone Find(string folder)
    {
        for (var at = new DirectoryInfo(Path.GetFullPath(folder)); at is not null; at = at.Parent)
        {
            if (File.Exists(Path.Combine(at.FullName, s_parts[0]))) return Checked(new Clone(at.FullName));
        }

        throw new NotebookException(Fault.Data, $"'{folder}' is not in a clone of this program's repository, whose code a new metric becomes part of. Clone it, and name the folder with --repository.");
    }

    private static Clone Checked(Clone clone)
    {
        if (s_parts.FirstOrDefault(p => !Path.Exists(clone.Full(p))) is { } missing)
            throw new NotebookException(Fault.Data, $"'{clone.Root}' is no whole clone of this program's repository: {missing} is missing. Bring the clone up to date, or name another one with --repository.");
        // At the top of a working copy the way from the top is empty.
        return clone.Git.Ask("rev-parse", "--show-prefix") == "" && clone.Git.Ask("rev-parse", "--verify", "HEAD") is not null ? clone
            : throw new NotebookException(Fault.Data, $"'{clone.Root}' is not under git with a commit, so what is written there could not be undone. Clone the repository with git, and name the folder with --repository.");
    }
}
