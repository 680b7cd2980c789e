using Analytics.Simulation.Demo;
using Analytics.Simulation.Demo.Squad;
using Analytics.Simulation.Demo.Testing;
using Analytics.Statistics.Association;
using Analytics.Statistics.Summaries;

namespace Analytics.Simulation.Tests.Demo;

public class PlantedLinkTests
{
    private const int Seasons = 60;

    [Fact]
    public void Gains_CorrelateAsPlanted_AndKeepMeanAndSpread()
    {
        var (x, y) = Gains(new PlantedLink(TrainedQuality.Clean, 0.6, false, (TrainedQuality.Jump, 1)), p => p.SeasonGain[TrainedQuality.Jump]);
        // 60 seasons of 60 players: standard error of r about 0.011.
        Assert.InRange(Correlation.Pearson(x, y).Value, 0.56, 0.64);
        // 2/3 of 0.065; √(2/3 (0.035² + 0.065²/3)) = 0.0419.
        // Standard errors 0.0007 and 0.0005; four each way.
        Assert.InRange(y.Average(), 0.0433 - 0.003, 0.0433 + 0.003);
        Assert.InRange(Moments.StandardDeviation(y), 0.040, 0.044);
    }

    [Fact]
    public void TwoQualitiesBehindOneResult_CorrelateInTheirSum()
    {
        var link = new PlantedLink(TrainedQuality.Squat, 0.6, false, (TrainedQuality.MaximalSpeed, 3), (TrainedQuality.TimeConstant, 4));
        var (x, y) = Gains(link, p => 3 * Score(p, TrainedQuality.MaximalSpeed) + 4 * Score(p, TrainedQuality.TimeConstant));
        Assert.InRange(Correlation.Pearson(x, y).Value, 0.56, 0.64);
    }

    [Fact]
    public void Forms_CorrelateByTheSquareOfTheirShare_UnlessPlanted()
    {
        // Standard error at most 1/√3600 = 0.017; 2.4 each way or more.
        Assert.InRange(Forms([]), 0.12, 0.20);
        Assert.InRange(Forms([new PlantedLink(TrainedQuality.Clean, 0.6, true, (TrainedQuality.Jump, 1))]), 0.56, 0.64);
        Assert.InRange(Forms([new PlantedLink(TrainedQuality.Clean, 0, true, (TrainedQuality.Jump, 1))]), -0.04, 0.04);
    }

    [Fact]
    public void RetestAtTheEnd_IsASixthDayWithoutTrueChange_AndMovesNothingElse()
    {
        var plain = DemoSeason.Generate(11, new DemoOptions { WithClips = false });
        var more = DemoSeason.Generate(11, new DemoOptions { WithClips = false, WithEndRetest = true });
        Assert.All(more.Truth.Players, p => Assert.Equal(p.On(SeasonCalendar.June), p.On(SeasonCalendar.EndRetest)));
        Assert.Contains("2026-06-11", System.Text.Encoding.UTF8.GetString(more.Files["season.json"]), StringComparison.Ordinal);
        var march = plain.Files.Keys.Where(k => k.Contains("2026-03-02", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(march);
        Assert.All(march, k => Assert.Equal(plain.Files[k], more.Files[k]));
        Assert.Contains(more.Files.Keys, k => k.Contains("2026-06-11", StringComparison.Ordinal));
    }

    private static double Score(Player player, TrainedQuality quality)
        => (player.SeasonGain[quality] - SquadResponse.Of(quality).OverallMean) / SquadResponse.Of(quality).OverallDeviation;

    private static (double[] X, double[] Y) Gains(PlantedLink link, Func<Player, double> field)
    {
        var players = Enumerable.Range(0, Seasons).SelectMany(s => PlayerFactory.Draw((ulong)(500 + s), new DemoOptions { Links = [link] })).ToList();
        return ([.. players.Select(p => p.SeasonGain[link.WeightRoom])], [.. players.Select(field)]);
    }

    private static double Forms(IReadOnlyList<PlantedLink> links)
    {
        var (x, y) = (new List<double>(), new List<double>());
        for (ulong seed = 700; seed < 760; seed++)
        {
            foreach (var player in PlayerFactory.Draw(seed, new DemoOptions()))
            {
                var (truth, form) = (player.On(SeasonCalendar.Baseline), DayForm.Of(seed, player, SeasonCalendar.Baseline, links));
                x.Add(form.CleanPounds / truth.CleanPounds - 1);
                y.Add(form.JumpInches / truth.JumpInches - 1);
            }
        }

        return Correlation.Pearson(x, y).Value;
    }
}
