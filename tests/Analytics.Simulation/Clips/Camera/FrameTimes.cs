using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.Clips.Camera;

/// <summary>When the frames of a clip begin: an even rate with a random phase, some frames dropped.</summary>
public static class FrameTimes
{
    /// <summary>Times in s on the clock of the run (0 is first movement), rising; frame numbers count what was recorded.</summary>
    /// <param name="rateHertz">Frames a second.</param>
    /// <param name="from">Beginning.</param>
    /// <param name="to">End.</param>
    /// <param name="random">Draws the phase and the dropped frames.</param>
    /// <param name="dropChance">Share of frames that get lost; none at the very ends.</param>
    public static double[] Draw(double rateHertz, double from, double to, RandomNumbers random, double dropChance = 0)
    {
        var times = new List<double>();
        var start = from + (random.Uniform() / rateHertz);
        var count = (int)Math.Floor((to - start) * rateHertz) + 1;
        for (var i = 0; i < count; i++)
            if (dropChance == 0 || i < 3 || i > count - 4 || !random.Chance(dropChance)) times.Add(start + (i / rateHertz));
        return [.. times];
    }
}
