using Analytics.Runner;
using Analytics.Runner.Sources;

namespace Analytics.Cli.Sketching;

/// <summary>Files given with <c>--with</c> as cells of a notebook: what a sketch needs, its code, and the report that takes it in.</summary>
internal static class SketchCells
{
    /// <summary>Tag of the notebook cell that opens the report, and the name of the variable it declares.</summary>
    private const string Report = "report";

    /// <summary>Reads the files.</summary>
    /// <param name="paths">The files, in the order given; may be none.</param>
    /// <returns>What to put into the notebook; null when no file was given.</returns>
    /// <exception cref="NotebookException">A file cannot be used, or two have one name.</exception>
    public static InsertedCode? From(IReadOnlyList<string> paths)
    {
        if (paths.Count == 0) return null;
        List<SketchSource> sources = [.. paths.Select(SketchSource.Read)];
        if (sources.GroupBy(s => s.File.Name, StringComparer.OrdinalIgnoreCase).FirstOrDefault(g => g.Count() > 1) is { } twice)
            throw new NotebookException(Fault.Usage, $"--with is given '{twice.Key}' twice. Give each file once; of two files with one name rename one.");
        return new()
        {
            AfterTag = Report,
            Variable = Report,
            Files = [.. sources.Select(s => s.File)],
            Parts = [new($"usings for {sources[0].File.Parts[0].Place}", string.Join('\n', SketchSource.Namespaces.Select(n => $"using {n};"))), .. sources.SelectMany(Cells)],
        };
    }

    // After each file, so that names of the next cannot hide those of this one.
    private static IEnumerable<CodePart> Cells(SketchSource source)
        => [.. source.File.Parts, new($"report with {source.File.Parts[0].Place}", $"{Report} = {Report}.With({string.Join(", ", source.Names)});")];
}
