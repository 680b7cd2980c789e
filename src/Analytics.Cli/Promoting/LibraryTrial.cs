using Analytics.Metrics.Catalogue;
using Analytics.Quantities;
using Analytics.Runner;
using Analytics.Runner.Sources;

namespace Analytics.Cli.Promoting;

/// <summary>The new source file on trial: compiled in memory before anything is written, its metric taken out.</summary>
internal static class LibraryTrial
{
    /// <summary>Compiles a source file.</summary>
    /// <param name="source">The file; using directives it does not need are taken out.</param>
    /// <param name="className">Its class.</param>
    /// <returns>The source without those directives, and the metric.</returns>
    /// <exception cref="NotebookException">It does not compile.</exception>
    public static (string Source, Metric Metric) Of(string source, string className)
    {
        var file = LibraryFile.Compile(source, [typeof(Metric).Assembly, typeof(AnyQuantity).Assembly]);
        if (file.Errors is [var (line, message), ..])
        {
            throw new NotebookException(Fault.Data, $"""
                The formula does not stand alone in the library: {message}
                  {source.Split('\n')[line - 1].Trim()}
                It may use its trial, its day and public members of the library, nothing declared beside it, and must compile without warnings. Change the sketch and promote again.
                """);
        }

        var lines = source.Split('\n').Where((_, i) => !file.UnneededUsings.Contains(i + 1));
        var metric = file.Assembly!.GetTypes().Single(t => t.Name == className).GetProperty(nameof(Metric))!.GetValue(null);
        return (string.Join('\n', lines), (Metric)metric!);
    }
}
