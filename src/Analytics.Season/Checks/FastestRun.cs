using Analytics.Metrics.Trials;
using Analytics.Season.Columns;

namespace Analytics.Season.Checks;

/// <summary>
/// Shortest time the clock can show at a gate. Off a hand-lift switch, a beam or a stopwatch the clock starts when the body is already moving, and by
/// then it has a speed: with u seconds of unseen running at acceleration a the gate at x is reached √(2x/a + u²) − u after the clock's start.
/// Reasons and sources of u are in docs/data-dictionary.md.
/// </summary>
internal static class FastestRun
{
    /// <summary>Highest mean acceleration allowed from the first movement to a gate, m/s²; common practice, no source.</summary>
    private const double HighestAcceleration = 12;

    /// <summary>How much earlier than off the gun the runner is at a gate, mean and SD, s [haugen2012].</summary>
    private const double ThreePointShift = 0.17, ThreePointSd = 0.09, BeamShift = 0.27, BeamSd = 0.12;

    /// <summary>The gun's clock also holds a reaction of at least this, s: a quicker one counts as a false start in athletics.</summary>
    private const double LeastReaction = 0.10;

    /// <summary>The largest mean by which a stopwatch runs short in the studies at hand, s [mayhew2010].</summary>
    private const double LateThumb = 0.31;

    /// <summary>Shortest time allowed at a gate, s.</summary>
    /// <param name="metres">Distance of the gate from the start line, m.</param>
    /// <param name="timing">How the time was taken.</param>
    /// <param name="start">What started the clock.</param>
    public static double ShortestTime(double metres, TimingMethod timing, StartType start) => ShortestTime(metres, UnseenRunning(timing, start));

    /// <summary>Shortest time allowed at a gate whatever started the clock, s.</summary>
    /// <param name="metres">Distance of the gate from the start line, m.</param>
    public static double ShortestTime(double metres) => ShortestTime(metres, UnseenRunning(TimingMethod.Hand, StartType.StandingBeam));

    private static double ShortestTime(double metres, double unseen)
        => Math.Max(Math.Sqrt(2 * metres / HighestAcceleration + unseen * unseen) - unseen, metres / GateHead.HighestSpeed);

    private static double UnseenRunning(TimingMethod timing, StartType start) => (timing == TimingMethod.Hand ? LateThumb : 0) + start switch
    {
        StartType.ThreePointHand => ThreePointShift + 2 * ThreePointSd - LeastReaction,
        StartType.StandingBeam => BeamShift + 2 * BeamSd - LeastReaction,
        _ => 0,
    };
}
