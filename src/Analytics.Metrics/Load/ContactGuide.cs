namespace Analytics.Metrics.Load;

/// <summary>
/// Foot contacts of one plyometric session by experience, as textbooks give them [baechle2008; from memory]: a guide for planning, conservative, no limit proven
/// by trial. Heavy players do less; 48 to 72 h between sessions.
/// </summary>
/// <param name="Level">Experience with jump training.</param>
/// <param name="Low">Fewest contacts of a session.</param>
/// <param name="High">Most contacts of a session.</param>
public sealed record ContactGuide(string Level, int Low, int High)
{
    /// <summary>The three levels.</summary>
    public static IReadOnlyList<ContactGuide> All { get; } = [new("no experience", 80, 100), new("some experience", 100, 120), new("much experience", 120, 140)];
}
