using Analytics.Simulation.Clips.Body;
using Analytics.Simulation.Clips.Motion;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.Clips;

/// <summary>Draws repetitions: a player into contact over a short gap.</summary>
public static class RunDraw
{
    /// <summary>One repetition of a player whose sprint is known.</summary>
    /// <param name="random">Stream of this repetition.</param>
    /// <param name="statureMetres">Stature.</param>
    /// <param name="massKilograms">Mass.</param>
    /// <param name="speed">V, m/s.</param>
    /// <param name="timeConstant">T, s.</param>
    /// <param name="gapMetres">Gap to cover.</param>
    /// <param name="stiff">Whether the trunk gives little.</param>
    public static RunIntoContact Draw(RandomNumbers random, double statureMetres, double massKilograms, double speed, double timeConstant, double gapMetres, bool stiff)
    {
        var contact = Demo.Testing.SprintModel.TimeTo(gapMetres, speed, timeConstant);
        var reached = speed * Curves.OnsetRate(contact, timeConstant);
        return new()
        {
            Body = new(statureMetres),
            MassKilograms = massKilograms,
            SpeedMetresPerSecond = speed,
            TimeConstantSeconds = timeConstant,
            ContactSeconds = contact,
            ApproachLeanDegrees = random.Normal(42, 4),
            // About half of the speed is lost; a stiff trunk turns a few degrees, a soft one is thrown back.
            SpeedLost = reached * (0.55 + (0.08 * random.Normal())),
            TrunkTurnDegrees = stiff ? random.Normal(-6, 1.5) : random.Normal(-16, 3),
            NearLegInFront = random.Chance(0.5),
            Gait = new() { StridesPerSecond = random.Normal(2.0, 0.1), ThighSwing = random.Normal(32, 2), KneeLead = random.Normal(0.5, 0.05) },
        };
    }

    /// <summary>One repetition of somebody new: sizes and sprint as in a squad of collision sport.</summary>
    public static RunIntoContact Anybody(RandomNumbers random)
        => Draw(random, random.Normal(1.86, 0.06), random.Normal(105, 15), random.Normal(8.4, 0.5), Math.Max(0.8, random.Normal(1.1, 0.08)), random.Normal(0.62, 0.05), random.Chance(0.5));
}
