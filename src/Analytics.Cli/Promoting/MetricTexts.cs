using System.Globalization;
using System.Text.RegularExpressions;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Runner;

namespace Analytics.Cli.Promoting;

/// <summary>What the new metric says about itself: the sketch's words, or those of the command line.</summary>
internal static partial class MetricTexts
{
    private const int MostDecimals = 4;

    /// <summary>The metric with its texts; its values are those of the sketch.</summary>
    /// <exception cref="NotebookException">A text is missing, is taken, or holds what cannot be seen; or a source is not in the references.</exception>
    public static Metric Of(MetricSketch sketch, PromotedName name, PromoteOptions options, Clone clone)
    {
        var label = PlainWords.OneLine("The label", options.Label ?? sketch.Label);
        var meaning = PlainWords.OneLine("The meaning", options.Meaning ?? sketch.Meaning);
        var formula = PlainWords.OneLine("The formula in words", options.Formula ?? sketch.Metric.Formula).TrimEnd('.');
        if (label.Length == 0) throw new NotebookException(Fault.Usage, "The metric needs a label. Give one with --label \"...\".");
        if (meaning.Length == 0) throw new NotebookException(Fault.Usage, "The sketch does not say what it means. Give it a Meaning, or say it with --meaning \"...\": what it measures, in one plain sentence.");
        if (formula.Length == 0) throw new NotebookException(Fault.Usage, "--formula is empty; give the formula in words, symbols with units, or leave the option out.");
        if (MetricCatalogue.All.FirstOrDefault(m => m.Label == label) is { } known) throw new NotebookException(Fault.Usage, $"The label '{label}' is that of the metric '{known.Id}'. Give another one with --label \"...\".");
        if (label.Contains($"[{sketch.Unit}]", StringComparison.Ordinal)) throw new NotebookException(Fault.Usage, $"The label '{label}' holds the unit, which every table puts beside it. Give one without with --label \"...\".");
        if (sketch.Metric.Decimals is < 0 or > MostDecimals)
            throw new NotebookException(Fault.Data, string.Create(CultureInfo.InvariantCulture, $"The sketch shows {sketch.Metric.Decimals} decimals; 0 to {MostDecimals} can be shown. Set Decimals, or choose a unit in which the values are larger."));
        Sources(sketch.Sources, clone);
        return sketch.Metric with
        {
            Id = name.Id,
            Label = label,
            Unit = PlainWords.OneLine("The unit", sketch.Unit),
            RuleReason = PlainWords.OneLine("The reason of the rule", sketch.RuleReason),
            Meaning = meaning.EndsWith('.') ? meaning : meaning + ".",
            Formula = formula,
            IsTrial = false,
        };
    }

    private static void Sources(IReadOnlyList<string> sources, Clone clone)
    {
        var known = Listed().Matches(clone.Read(Clone.References)).Select(m => m.Groups[1].Value).ToHashSet(StringComparer.Ordinal);
        if (sources.FirstOrDefault(s => !known.Contains(s)) is not { } missing) return;
        throw new NotebookException(Fault.Data, $"The source '{PlainLine.Of(missing)}' is not in {Clone.References}. Add a line '- **{PlainLine.Of(missing)}** Authors (year). Title. Journal volume:pages.' in the order of the keys (small letters and digits, as smith2020), and promote again.");
    }

    [GeneratedRegex(@"^- \*\*([a-z0-9]+)\*\*", RegexOptions.Multiline)]
    private static partial Regex Listed();
}
