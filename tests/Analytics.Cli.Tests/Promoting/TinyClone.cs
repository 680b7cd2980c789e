using System.Diagnostics;
using Analytics.Cli.Tests.Architecture;
using Analytics.Metrics.Catalogue;

namespace Analytics.Cli.Tests.Promoting;

/// <summary>What a promotion looks at of a clone, under git with one commit: no code is built in it.</summary>
internal sealed class TinyClone : IDisposable
{
    private static readonly string[] s_folders = ["Catalogue", "Jumping", "Sprinting", "Strength", "Bench", "Sketching", "Trials"];

    private readonly TempFolder folder = new();

    public TinyClone()
    {
        Write("Analytics.sln", "");
        foreach (var name in s_folders)
        {
            Write($"src/Analytics.Metrics/{name}/Some.cs", $"namespace Analytics.Metrics.{name};\n\ninternal static class Some;\n");
            Write($"tests/Analytics.Metrics.Tests/{name}/SomeTests.cs", $"namespace Analytics.Metrics.Tests.{name};\n\npublic class SomeTests;\n");
        }

        Write("docs/metrics.md", CatalogueDocument.Write());
        foreach (var file in new[] { "src/Analytics.Metrics/Catalogue/AddedMetrics.cs", "docs/references.md" }) Write(file, File.ReadAllText(Repository.Path(file)));
        Write("docs/changelog.md", "# Changelog\n\n## 0.2.0\n\n- One thing\n  in two lines.\n\n## 0.1.0\n\nFirst.\n");
        foreach (var file in Directory.EnumerateFiles(Repository.Path("tests/oracles/frozen-season/season"), "*", SearchOption.AllDirectories))
        {
            var target = In(Path.GetRelativePath(Repository.Root, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }

        Git("init", "--quiet");
        Commit();
    }

    public string Root => Directory.CreateDirectory(folder.File("clone")).FullName;

    /// <summary>What differs from the commit, new files included.</summary>
    public string Status => Git("status", "--porcelain", "--untracked-files=all");

    public string In(string path) => Path.Combine(Root, path);

    public string Read(string path) => File.ReadAllText(In(path));

    public void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(In(path))!);
        File.WriteAllText(In(path), text);
    }

    public void Commit()
    {
        Git("add", "--all");
        Git("-c", "user.name=t", "-c", "user.email=t@example.org", "-c", "commit.gpgsign=false", "commit", "--quiet", "--message", "As it was");
    }

    /// <summary>Writes a file outside the clone.</summary>
    public string Ideas(string code, string name = "ideas.csx")
    {
        File.WriteAllText(folder.File(name), code);
        return folder.File(name);
    }

    /// <summary>Promotes without building.</summary>
    public Task<Heard> PromoteAsync(string file, params string[] more) => Heard.RunAsync(["promote", file, "--repository", Root, "--no-tests", .. more]);

    public string Git(params string[] arguments)
    {
        using var git = Process.Start(new ProcessStartInfo("git", ["-C", Root, .. arguments]) { RedirectStandardOutput = true })!;
        var said = git.StandardOutput.ReadToEnd();
        git.WaitForExit();
        return git.ExitCode == 0 ? said : throw new InvalidOperationException($"git {string.Join(' ', arguments)} ended with {git.ExitCode}");
    }

    public void Dispose()
    {
        // Git makes its objects read-only.
        foreach (var file in Directory.EnumerateFiles(folder.Path, "*", SearchOption.AllDirectories)) File.SetAttributes(file, FileAttributes.Normal);
        folder.Dispose();
    }
}
