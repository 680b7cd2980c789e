using Analytics.Cli.Sketching;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Quantities;
using Analytics.Runner;
using Analytics.Runner.Kernels;
using Analytics.Runner.Sources;

namespace Analytics.Cli.Promoting;

/// <summary>The sketches of a file, evaluated.</summary>
internal static class SketchFile
{
    // All of a notebook's sketches together take far less.
    private static readonly TimeSpan s_limit = TimeSpan.FromSeconds(60);

    /// <summary>Evaluates a file and picks one of its sketches.</summary>
    /// <param name="asked">The file, with <c>#ID</c> behind it where there are several.</param>
    /// <exception cref="NotebookException">There is no such sketch, or several could be meant.</exception>
    public static async Task<MetricSketch> PickAsync(string asked)
    {
        var at = File.Exists(asked) ? -1 : asked.LastIndexOf('#');
        var (path, id) = at < 0 ? (asked, null) : (asked[..at], asked[(at + 1)..]);
        var source = SketchSource.Read(path);
        var evaluation = new CodeEvaluation(new HostAssemblies(AppContext.BaseDirectory), Path.GetDirectoryName(Path.GetFullPath(path))!, SketchSource.Namespaces, [typeof(Metric).Assembly, typeof(AnyQuantity).Assembly]);
        var sketches = (await evaluation.ValuesAsync(source.File.Parts, source.Names, s_limit).ConfigureAwait(false)).OfType<MetricSketch>().ToList();
        var found = sketches.Where(s => id is null || s.Id == id).ToList();
        if (found.Count == 1) return found[0];
        var name = source.File.Name;
        var all = string.Join(", ", sketches.Select(s => PlainLine.Of(s.Id)));
        throw new NotebookException(Fault.Usage,
            found.Count == 0 ? $"'{name}' has no sketch '{PlainLine.Of(id ?? "")}'. It has: {all}."
            : id is null ? $"'{name}' has {found.Count} sketches: {all}. Say which one, for example '{name}#{PlainLine.Of(found[0].Id)}'."
            : $"'{name}' has {found.Count} sketches with the identifier '{PlainLine.Of(id)}'. Give each its own.");
    }
}
