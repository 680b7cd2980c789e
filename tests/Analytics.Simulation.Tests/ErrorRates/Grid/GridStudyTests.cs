using Analytics.Simulation.ErrorRates.Grid;
using Analytics.Simulation.ErrorRates.Grid.Document;
using Analytics.Simulation.ErrorRates.Grid.Intervals;
using Analytics.Simulation.ErrorRates.Grid.Verdicts;

namespace Analytics.Simulation.Tests.ErrorRates.Grid;

public class GridStudyTests
{
    [Fact]
    public void Run_OneThreadOrThree_GivesTheSameFigures()
    {
        static string Run(int threads) => EveryCase.Csv(GridStudy.Run(
            [new TypicalErrorInterval(), new ConsistencyIcc()], [new BeyondErrorVerdict()], Registry.Rates, 5, 7, threads, only: Few));
        Assert.Equal(Run(1), Run(3));
    }

    [Fact]
    public void Run_AnotherSeed_GivesOtherFigures()
    {
        static double Rate(ulong seed) => GridStudy.Run([new TypicalErrorInterval()], [], [], 500, seed, 2, only: c => c.StartsWith("10 athletes, 2", StringComparison.Ordinal)).Intervals[0].Covered.Rate;
        Assert.NotEqual(Rate(1), Rate(2));
    }

    /// <summary>A further entry leaves the figures of the others alone, so that the document changes only where something was added.</summary>
    [Fact]
    public void Run_FurtherEntries_DoNotMoveTheOthers()
    {
        var alone = GridStudy.Run([new TypicalErrorInterval()], [], [], 50, 7, 2, only: Few);
        var among = GridStudy.Run([new ConsistencyIcc(), new TypicalErrorInterval()], [], [], 50, 7, 2, only: Few);
        Assert.Equal(alone.Intervals.Select(r => r.Covered.Rate), among.Intervals.Where(r => r.Entry is TypicalErrorInterval).Select(r => r.Covered.Rate));
    }

    [Fact]
    public void Registry_EveryEntry_IsFoundOnceAndNamed()
    {
        Assert.Contains(Registry.Intervals, i => i is TypicalErrorInterval);
        Assert.Contains(Registry.Verdicts, v => v is BeyondWorthwhileVerdict);
        var names = Registry.Intervals.Select(i => (i.Name, i.Claim)).Concat(Registry.Verdicts.Select(v => (v.Name, v.Claim))).Concat(Registry.Rates.Select(r => (r.Name, r.Claim))).ToList();
        Assert.Equal(names.Count, names.Select(n => n.Name).Distinct().Count());
        Assert.All(names, n => Assert.True(n.Name.Length > 0 && n.Claim.Length > 0));
        Assert.All(names, n => Assert.DoesNotContain("\"", n.Name, StringComparison.Ordinal));
    }

    [Fact]
    public void Registry_EveryCase_HasALabelOfItsOwn()
    {
        Assert.All(Registry.Intervals, i => AssertDistinct(i.Name, i.Cells));
        Assert.All(Registry.Verdicts, v => AssertDistinct(v.Name, v.Cases));
        Assert.All(Registry.Rates, r => AssertDistinct(r.Name, r.Cases.Select(c => c.Label)));
    }

    private static void AssertDistinct(string name, IEnumerable<object> labels)
    {
        var all = labels.Select(l => l.ToString()).ToList();
        Assert.True(all.Count > 0 && all.Distinct().Count() == all.Count, name);
    }

    private static bool Few(string label) => label.Contains("20 ", StringComparison.Ordinal) && !label.Contains("60 ", StringComparison.Ordinal);
}
