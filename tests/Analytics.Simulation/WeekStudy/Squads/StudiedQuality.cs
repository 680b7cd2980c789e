using Analytics.Planning.People;
using Analytics.Planning.Exercises;
using Analytics.Planning.Weeks;
using Analytics.Simulation.Demo.Squad;
using Analytics.Simulation.Demo.Testing;
using Ability = Analytics.Simulation.Demo.Squad.Ability;
using Drawn = Analytics.Simulation.Demo.Squad.TrainedQuality;
using Trained = Analytics.Planning.Exercises.TrainedQuality;

namespace Analytics.Simulation.WeekStudy.Squads;

/// <summary>A quality the demo tests, with the truth behind the test that speaks for it.</summary>
public sealed class StudiedQuality
{
    private const double TenYards = 9.144;

    private readonly BodyHalf _half;
    private readonly Func<Player, Ability, double> _leading;

    private StudiedQuality(Trained trained, string name, string test, BodyHalf half, bool lowerIsBetter, Func<Player, Ability, double> leading, IReadOnlyList<DrawnPart> parts)
        => (Trained, Name, Test, _half, LowerIsBetter, _leading, Parts) = (trained, name, test, half, lowerIsBetter, leading, parts);

    /// <summary>The quality as it is trained.</summary>
    public Trained Trained { get; }

    /// <summary>In words.</summary>
    public string Name { get; }

    /// <summary>The test that speaks for it, in words.</summary>
    public string Test { get; }

    public bool LowerIsBetter { get; }

    /// <summary>What the generator draws for the tests of this tested quality.</summary>
    public IReadOnlyList<DrawnPart> Parts { get; }

    /// <summary>The qualities of which the demo has a test, strength by half of the body, in session order. Upper-body power and trunk control have none.</summary>
    public static IReadOnlyList<StudiedQuality> All { get; } =
    [
        new(Trained.Acceleration, "acceleration", "10 yd sprint", BodyHalf.Any, true, SprintTime, [new(Drawn.TimeConstant, SprintTime, IsTime: true)]),
        new(Trained.ReactiveAbility, "reactive ability", "drop jump", BodyHalf.Any, false, (_, a) => a.ReactiveIndex, [new(Drawn.Reactive, (_, a) => a.ReactiveIndex)]),
        new(Trained.ExplosivePower, "explosive power", "countermovement jump", BodyHalf.Any, false, (_, a) => a.JumpInches,
            [new(Drawn.Jump, (_, a) => a.JumpInches), new(Drawn.LongJump, (_, a) => a.LongJumpInches), new(Drawn.Clean, (_, a) => a.CleanPounds)]),
        new(Trained.MaximalStrength, "maximal strength, legs", "back squat", BodyHalf.Lower, false, (_, a) => a.SquatPounds,
            [new(Drawn.Squat, (_, a) => a.SquatPounds)]),
        new(Trained.MaximalStrength, "maximal strength, upper body", "bench press", BodyHalf.Upper, false, (_, a) => a.BenchPounds,
            [new(Drawn.Bench, (_, a) => a.BenchPounds)]),
    ];

    /// <summary>True value of the test that speaks, on a testing day.</summary>
    public double True(Player player, int day) => _leading(player, player.On(day));

    /// <summary>Whether a need of the planner is about it.</summary>
    public bool IsOf(QualityNeed need) => need.Quality == Trained && (need.Half == _half || need.Half == BodyHalf.Any);

    /// <summary>Whether an exercise trains it: of strength only what loads the half of the body the test is about.</summary>
    public bool IsTrainedBy(Exercise exercise) => new QualityNeed(Trained, null, "", false) { Half = _half }.IsServedBy(exercise);

    // His own lead at the start is in it, as it is in every time he runs.
    private static double SprintTime(Player player, Ability ability)
        => SprintModel.ClockTime(TenYards, ability.SpeedMetresPerSecond, ability.TimeConstantSeconds, player.StartLeadMetres);
}

/// <summary>One figure of the generator that shows in a test of a quality.</summary>
/// <param name="Drawn">What is changed to change it.</param>
/// <param name="Value">The figure.</param>
/// <param name="IsTime">Whether less is better.</param>
public sealed record DrawnPart(Drawn Drawn, Func<Player, Ability, double> Value, bool IsTime = false)
{
    /// <summary>The relative change that makes a player worse by so much on a day.</summary>
    /// <param name="player">The player.</param>
    /// <param name="day">Testing day, from 0.</param>
    /// <param name="worse">How much worse, above 0, in the figure's unit.</param>
    public double Change(Player player, int day, double worse)
    {
        var ability = player.On(day);
        var now = Value(player, ability);
        if (!IsTime) return -worse / now;
        // A longer time constant gives a longer time; halved until nothing changes.
        var (low, high) = (-1.0, 0.0);
        for (var step = 0; step < 60; step++)
        {
            var middle = (low + high) / 2;
            if (Value(player, ability.After(q => q == Drawn ? middle : 0)) > now + worse) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }
}
