using Analytics.Metrics.Catalogue;
using Analytics.Runner;

namespace Analytics.Cli.Promoting;

/// <summary>Whether a clone is in a state in which a metric can be added and taken out again.</summary>
internal static class CloneState
{
    /// <exception cref="NotebookException">Files to be changed are not as committed, or this program was built from other code.</exception>
    public static void Check(Clone clone)
    {
        string[] edited = [Clone.AddedMetrics, Clone.MetricsPage, Clone.Changelog];
        var changed = edited.Where(path => clone.Git.Ask("status", "--porcelain", "--", path) != "").ToList();
        if (changed.Count > 0)
            throw new NotebookException(Fault.Data, $"Not committed: {string.Join(", ", changed)}. A promotion changes {(changed.Count == 1 ? "this file" : "these files")}, and undoing it would lose your changes. Commit or stash them first.");
        // The page is written from the catalogue inside this program.
        if (clone.Read(Clone.MetricsPage).ReplaceLineEndings("\n") != CatalogueDocument.Write())
            throw new NotebookException(Fault.Data, $"{Clone.MetricsPage} does not tell the metrics this program knows: it was built from other code than that of '{clone.Root}', or the page is out of date. Build it again (dotnet build src/Analytics.Cli -c Release) or rewrite the page as its head says.");
    }
}
