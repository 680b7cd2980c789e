namespace Analytics.Simulation.BenchStudy.Squads;

/// <summary>Which part of a generated squad the bench sees.</summary>
/// <param name="Name">In words.</param>
/// <param name="Players">The first so many of the list.</param>
/// <param name="Retested">How many of them come to the retest at most; 0 for a season without one.</param>
public sealed record SquadChoice(string Name, int Players, int Retested)
{
    public static readonly SquadChoice Whole = new("60 players", 60, 60);

    public static readonly SquadChoice Half = new("25 players", 25, 60);

    public static readonly SquadChoice Twelve = new("12 players", 12, 60);

    public static readonly SquadChoice TenRetested = new("60, of whom 10 retested", 60, 10);

    public static readonly SquadChoice NoRetest = new("60, no retest", 60, 0);

    public static IReadOnlyList<SquadChoice> All { get; } = [Whole, Half, Twelve, TenRetested, NoRetest];
}
