using System.Text;
using Analytics.Simulation.Demo;

namespace Analytics.Simulation.Tests.Demo;

/// <summary>Who took the tests of the demo season.</summary>
public class TestersTests
{
    private static readonly GeneratedSeason Season = DemoSeason.Generate(DemoSeason.DemoSeed, new DemoOptions { WithMess = false });

    /// <summary>Every player against every two: of sixty in the list a quarter each stays with either tester or changes either way.</summary>
    [Theory]
    [InlineData("jumps")]
    [InlineData("throws")]
    [InlineData("sprints")]
    public void Generate_RetestPair_AQuarterOfTheSquadInEachOrderOfTesters(string sheet)
    {
        Dictionary<string, string> first = Testers("2026-01-19", sheet), second = Testers("2026-01-22", sheet);
        var pairs = first.CountBy(t => $"{t.Value} {second[t.Key]}").OrderBy(p => p.Key, StringComparer.Ordinal);
        Assert.Equal([new("KB KB", 15), new("KB RM", 15), new("RM KB", 15), new("RM RM", 15)], pairs);
    }

    /// <summary>The tester of each athlete, who has one on a day.</summary>
    private static Dictionary<string, string> Testers(string day, string sheet)
        => Encoding.UTF8.GetString(Season.Files[$"testing/{day}/{sheet}.csv"]).Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1)
            .Select(l => l.Split(',')).Select(c => (Athlete: c[0], Tester: c[^1])).Distinct().ToDictionary(t => t.Athlete, t => t.Tester, StringComparer.Ordinal);
}
