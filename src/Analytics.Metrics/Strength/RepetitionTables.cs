namespace Analytics.Metrics.Strength;

/// <summary>Printed tables and charts in use. They differ, so they stay apart.</summary>
public static class RepetitionTables
{
    /// <summary>The textbook's load-assignment table: 1–12 and 15 repetitions; 13 and 14 are not printed.</summary>
    public static RepetitionTable Textbook { get; } = new(
        "Textbook table", "baechle2008", "1–10 seen in print; 11, 12 and 15 from memory",
        (1, 100), (2, 95), (3, 93), (4, 90), (5, 87), (6, 85), (7, 83), (8, 80), (9, 77), (10, 75), (11, 70), (12, 67), (15, 65));

    /// <summary>A divergent copy of <see cref="Textbook"/> that ends 11 → 73 and 12 → 70.</summary>
    public static RepetitionTable TextbookCopy { get; } = new(
        "Divergent copy of the textbook table", "baechle2008", "seen as a copy; its last two rows differ from the original",
        (1, 100), (2, 95), (3, 93), (4, 90), (5, 87), (6, 85), (7, 83), (8, 80), (9, 77), (10, 75), (11, 73), (12, 70));

    /// <summary>A chart common in weight rooms (common practice, no source).</summary>
    public static RepetitionTable WeightRoom { get; } = new(
        "Weight-room chart", null, "common practice, no source",
        (1, 100), (2, 95), (3, 90), (4, 88), (5, 86), (6, 83), (7, 80), (8, 78), (9, 76), (10, 75), (11, 72), (12, 70));

    /// <summary>
    /// A coaches' chart for sets rated by effort, as a function of repetitions + repetitions in reserve, in half steps:
    /// practice literature of powerlifting coaching, not a peer-reviewed result.
    /// </summary>
    public static RepetitionTable RatedEffort { get; } = new(
        "Coaches' chart for rated sets", "tuchscherer2008", "practice literature, not peer reviewed",
        (1, 100), (1.5, 97.8), (2, 95.5), (2.5, 93.9), (3, 92.2), (3.5, 90.7), (4, 89.2), (4.5, 87.8), (5, 86.3), (5.5, 85.0),
        (6, 83.7), (6.5, 82.4), (7, 81.1), (7.5, 79.9), (8, 78.6), (8.5, 77.4), (9, 76.2), (9.5, 75.1), (10, 73.9), (10.5, 72.3),
        (11, 70.7), (11.5, 69.4), (12, 68.0), (12.5, 66.7), (13, 65.3), (13.5, 64.0), (14, 62.6), (14.5, 61.3), (15, 60.0),
        (15.5, 58.6), (16, 57.4));

    /// <summary>All tables and charts.</summary>
    public static IReadOnlyList<RepetitionTable> All { get; } = [Textbook, TextbookCopy, WeightRoom, RatedEffort];
}
