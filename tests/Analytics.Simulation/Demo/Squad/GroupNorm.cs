namespace Analytics.Simulation.Demo.Squad;

/// <summary>
/// What is usual in a position group of a college-level squad. Magnitudes follow published football samples
/// (Fry and Kraemer 1991 for lifts and jump) and a public table of combine results for the order of the groups,
/// set a little slower; they are chosen, not estimated.
/// </summary>
public sealed record GroupNorm(string Group, IReadOnlyList<string> Positions)
{
    public required double StatureInches { get; init; }
    public required double MassPounds { get; init; }
    public required double MassDeviation { get; init; }
    public required double SquatPounds { get; init; }
    public required double BenchPounds { get; init; }
    public required double CleanPounds { get; init; }
    public required double JumpInches { get; init; }
    public required double LongJumpInches { get; init; }
    public required double ContactMilliseconds { get; init; }
    public required double SpeedMetresPerSecond { get; init; }
    public required double TimeConstantSeconds { get; init; }
    public required double AgilitySeconds { get; init; }
    public required double ThrowMetres { get; init; }

    /// <summary>Box for drop jumps; lower for heavy players, as the textbooks advise.</summary>
    public required double BoxInches { get; init; }

    public static IReadOnlyList<GroupNorm> All { get; } =
    [
        new("Offensive line", ["OT", "OG", "C", "OG", "OT"])
        {
            StatureInches = 76.2, MassPounds = 298, MassDeviation = 13, SquatPounds = 465, BenchPounds = 328, CleanPounds = 264,
            JumpInches = 22.5, LongJumpInches = 98, ContactMilliseconds = 258, SpeedMetresPerSecond = 7.95, TimeConstantSeconds = 1.09,
            AgilitySeconds = 4.86, ThrowMetres = 13.8, BoxInches = 12,
        },
        new("Defensive line", ["DE", "DT", "DT", "DE"])
        {
            StatureInches = 75.2, MassPounds = 279, MassDeviation = 17, SquatPounds = 455, BenchPounds = 326, CleanPounds = 268,
            JumpInches = 24.5, LongJumpInches = 106, ContactMilliseconds = 246, SpeedMetresPerSecond = 8.50, TimeConstantSeconds = 1.06,
            AgilitySeconds = 4.68, ThrowMetres = 14.2, BoxInches = 12,
        },
        new("Linebackers", ["OLB", "ILB"])
        {
            StatureInches = 73.4, MassPounds = 229, MassDeviation = 9, SquatPounds = 425, BenchPounds = 302, CleanPounds = 260,
            JumpInches = 27.5, LongJumpInches = 114, ContactMilliseconds = 228, SpeedMetresPerSecond = 9.05, TimeConstantSeconds = 1.03,
            AgilitySeconds = 4.46, ThrowMetres = 14.4, BoxInches = 18,
        },
        new("Tight ends", ["TE"])
        {
            StatureInches = 76.0, MassPounds = 243, MassDeviation = 8, SquatPounds = 405, BenchPounds = 286, CleanPounds = 250,
            JumpInches = 26.5, LongJumpInches = 113, ContactMilliseconds = 233, SpeedMetresPerSecond = 8.95, TimeConstantSeconds = 1.04,
            AgilitySeconds = 4.52, ThrowMetres = 14.1, BoxInches = 18,
        },
        new("Running backs", ["RB"])
        {
            StatureInches = 70.6, MassPounds = 208, MassDeviation = 10, SquatPounds = 415, BenchPounds = 290, CleanPounds = 252,
            JumpInches = 29.5, LongJumpInches = 117, ContactMilliseconds = 212, SpeedMetresPerSecond = 9.35, TimeConstantSeconds = 0.99,
            AgilitySeconds = 4.38, ThrowMetres = 13.9, BoxInches = 18,
        },
        new("Receivers", ["WR"])
        {
            StatureInches = 72.4, MassPounds = 190, MassDeviation = 11, SquatPounds = 345, BenchPounds = 238, CleanPounds = 222,
            JumpInches = 30.5, LongJumpInches = 119, ContactMilliseconds = 208, SpeedMetresPerSecond = 9.50, TimeConstantSeconds = 1.02,
            AgilitySeconds = 4.34, ThrowMetres = 12.7, BoxInches = 18,
        },
        new("Defensive backs", ["CB", "S"])
        {
            StatureInches = 71.4, MassPounds = 189, MassDeviation = 9, SquatPounds = 352, BenchPounds = 246, CleanPounds = 226,
            JumpInches = 30.5, LongJumpInches = 120, ContactMilliseconds = 205, SpeedMetresPerSecond = 9.50, TimeConstantSeconds = 1.00,
            AgilitySeconds = 4.31, ThrowMetres = 12.8, BoxInches = 18,
        },
        new("Quarterbacks", ["QB"])
        {
            StatureInches = 74.0, MassPounds = 211, MassDeviation = 9, SquatPounds = 350, BenchPounds = 242, CleanPounds = 220,
            JumpInches = 26.5, LongJumpInches = 111, ContactMilliseconds = 236, SpeedMetresPerSecond = 8.85, TimeConstantSeconds = 1.06,
            AgilitySeconds = 4.48, ThrowMetres = 13.0, BoxInches = 18,
        },
    ];
}
