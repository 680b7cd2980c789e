using System.Globalization;
using Analytics.Runner;
using Analytics.Runner.Sources;

namespace Analytics.Cli.Sketching;

/// <summary>A file with sketches of metrics: the code and the names of the variables that hold a sketch.</summary>
/// <param name="File">The file with its digest and the code.</param>
/// <param name="Names">Names of the sketches, in order, each once.</param>
internal sealed record SketchSource(CodeFile File, IReadOnlyList<string> Names)
{
    /// <summary>Tag of the notebook cells with sketches.</summary>
    public const string Tag = "sketch";

    /// <summary>Namespaces a sketch may use without a using.</summary>
    public static IReadOnlyList<string> Namespaces { get; } =
    [
        "Analytics.Metrics.Catalogue", "Analytics.Metrics.ChangeOfDirection", "Analytics.Metrics.Contact", "Analytics.Metrics.FieldPower", "Analytics.Metrics.Jumping",
        "Analytics.Metrics.Sketching", "Analytics.Metrics.Sprinting", "Analytics.Metrics.Strength", "Analytics.Metrics.Trials", "Analytics.Quantities",
    ];

    private static readonly string[] s_copies = ["BestOf", "MeanOf"];

    /// <summary>Reads a file: a notebook, of which the cells tagged <see cref="Tag"/> count, or C#.</summary>
    /// <param name="path">The file.</param>
    /// <exception cref="NotebookException">The file cannot be used; the message says what to do.</exception>
    public static SketchSource Read(string path)
    {
        var file = CodeFile.Read(path, Tag);
        foreach (var part in file.Parts)
        {
            if (TopLevelCode.SyntaxError(part.Code) is { } error)
                throw new NotebookException(Fault.Data, string.Create(CultureInfo.InvariantCulture, $"{part.Place}, line {error.Line}: {error.Message}"));
        }

        var names = NamesIn(file.Parts);
        return names.Count > 0 ? new(file, names)
            : throw new NotebookException(Fault.Usage, $"'{file.Name}' declares no sketch{(file.Parts.Count > 0 && !IsScript(file) ? $" in its cells tagged '{Tag}'" : "")}. Write one at the top level of the code: var idea = Sketch.Each<JumpTrial>(...);");
    }

    // By syntax: "var a = Sketch.Each(...)", and what is made of a known one, "a.BestOf()", "a with { ... }".
    private static List<string> NamesIn(IEnumerable<CodePart> parts)
    {
        var names = new List<string>();
        foreach (var variable in parts.SelectMany(p => TopLevelCode.Variables(p.Code)))
        {
            // A name declared again holds what it was given last.
            var isSketch = IsSketch(variable, names);
            names.Remove(variable.Name);
            if (isSketch) names.Add(variable.Name);
        }

        return names;
    }

    private static bool IsSketch(TopLevelVariable variable, List<string> known) => variable.Root == nameof(Metrics.Sketching.Sketch)
        ? variable.Members.Count > 0 && variable.Members.Skip(1).All(s_copies.Contains)
        : known.Contains(variable.Root) && variable.Members.All(s_copies.Contains) && (variable.Members.Count > 0 || variable.IsChangedCopy);

    private static bool IsScript(CodeFile file) => file.Name.EndsWith(CodeFile.ScriptEnding, StringComparison.OrdinalIgnoreCase);
}
