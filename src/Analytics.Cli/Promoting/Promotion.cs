using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Runner;
using Analytics.Runner.Sources;

namespace Analytics.Cli.Promoting;

/// <summary>From a sketch to the files that make it a metric of the library. Everything is checked here; nothing is written.</summary>
internal static class Promotion
{
    /// <summary>Words a reason to waive has at least, as in the tests' <c>PublishedCheck</c>.</summary>
    private const int WordsOfAReason = 3;

    /// <exception cref="NotebookException">Something is in the way; the message says what and what to do.</exception>
    public static async Task<PromotionPlan> PlanAsync(PromoteOptions options)
    {
        var name = PromotedName.Of(options.Name);
        var waive = options.Waive is { } reason ? PlainWords.Reason("--waive", reason, WordsOfAReason) : null;
        var sketch = await SketchFile.PickAsync(options.File).ConfigureAwait(false);
        var clone = Clone.Find(options.Repository);
        var folder = MetricFolder.Of(options.Folder, sketch, clone);
        string source = $"{Clone.Library}/{folder}/{name.Class}.cs", tests = $"{Clone.Tests}/{folder}/{name.TestClass}.cs";
        NameClashes.Check(clone, name, [source, tests]);
        CloneState.Check(clone);
        var values = SketchOnFrozenSeason.Values(sketch, clone, out var days);
        if (!LambdaText.Is(sketch.Written))
            throw new NotebookException(Fault.Data, $"The formula of '{sketch.Id}' is '{PlainLine.Of(sketch.Written)}', which stands somewhere else. Write it as a lambda into Sketch.{(sketch.Kind is null ? "Day" : "Each")}(...), so that it can be carried over.");

        // With the formula in words given, nobody else would look at that in C#.
        PlainWords.OneLine("The formula in C#", sketch.Written);
        var said = MetricTexts.Of(sketch, name, options, clone);
        var (code, metric) = LibraryTrial.Of(MetricSource.Write(said, sketch, folder, name.Class), name.Class);
        SketchOnFrozenSeason.Same(values, FrozenValues.Of(metric, days), metric);
        var rows = FrozenValues.Spread(values);
        var files = new List<PlannedFile>
        {
            new(source, code, true),
            new(tests, TestSource.Write(metric, name, folder, rows, waive), true),
            new(Clone.AddedMetrics, AddedList.With(clone.Read(Clone.AddedMetrics), folder, name.Class, sketch), false),
            new(Clone.MetricsPage, CatalogueDocument.Write(MetricCatalogue.All.Append(metric)), false),
        };
        if (ChangelogText.With(clone.Read(Clone.Changelog), $"New metric: {metric.Label} (`{metric.Id}`), which began as a sketch.") is { } changelog)
            files.Add(new(Clone.Changelog, changelog, false));
        return new(clone, files)
        {
            Name = name,
            Folder = folder,
            IsFormulaCode = options.Formula is null && sketch.Formula.Length == 0,
            Values = (values.Count, rows.Count, values.Count(v => v.Value < metric.PlausibleLow || v.Value > metric.PlausibleHigh)),
        };
    }
}
