using System.Text.RegularExpressions;
using Analytics.Metrics.Catalogue;
using Analytics.Runner;

namespace Analytics.Cli.Promoting;

/// <summary>Whether the names of a new metric are free.</summary>
internal static class NameClashes
{
    /// <exception cref="NotebookException">The identifier, a file or a class is taken.</exception>
    public static void Check(Clone clone, PromotedName name, IReadOnlyList<string> files)
    {
        if (MetricCatalogue.All.FirstOrDefault(m => m.Id == name.Id) is { } known)
            throw Taken($"There is a metric '{name.Id}' already ({known.Label}).");
        foreach (var file in files)
        {
            if (Path.Exists(clone.Full(file))) throw Taken($"{file} is there already, and nothing is written over; if it comes of an earlier promotion, the line that one printed takes it back.");
            // Committed and deleted, or staged: undoing would touch what is not ours.
            if (clone.Git.Ask("ls-files", "--", file) != "" || clone.Git.Ask("ls-tree", "HEAD", "--", file) != "") throw Taken($"{file} is known to git although it is not there now.");
        }

        foreach (var (folder, type) in new[] { (Clone.Library, name.Class), (Clone.Tests, name.TestClass) })
        {
            if (Declaring(clone, folder, type) is { } place) throw Taken($"There is a class {type} already, in {place}.");
        }
    }

    // Two identifiers may give one class name (a_1b and a1_b do not, but first_10 and a file written by hand may).
    private static string? Declaring(Clone clone, string folder, string type)
    {
        var declaration = new Regex($@"\b(?:class|struct|record|interface|enum)\s+{type}\b");
        return Directory.EnumerateFiles(clone.Full(folder), "*.cs", SearchOption.AllDirectories)
            .Select(f => (File: f, Path: Path.GetRelativePath(clone.Root, f).Replace('\\', '/')))
            .Where(f => !f.Path.Split('/').Any(part => part is "bin" or "obj"))
            .FirstOrDefault(f => File.ReadAllText(f.File) is var text && text.Contains(type, StringComparison.Ordinal) && declaration.IsMatch(text)).Path;
    }

    private static NotebookException Taken(string what) => new(Fault.Usage, $"{what} Give another --name.");
}
