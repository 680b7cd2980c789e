using Analytics.Simulation.Demo;
using Analytics.Simulation.Demo.Squad;

namespace Analytics.Simulation.Tests.Demo;

public class TruthTests
{
    private static readonly IReadOnlyList<Player> Players = DemoSeason.Generate(DemoSeason.DemoSeed).Truth.Players;

    [Fact]
    public void On_BaselineAndRetest_AreTheSame()
        => Assert.All(Players, p => Assert.Equal(p.On(SeasonCalendar.Baseline), p.On(SeasonCalendar.Retest)));

    /// <summary>Unchanged means the same number, not a small change.</summary>
    [Fact]
    public void On_UnchangedQuality_IsExactlyTheBaseline()
    {
        var unchanged = 0;
        foreach (var player in Players)
        {
            var (first, last) = (player.On(SeasonCalendar.Baseline), player.On(SeasonCalendar.June));
            foreach (var (quality, value) in Values)
            {
                var same = player.Unchanged(quality, SeasonCalendar.Baseline, SeasonCalendar.June);
                Assert.Equal(same, value(first) == value(last));
                if (same) unchanged++;
            }
        }

        // A third of 60 x 11; SD of the count is 12.
        Assert.InRange(unchanged, 220 - 48, 220 + 48);
    }

    [Fact]
    public void On_NoChangePlan_ChangesNobody()
    {
        var players = DemoSeason.Generate(5, new DemoOptions { Changes = ChangePlan.None }).Truth.Players;
        Assert.All(players, p => Assert.Equal(p.Baseline, p.On(SeasonCalendar.June)));
    }

    [Fact]
    public void On_TypicalErrorPlan_ChangesAfterAprilOnly()
    {
        var players = DemoSeason.Generate(5, new DemoOptions { Changes = ChangePlan.TypicalErrors }).Truth.Players;
        Assert.All(players, p => Assert.Equal(p.Baseline, p.On(SeasonCalendar.April)));
        Assert.Contains(players, p => p.On(SeasonCalendar.June).SquatPounds > p.Baseline.SquatPounds);
    }

    /// <summary>Group means near the published samples the model is set by (Fry and Kraemer 1991: squat 185.2, bench 136.9,
    /// clean 118.1 kg, 40 yd 4.92 s), within a fifth of their SD or so.</summary>
    [Fact]
    public void Baseline_SquadMeans_LieNearPublishedSamples()
    {
        const double kilograms = 0.45359237;
        Assert.InRange(kilograms * Players.Average(p => p.Baseline.SquatPounds), 175, 195);
        Assert.InRange(kilograms * Players.Average(p => p.Baseline.BenchPounds), 127, 147);
        Assert.InRange(kilograms * Players.Average(p => p.Baseline.CleanPounds), 110, 126);
    }

    private static IEnumerable<(TrainedQuality Quality, Func<Ability, double> Value)> Values =>
    [
        (TrainedQuality.BodyMass, a => a.MassPounds), (TrainedQuality.Squat, a => a.SquatPounds), (TrainedQuality.Bench, a => a.BenchPounds),
        (TrainedQuality.Clean, a => a.CleanPounds), (TrainedQuality.Jump, a => a.JumpInches), (TrainedQuality.LongJump, a => a.LongJumpInches),
        (TrainedQuality.Reactive, a => a.ReactiveIndex), (TrainedQuality.MaximalSpeed, a => a.SpeedMetresPerSecond),
        (TrainedQuality.TimeConstant, a => a.TimeConstantSeconds), (TrainedQuality.Agility, a => a.AgilitySeconds), (TrainedQuality.Throw, a => a.ThrowMetres),
    ];
}
