using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Trials;
using Analytics.Runner;

namespace Analytics.Cli.Promoting;

/// <summary>The list of metrics that began as sketches, as source text.</summary>
internal static class AddedList
{
    private const string End = "    ];";

    /// <summary>The source with one more line.</summary>
    /// <param name="source">The source as it is.</param>
    /// <param name="folder">Folder of the metric.</param>
    /// <param name="className">Its class.</param>
    /// <param name="sketch">What it was; tells what the test costs.</param>
    /// <exception cref="NotebookException">The list is not where it should be.</exception>
    public static string With(string source, string folder, string className, MetricSketch sketch)
    {
        var at = source.LastIndexOf("\n" + End, StringComparison.Ordinal);
        if (at < 0 || source.IndexOf(End, StringComparison.Ordinal) != at + 1)
            throw new NotebookException(Fault.Data, $"{Clone.AddedMetrics} does not hold one list that ends with a line '{End.Trim()}', so the new metric has no place in it. Bring the file back to its form.");
        var line = source[..(at + 1)].EndsWith("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        return source.Insert(at + 1, $"        new({Reference(folder, className)}, {CSharpText.Literal(Test(sketch.Kind))}{(sketch.Minutes is > 0 and var minutes ? ", " + CSharpText.Number(minutes) : "")}),{line}");
    }

    private static string Test(Type? kind) => kind?.Name switch
    {
        nameof(LiftSet) => "lifts",
        nameof(JumpTrial) => "jumps",
        nameof(SprintTrial) => "sprints",
        nameof(AgilityTrial) => "runs with turns",
        nameof(ThrowTrial) => "throws",
        nameof(StairTrial) => "stair run",
        nameof(ContactTrial) => "contact drill on film",
        nameof(BodyMeasure) => "body mass on a scale",
        _ => "other tests of the day",
    };

    // The list stands in the namespace of the catalogue, from where the other folders are seen by their last name.
    private static string Reference(string folder, string className)
        => typeof(MetricCatalogue).Namespace!.EndsWith("." + folder, StringComparison.Ordinal) ? $"{className}.Metric" : $"{folder}.{className}.Metric";
}
