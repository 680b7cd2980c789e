using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Sprinting;

/// <summary>Names of the scales times are taken on. Two scales are never compared or averaged.</summary>
public static class SprintSeries
{
    /// <summary>Scale of a sprint, for example <c>electronic, three-point start</c>.</summary>
    /// <param name="timing">How the times were taken.</param>
    /// <param name="start">What started the clock.</param>
    public static string Of(TimingMethod timing, StartType start) => $"{Of(timing)}, {InWords(start)}";

    /// <summary>Scale of a change-of-direction run, for example <c>hand</c>.</summary>
    /// <param name="timing">How the time was taken.</param>
    public static string Of(TimingMethod timing) => timing switch
    {
        TimingMethod.Electronic => "electronic",
        TimingMethod.Hand => "hand",
        TimingMethod.Video => "video",
        _ => throw new ArgumentOutOfRangeException(nameof(timing), timing, $"Unknown timing method {timing}."),
    };

    /// <summary>Start type in words.</summary>
    /// <param name="start">What started the clock.</param>
    public static string InWords(StartType start) => start switch
    {
        StartType.StandingBeam => "standing start through a beam",
        StartType.ThreePointHand => "three-point start",
        StartType.FirstMovement => "start at first movement",
        StartType.Signal => "start at a signal",
        _ => throw new ArgumentOutOfRangeException(nameof(start), start, $"Unknown start type {start}."),
    };
}
