using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Trials;
using Analytics.Runner;

namespace Analytics.Cli.Promoting;

/// <summary>Which folder of the library a metric goes into.</summary>
internal static class MetricFolder
{
    // Folders that hold something else than metrics.
    private static readonly string[] s_others = ["Bench", "Load", "Motion", "Trials", "Sketching", "Profile", "Seasons", "Transfer", "bin", "obj"];

    /// <summary>The folder asked for, or the usual one.</summary>
    /// <exception cref="NotebookException">There is no such folder.</exception>
    public static string Of(string? asked, MetricSketch sketch, Clone clone)
    {
        var folder = asked ?? Usual(sketch);
        var known = Directory.EnumerateDirectories(clone.Full(Clone.Library)).Select(d => Path.GetFileName(d)).Except(s_others).Order(StringComparer.Ordinal).ToList();
        return known.Contains(folder, StringComparer.Ordinal) ? folder
            : throw new NotebookException(Fault.Usage, $"There is no folder '{PlainLine.Of(folder)}' for metrics in {Clone.Library}. Give one of these with --folder: {string.Join(", ", known)}.");
    }

    private static string Usual(MetricSketch sketch)
    {
        if (sketch.Kind == typeof(LiftSet)) return "Strength";
        if (sketch.Kind == typeof(JumpTrial)) return "Jumping";
        if (sketch.Kind == typeof(SprintTrial)) return "Sprinting";
        if (sketch.Kind == typeof(AgilityTrial)) return "ChangeOfDirection";
        if (sketch.Kind == typeof(ThrowTrial) || sketch.Kind == typeof(StairTrial)) return "FieldPower";
        if (sketch.Kind == typeof(ContactTrial)) return "Contact";
        return sketch.Quality switch
        {
            Quality.Body => "Catalogue",
            Quality.MaximalStrength => "Strength",
            Quality.ReactiveAbility => "Jumping",
            Quality.Acceleration or Quality.MaximalSpeed or Quality.Momentum => "Sprinting",
            Quality.ChangeOfDirection => "ChangeOfDirection",
            _ => "FieldPower",
        };
    }
}
