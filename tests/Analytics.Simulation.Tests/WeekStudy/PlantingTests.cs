using Analytics.Simulation.Demo;
using Analytics.Simulation.Demo.Squad;
using Analytics.Simulation.WeekStudy.Squads;

namespace Analytics.Simulation.Tests.WeekStudy;

/// <summary>A planted deficit is of the stated size, in the stated quality, and nobody else is touched.</summary>
public class PlantingTests
{
    private static readonly IReadOnlyList<Player> s_squad = PlayerFactory.Draw(9100, new DemoOptions());
    private static readonly Planting s_planting = Planting.Draw(9100, s_squad);
    private static readonly IReadOnlyList<Player> s_after = PlayerFactory.Draw(9100, new DemoOptions { Deficits = s_planting.Deficits });

    [Fact]
    public void Draw_TakesPlayersOfTheMiddleOfLargeGroups()
    {
        Assert.InRange(s_planting.Chosen.Count, 15, 20);
        foreach (var chosen in s_planting.Chosen.GroupBy(c => c.Value))
        {
            Assert.InRange(chosen.Count(), 1, 4);
            var standing = TrueStanding.Of(chosen.Key, s_squad);
            Assert.All(chosen, c => Assert.InRange(standing.Behind(s_squad[c.Key]), -0.5, 0.5));
            Assert.Equal(chosen.Count(), chosen.Select(c => s_squad[c.Key].Group).Distinct().Count());
            Assert.All(chosen, c => Assert.True(s_squad.Count(p => p.Group == s_squad[c.Key].Group) >= 8));
        }
    }

    [Fact]
    public void Deficits_AreOneAndAHalfStandardDeviationsInEveryTestOfTheQuality()
    {
        foreach (var (index, quality) in s_planting.Chosen)
        {
            foreach (var part in quality.Parts)
            {
                double At(Player player) => part.Value(player, player.On(WeekSeason.Day));
                var worse = part.IsTime ? At(s_after[index]) - At(s_squad[index]) : At(s_squad[index]) - At(s_after[index]);
                Assert.Equal(1.5, worse / TrueStanding.Of(part, s_squad).Deviation, 1e-9);
            }

            // The test that speaks is one of them.
            Assert.NotEqual(quality.True(s_squad[index], WeekSeason.Day), quality.True(s_after[index], WeekSeason.Day));
        }
    }

    [Fact]
    public void Deficits_LeaveEverythingElseAsDrawn()
    {
        for (var i = 0; i < s_squad.Count; i++)
        {
            foreach (var quality in StudiedQuality.All.Where(q => s_planting.Chosen.GetValueOrDefault(i) != q))
                Assert.Equal(quality.True(s_squad[i], WeekSeason.Day), quality.True(s_after[i], WeekSeason.Day));
            Assert.Equal(s_squad[i].On(0).MassPounds, s_after[i].On(0).MassPounds);
            Assert.Equal(s_squad[i].SeasonGain, s_after[i].SeasonGain);
        }
    }

    [Fact]
    public void Draw_TheSameSeed_GivesTheSame()
        => Assert.Equal(s_planting.Chosen.Select(c => (c.Key, c.Value)), Planting.Draw(9100, s_squad).Chosen.Select(c => (c.Key, c.Value)));

    /// <summary>By hand: squared distances 400 + 0 + 400 and 900 + 0 + 900 are 2600, over 6 players less 2 groups 650, root 25.495; 20 lb below the median are 0.7845 of it.</summary>
    [Fact]
    public void Behind_IsCountedInDeviationsWithinGroups()
    {
        var drawn = PlayerFactory.Draw(1, new DemoOptions { Changes = ChangePlan.None });
        Player[] squad = [.. new[] { (400.0, 0), (420, 0), (440, 0), (300, 11), (330, 11), (360, 11) }
            .Select(p => drawn[p.Item2] with { Baseline = drawn[p.Item2].Baseline with { SquatPounds = p.Item1 } })];
        var standing = TrueStanding.Of(StudiedQuality.All.Single(q => q.Test == "back squat"), squad);
        Assert.Equal(25.4951, standing.Deviation, 1e-4);
        Assert.Equal([0.7845, 0, -0.7845], squad.Take(3).Select(p => Math.Round(standing.Behind(p), 4)));
    }

    [Fact]
    public void Behind_OfATime_IsAboveNoughtForTheSlow()
    {
        var drawn = PlayerFactory.Draw(1, new DemoOptions { Changes = ChangePlan.None })[0];
        Player[] squad = [.. new[] { 0.9, 1.0, 1.1 }.Select(t => drawn with { Baseline = drawn.Baseline with { TimeConstantSeconds = t } })];
        var standing = TrueStanding.Of(StudiedQuality.All.Single(q => q.Test == "10 yd sprint"), squad);
        Assert.True(standing.Behind(squad[0]) < 0 && standing.Behind(squad[2]) > 0);
    }
}
