using System.Text;
using Analytics.Simulation.Demo;
using Analytics.Simulation.Demo.Truth;

namespace Analytics.Simulation.Tests.Demo;

public class DemoSeasonTests
{
    private static readonly GeneratedSeason Season = DemoSeason.Generate(DemoSeason.DemoSeed);

    [Fact]
    public void Generate_SameSeed_GivesSameBytes()
    {
        var again = DemoSeason.Generate(DemoSeason.DemoSeed);
        Assert.Equal(Season.Files.Keys, again.Files.Keys);
        foreach (var (path, bytes) in Season.Files) Assert.Equal(bytes, again.Files[path]);
    }

    [Fact]
    public void Generate_AnotherSeed_GivesAnotherSeason()
        => Assert.NotEqual(Season.Files["testing/2026-06-08/jumps.csv"], DemoSeason.Generate(DemoSeason.DemoSeed + 1).Files["testing/2026-06-08/jumps.csv"]);

    /// <summary>data-demo is what the generator writes, to the byte, and holds nothing else.</summary>
    [Fact]
    public void Generate_DemoSeed_EqualsCommittedSeason()
    {
        var made = Season.Files.Concat(TruthFiles.Write(Season.Truth)).ToDictionary(f => f.Key, f => f.Value, StringComparer.Ordinal);
        var committed = Directory.EnumerateFiles(RepositoryFiles.DemoFolder, "*", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(RepositoryFiles.DemoFolder, f).Replace('\\', '/'));
        Assert.Equal(made.Keys.Order(StringComparer.Ordinal), committed.Order(StringComparer.Ordinal));
        foreach (var (path, bytes) in made)
            Assert.True(bytes.AsSpan().SequenceEqual(File.ReadAllBytes(Path.Combine(RepositoryFiles.DemoFolder, path))), $"{path} differs; write it again with the demo command");
    }

    [Fact]
    public void Generate_Squad_HasSixtyAthletesInEightGroupsWithNamesOfTheirOwn()
    {
        var players = Season.Truth.Players;
        Assert.Equal(60, players.Count);
        Assert.Equal(60, players.Select(p => p.Name).Distinct().Count());
        Assert.Equal(60, players.Select(p => p.Id).Distinct().Count());
        // Nobody shares a family name either, so that a table sorted by it has one order.
        Assert.Equal(60, players.Select(p => p.Name.Split(' ')[^1]).Distinct().Count());
        Assert.Equal(8, players.Select(p => p.Group).Distinct().Count());
    }

    [Fact]
    public void Generate_March_IsAWorkbookAndAprilWritesDecimalCommas()
    {
        Assert.Contains("testing/2026-03-02.xlsx", Season.Files.Keys);
        var april = Season.Files["testing/2026-04-13/body.csv"];
        Assert.Equal("﻿athlete_id;mass_lb\r\nTC01;", Encoding.UTF8.GetString(april)[..26]);
        Assert.Contains(",", Encoding.UTF8.GetString(april), StringComparison.Ordinal);
    }

    /// <summary>Leaving out the mess takes nothing else away: a result on the clean sheet is the one on the messy sheet.</summary>
    [Fact]
    public void Generate_WithoutMess_KeepsTheOtherNumbers()
    {
        var clean = DemoSeason.Generate(DemoSeason.DemoSeed, new DemoOptions { WithMess = false });
        Assert.Empty(clean.Truth.Errors);
        Assert.Empty(clean.Truth.Spells);
        var cleanRows = Lines(clean, "testing/2026-01-22/body.csv");
        var messyRows = Lines(Season, "testing/2026-01-22/body.csv");
        Assert.Equal(61, cleanRows.Length);
        Assert.True(messyRows.Length < cleanRows.Length);
        Assert.Empty(messyRows.Except(cleanRows));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Generate_AnySeed_HurtsARunningBackAndMissesTests(int seed)
    {
        var season = DemoSeason.Generate((ulong)seed);
        var backs = season.Truth.Players.Where(p => p.Group == "Running backs").Select(p => p.Index).ToList();
        var april = SeasonCalendar.TestingDays[SeasonCalendar.April];
        Assert.Equal(3, season.Truth.Spells.Count(s => backs.Contains(s.Player) && s.Covers(april) && s.Status == "injured"));
        Assert.InRange(Lines(season, "testing/2026-06-08/lifts.csv").Where(l => l.Contains("power_clean", StringComparison.Ordinal)).DistinctBy(l => l[..4]).Count(), 40, 59);
    }

    private static string[] Lines(GeneratedSeason season, string path)
        => Encoding.UTF8.GetString(season.Files[path]).Split('\n', StringSplitOptions.RemoveEmptyEntries);
}
