namespace Analytics.Cli.Tests.Promoting;

/// <summary>Sketches as somebody would write them.</summary>
internal static class Ideas
{
    public const string ForSize = """
        var forSize = Sketch.Each<JumpTrial>("long_jump_for_size", "Long jump for size", unit: "1", Direction.Higher, believe: (0.8, 2.2),
            (jump, day) => jump.Kind == JumpKind.StandingLong ? jump.Distance / day.Stature : null) with { Rule = TrialRule.Best, Meaning = "How far the body is thrown for its length." };
        """;

    /// <summary>A sketch of the distance jumped with another formula.</summary>
    public static string Jump(string formula, string with = "Meaning = \"How far.\"", string unit = "m")
        => $"var idea = Sketch.Each<JumpTrial>(\"idea\", \"An idea\", \"{unit}\", Direction.Higher, (0.1, 5), {formula}) with {{ {with} }};";
}
