using Analytics.Season;

namespace Analytics.Simulation.Tests.Demo;

public class ReadBackTests
{
    /// <summary>The season reader finds each of the ten slips of the committed season, and nothing else to hold back but the clip of the row at fault.</summary>
    [Fact]
    public void Read_CommittedSeason_HoldsBackExactlyTheTypingErrors()
    {
        var truth = Analytics.Simulation.Demo.DemoSeason.Generate(Analytics.Simulation.Demo.DemoSeason.DemoSeed).Truth;
        var read = SeasonReader.Read(RepositoryFiles.DemoFolder);
        Assert.Equal(
            truth.Errors.Select(e => (e.File, e.Line)).Order(),
            read.HeldBack.Where(h => !h.File.Contains("/clips/", StringComparison.Ordinal)).Select(h => (h.File, h.Line)).Order());
        Assert.Single(read.HeldBack, h => h.File.Contains("/clips/", StringComparison.Ordinal));
        Assert.Equal(read.RowsRead, read.RowsKept + read.RowsHeldBack);
    }
}
