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

    /// <summary>Ability as it shows on the day; every trial of the day strays from this.</summary>
    public static Ability Of(ulong seed, Player player, int day)
    {
        var random = RandomNumbers.For(seed, "form", player.Index, day);
        var readiness = random.Normal();
        var truth = player.On(day);
        double Effect(TestNoise noise) => noise.Day * (Shared * readiness + Math.Sqrt(1 - Shared * Shared) * random.Normal());
        return truth with
        {
            // Body water has nothing to do with readiness.
            MassPounds = truth.MassPounds * (1 + TestNoise.BodyMass.Day * random.Normal()),
            SquatPounds = truth.SquatPounds * (1 + Effect(TestNoise.Squat)),
            BenchPounds = truth.BenchPounds * (1 + Effect(TestNoise.Bench)),
            CleanPounds = truth.CleanPounds * (1 + Effect(TestNoise.Clean)),
            JumpInches = truth.JumpInches * (1 + Effect(TestNoise.Jump)),
            LongJumpInches = truth.LongJumpInches * (1 + Effect(TestNoise.LongJump)),
            DropJumpInches = truth.DropJumpInches * (1 + Effect(TestNoise.Rebound)),
            ContactMilliseconds = truth.ContactMilliseconds * (1 - Effect(TestNoise.Contact)),
            SpeedMetresPerSecond = truth.SpeedMetresPerSecond * (1 + Effect(TestNoise.Speed)),
            TimeConstantSeconds = truth.TimeConstantSeconds * (1 - Effect(TestNoise.TimeConstant)),
            AgilitySeconds = truth.AgilitySeconds * (1 - Effect(TestNoise.Agility)),
            ThrowMetres = truth.ThrowMetres * (1 + Effect(TestNoise.Throw)),
            StairSeconds = truth.StairSeconds * (1 - Effect(TestNoise.Stair)),
        };
    }
}
