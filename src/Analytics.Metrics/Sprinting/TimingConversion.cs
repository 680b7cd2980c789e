using System.Globalization;
using Analytics.Quantities;
using Analytics.Statistics;

namespace Analytics.Metrics.Sprinting;

/// <summary>
/// A published difference between hand and electronic 40-yd times. Hand times and electronic times are separate series and stay so:
/// a conversion is shown beside the hand time, with its spread, on request; it is never stored and never applied in silence.
/// The size depends on start trigger and timers; 0.20 to 0.31 s have been published.
/// </summary>
/// <param name="Name">Whose hand times.</param>
/// <param name="Shift">Added to the hand time.</param>
/// <param name="Sd">Spread of that difference from run to run.</param>
/// <param name="SourceKey">Key into docs/references.md.</param>
public sealed record TimingConversion(string Name, Duration Shift, Duration Sd, string SourceKey)
{
    /// <summary>81 college players, experienced timers: 0.22 s, SD 0.07 s.</summary>
    public static TimingConversion ExperiencedTimers { get; } = Make("experienced hand timers", 0.22, 0.07, "mann2015");

    /// <summary>81 college players, novice timers: 0.26 s, SD 0.08 s.</summary>
    public static TimingConversion NoviceTimers { get; } = Make("novice hand timers", 0.26, 0.08, "mann2015");

    /// <summary>59 college players, seven timers, electronic clock started by the hand leaving a mat: 0.31 s, SD 0.07 s.</summary>
    public static TimingConversion HandLiftMat { get; } = Make("seven hand timers against a hand-lift mat", 0.31, 0.07, "mayhew2010");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<TimingConversion> All { get; } = [ExperiencedTimers, NoviceTimers, HandLiftMat];

    /// <summary>What an electronic clock might have read for a 40-yd hand time, in s.</summary>
    /// <param name="handTime">Hand time over 40 yd, above 0.</param>
    /// <returns>Shifted time; standard error is the SD of the difference, the interval 1.96 of them to each side (one run, not a mean).</returns>
    public Estimate ToElectronic(Duration handTime)
    {
        var time = (Require.Positive(handTime, "hand time") + Shift).Seconds;
        var reach = 1.96 * Sd.Seconds;
        return new(time, Sd.Seconds, new(time - reach, time + reach), 1, string.Create(CultureInfo.InvariantCulture,
            $"hand time + {Shift} (SD {Sd}) by {SourceKey}, {Name}; 40 yd only; shown for orientation, not a measurement"));
    }

    private static TimingConversion Make(string name, double shift, double sd, string key)
        => new(name, Duration.FromSeconds(shift), Duration.FromSeconds(sd), key);
}
