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

    /// <summary>Clips of other seeds, some at 60 Hz, some with lost frames and hidden markers: nothing is held back but the rate typed wrongly.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Read_ClipsOfOtherSeeds_HoldBackTheWrongRateOnly(int seed)
    {
        var season = Analytics.Simulation.Demo.DemoSeason.Generate((ulong)seed);
        var folder = Directory.CreateTempSubdirectory("season-");
        try
        {
            foreach (var (path, bytes) in season.Files)
            {
                var file = Path.Combine(folder.FullName, path);
                Directory.CreateDirectory(Path.GetDirectoryName(file)!);
                File.WriteAllBytes(file, bytes);
            }
            var wrong = season.Truth.Errors.Single(e => e.Column == "rate_hz");
            var held = SeasonReader.Read(folder.FullName).HeldBack.Where(h => h.File.Contains("contact", StringComparison.Ordinal) || h.File.Contains("/clips/", StringComparison.Ordinal)).ToList();
            Assert.Equal([(wrong.File, wrong.Line)], held.Where(h => !h.File.Contains("/clips/", StringComparison.Ordinal)).Select(h => (h.File, h.Line)));
            Assert.Contains("the row that names this clip", Assert.Single(held, h => h.File.Contains("/clips/", StringComparison.Ordinal)).Reason, StringComparison.OrdinalIgnoreCase);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
