using System.Text.RegularExpressions;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Trials;
using Analytics.Notebooks.Blocks;

namespace Analytics.Notebooks.Tests.OnTrial;

/// <summary>Sketches for the tests of reports, and how two texts of a block compare.</summary>
internal static partial class Sketches
{
    public const string Hostile = "<script>alert(1)</script> & \"q\"";

    public static MetricSketch Jump(string id = "jump_again", string label = "Jump again") => Sketch.Each<JumpTrial>(id, label, "cm", Direction.Higher, (20, 90), (jump, _) => jump.Height);

    public static MetricSketch JumpBySprint() => Sketch.Day("jump_by_sprint", "Jump by sprint", "m/s", Direction.Higher, (0.05, 1), day => day.Value("cmj_height") / day.Value("sprint_10m"));

    /// <summary>Fails for jumps between these heights in centimetres: for one athlete, say.</summary>
    public static MetricSketch FailsBetween(double low, double high) => Sketch.Each<JumpTrial>("fails", "Fails", "cm", Direction.Higher, (20, 90),
        (jump, _) => jump.Height?.Centimetres is { } h && h > low && h < high ? throw new InvalidOperationException("no such thing") : jump.Height);

    /// <summary>The text of a block, line by line, without what depends on the width of columns.</summary>
    public static IReadOnlyList<string> Lines(Block block)
        => [.. block.ToText().Split('\n').Select(l => Spaces().Replace(l, " ").Trim()).Where(l => l.Trim('-', '=').Length > 0)];

    /// <summary>The lines of the first that do not stand in the second in the same order.</summary>
    public static IReadOnlyList<string> Missing(Block without, Block with)
    {
        var rest = new Queue<string>(Lines(with));
        var missing = new List<string>();
        foreach (var line in Lines(without))
        {
            var kept = rest.ToList();
            while (rest.Count > 0 && rest.Peek() != line) rest.Dequeue();
            if (rest.Count > 0) rest.Dequeue();
            else (missing, rest) = ([.. missing, line], new Queue<string>(kept));
        }

        return missing;
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
