namespace Analytics.Simulation.BenchStudy.Cases;

/// <summary>The sketches of docs/bench-study.md, in order.</summary>
public static class BenchCases
{
    public static IReadOnlyList<BenchCase> All { get; } = [.. NoiseCases.All, .. CopyCases.All, .. NewCases.All];

    /// <summary>Some of each kind, for squads of other shapes.</summary>
    public static IReadOnlyList<BenchCase> Few { get; } = [.. All.Where(c => c.InEverySquad)];

    public static IReadOnlyList<BenchCase> Required(TruthKind kind) => [.. All.Where(c => c.Kind == kind && c.IsRequired)];
}
