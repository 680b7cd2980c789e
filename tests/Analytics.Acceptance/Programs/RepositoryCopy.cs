namespace Analytics.Acceptance.Programs;

/// <summary>
/// A temporary copy of this repository as it lies on the disk: what is tracked and what is new, uncommitted changes included, without what is ignored
/// (bin, obj, out). It is a git folder of its own, so that <c>git apply</c> works in it. Deleted in the end.
/// </summary>
internal sealed class RepositoryCopy : IDisposable
{
    private RepositoryCopy(string root) => Root = root;

    public string Root { get; }

    public static RepositoryCopy Make()
    {
        var copy = new RepositoryCopy(Directory.CreateTempSubdirectory("analytics-copy-").FullName);
        foreach (var file in Git(Repository.Root, "ls-files", "-co", "--exclude-standard", "-z").Split('\0', StringSplitOptions.RemoveEmptyEntries).Distinct())
        {
            // Deleted but not yet committed.
            if (!File.Exists(Path.Combine(Repository.Root, file))) continue;
            Directory.CreateDirectory(Path.GetDirectoryName(copy.In(file))!);
            File.Copy(Path.Combine(Repository.Root, file), copy.In(file));
        }

        Git(copy.Root, "init", "--quiet");
        return copy;
    }

    public string In(string path) => Path.Combine(Root, path);

    public string Read(string path) => File.ReadAllText(In(path));

    /// <summary>Writes a file; its folder is made.</summary>
    public void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(In(path))!);
        File.WriteAllText(In(path), text);
    }

    /// <summary>Applies a unified diff.</summary>
    /// <returns>Null, or why it does not apply in git's words; then nothing has changed.</returns>
    public string? Apply(string diff) => Apply(Root, diff);

    /// <summary>Applies a unified diff to a folder, or only checks whether it would.</summary>
    public static string? Apply(string folder, string diff, params string[] options)
    {
        var file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file, diff);
            var (code, said, error) = Running.Run("git", ["apply", .. options, file], folder);
            return code == 0 ? null : (said + error).Trim();
        }
        finally
        {
            File.Delete(file);
        }
    }

    /// <summary>Runs dotnet in the copy, as from a fresh terminal: a test run's own build settings do not leak into it.</summary>
    public (int Code, string Said) Dotnet(IReadOnlyDictionary<string, string?> environment, params IEnumerable<string> arguments)
    {
        var clean = Environment.GetEnvironmentVariables().Keys.Cast<string>()
            .Where(n => n.StartsWith("MSBuild", StringComparison.OrdinalIgnoreCase) || n.StartsWith("VSTEST", StringComparison.OrdinalIgnoreCase))
            .ToDictionary(n => n, _ => (string?)null);
        clean["MSBUILDDISABLENODEREUSE"] = "1";
        clean["DOTNET_CLI_UI_LANGUAGE"] = "en";
        foreach (var (name, value) in environment) clean[name] = value;
        var (code, said, error) = Running.Run("dotnet", arguments, Root, clean);
        return (code, said + error);
    }

    public void Dispose() => Directory.Delete(Root, recursive: true);

    private static string Git(string folder, params string[] arguments)
    {
        var (code, said, error) = Running.Run("git", arguments, folder);
        return code == 0 ? said : throw new InvalidOperationException($"git {string.Join(' ', arguments)} in {folder}: {error}");
    }
}
