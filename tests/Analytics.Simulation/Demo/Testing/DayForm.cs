using Analytics.Simulation.Demo.Squad;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.Demo.Testing;

/// <summary>
/// The form of one athlete on one day: each test strays by its own amount, a part of it shared by all tests
/// (a tired day is a tired day everywhere).
/// </summary>
public static class DayForm
{
    /// <summary>The correlation between the day effects of two tests is the square of this.</summary>
    private const double Shared = 0.4;

    // In the order the numbers are drawn: a season of a seed depends on it.
    private static readonly TrainedQuality[] s_before = [TrainedQuality.Squat, TrainedQuality.Bench, TrainedQuality.Clean, TrainedQuality.Jump, TrainedQuality.LongJump];

    private static readonly TrainedQuality[] s_after = [TrainedQuality.MaximalSpeed, TrainedQuality.TimeConstant, TrainedQuality.Agility, TrainedQuality.Throw];

    /// <summary>Ability as it shows on the day; every trial of the day strays from this.</summary>
    public static Ability Of(ulong seed, Player player, int day, IReadOnlyList<PlantedLink> links)
    {
        var random = RandomNumbers.For(seed, "form", player.Index, day);
        var readiness = random.Normal();
        var truth = player.On(day);
        double Score() => Shared * readiness + Math.Sqrt(1 - Shared * Shared) * random.Normal();
        // Body water has nothing to do with readiness.
        var water = random.Normal();
        var scores = new Dictionary<TrainedQuality, double>();
        foreach (var quality in s_before) scores[quality] = Score();
        var (rebound, contact) = (Score(), Score());
        foreach (var quality in s_after) scores[quality] = Score();
        var stair = Score();
        foreach (var link in links) link.MixForms(scores, Shared * Shared);
        double Effect(TrainedQuality quality, TestNoise noise) => noise.Day * scores[quality];
        return truth with
        {
            MassPounds = truth.MassPounds * (1 + TestNoise.BodyMass.Day * water),
            SquatPounds = truth.SquatPounds * (1 + Effect(TrainedQuality.Squat, TestNoise.Squat)),
            BenchPounds = truth.BenchPounds * (1 + Effect(TrainedQuality.Bench, TestNoise.Bench)),
            CleanPounds = truth.CleanPounds * (1 + Effect(TrainedQuality.Clean, TestNoise.Clean)),
            JumpInches = truth.JumpInches * (1 + Effect(TrainedQuality.Jump, TestNoise.Jump)),
            LongJumpInches = truth.LongJumpInches * (1 + Effect(TrainedQuality.LongJump, TestNoise.LongJump)),
            DropJumpInches = truth.DropJumpInches * (1 + TestNoise.Rebound.Day * rebound),
            ContactMilliseconds = truth.ContactMilliseconds * (1 - TestNoise.Contact.Day * contact),
            SpeedMetresPerSecond = truth.SpeedMetresPerSecond * (1 + Effect(TrainedQuality.MaximalSpeed, TestNoise.Speed)),
            TimeConstantSeconds = truth.TimeConstantSeconds * (1 - Effect(TrainedQuality.TimeConstant, TestNoise.TimeConstant)),
            AgilitySeconds = truth.AgilitySeconds * (1 - Effect(TrainedQuality.Agility, TestNoise.Agility)),
            ThrowMetres = truth.ThrowMetres * (1 + Effect(TrainedQuality.Throw, TestNoise.Throw)),
            StairSeconds = truth.StairSeconds * (1 - TestNoise.Stair.Day * stair),
        };
    }
}
