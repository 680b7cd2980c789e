using System.Text;
using Analytics.Cli.Sketching;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Runner.Sources;

namespace Analytics.Cli.Promoting;

/// <summary>Writes the source file of a metric in the house's style.</summary>
internal static class MetricSource
{
    private const string Head = "        FromTrials = ";

    /// <summary>The file; it may hold using directives that nothing needs.</summary>
    /// <param name="metric">What the metric is called and says.</param>
    /// <param name="sketch">Where its formula is from.</param>
    /// <param name="folder">Folder of the library.</param>
    /// <param name="className">The class.</param>
    public static string Write(Metric metric, MetricSketch sketch, string folder, string className)
    {
        var text = new StringBuilder();
        foreach (var name in SketchSource.Namespaces.Where(n => n != "Analytics.Metrics." + folder)) text.Append("using ").Append(name).Append(";\n");
        text.Append("\nnamespace Analytics.Metrics.").Append(folder).Append(";\n\n")
            .Append(CSharpText.Summary($"{metric.Label}. {metric.Meaning}", 0))
            .Append("public static class ").Append(className).Append("\n{\n")
            .Append(CSharpText.Summary($"{metric.Label}, {Unit(metric.Unit)}.", 4))
            .Append("    public static Metric Metric { get; } = new()\n    {\n");
        Line(text, "Id", CSharpText.Literal(metric.Id));
        Line(text, "Label", CSharpText.Literal(metric.Label));
        Line(text, "Unit", CSharpText.Literal(metric.Unit));
        Line(text, "Decimals", CSharpText.Number(metric.Decimals));
        Line(text, "Better", $"Direction.{metric.Better}");
        Line(text, "Quality", $"Quality.{metric.Quality}");
        Line(text, "Rule", $"TrialRule.{metric.Rule}");
        if (metric.RuleReason.Length > 0) Line(text, "RuleReason", CSharpText.Literal(metric.RuleReason));
        text.Append(Head).Append(Formula(metric.Unit, sketch)).Append(",\n");
        Line(text, "PlausibleLow", CSharpText.Number(metric.PlausibleLow));
        Line(text, "PlausibleHigh", CSharpText.Number(metric.PlausibleHigh));
        Line(text, "Meaning", CSharpText.Literal(metric.Meaning));
        Line(text, "Formula", CSharpText.Literal(metric.Formula));
        Line(text, "Sources", $"[{string.Join(", ", metric.Sources.Select(CSharpText.Literal))}]");
        return text.Append("    };\n}\n").ToString();
    }

    private static string Formula(string unit, MetricSketch sketch)
    {
        var kind = sketch.Kind is { } trial ? $"Each<{trial.Name}>" : "Day";
        return $"AttemptFormula.{kind}({CSharpText.Literal(unit)}, {LambdaText.Laid(sketch.Written, 12)}).Of";
    }

    private static string Unit(string unit) => unit == "1" ? "a number without unit" : "in " + unit;

    private static void Line(StringBuilder text, string name, string value) => text.Append("        ").Append(name).Append(" = ").Append(value).Append(",\n");
}
