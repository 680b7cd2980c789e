namespace Analytics.Simulation.BenchStudy.Cases;

/// <summary>The sketches of docs/bench-study.md, in order.</summary>
public static class BenchCases
{
    public static IReadOnlyList<BenchCase> All { get; } = [.. NoiseCases.All, .. CopyCases.All, .. NewCases.All];
}
