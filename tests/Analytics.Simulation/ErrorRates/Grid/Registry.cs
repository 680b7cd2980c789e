using Analytics.Simulation.ErrorRates.Grid.Intervals;
using Analytics.Simulation.ErrorRates.Grid.Rates;
using Analytics.Simulation.ErrorRates.Grid.Verdicts;

namespace Analytics.Simulation.ErrorRates.Grid;

/// <summary>What is measured: every class derived from one of the three bases, in the order of their names.</summary>
public static class Registry
{
    public static IReadOnlyList<IntervalUnderTest> Intervals { get; } = [.. Each<IntervalUnderTest>().OrderBy(i => i.Name, StringComparer.Ordinal)];

    public static IReadOnlyList<VerdictUnderTest> Verdicts { get; } = [.. Each<VerdictUnderTest>().OrderBy(v => v.Name, StringComparer.Ordinal)];

    public static IReadOnlyList<RateUnderTest> Rates { get; } = [.. Each<RateUnderTest>().OrderBy(r => r.Name, StringComparer.Ordinal)];

    private static IEnumerable<T> Each<T>() => typeof(Registry).Assembly.GetTypes()
        .Where(t => !t.IsAbstract && t.IsSubclassOf(typeof(T))).Select(t => (T)Activator.CreateInstance(t)!);
}
