using System.Globalization;
using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>
/// When each frame of a clip was taken: from a rate, or from the time stamps of the recording. Nominal rates of 23.976 (23.98), 29.97, 47.952, 59.94, 119.88 and
/// 239.76 Hz mean n·1000/1001: reading 29.97 as 30 shortens 4.5 s by 4.5 ms. Phones drop and stretch frames, so time stamps are better than a rate.
/// </summary>
public sealed class FrameClock
{
    /// <summary>A stamp further from the even grid than this share of an interval makes the rate variable; our choice.</summary>
    internal const double EvenWithin = 0.25;

    private readonly double[]? stamps;
    private readonly double interval;

    private FrameClock(double interval, double[]? stamps, int firstFrame, bool isVariable, IReadOnlyList<DroppedFrames> dropped)
        => (this.interval, this.stamps, FirstFrame, IsVariable, Dropped) = (interval, stamps, firstFrame, isVariable, dropped);

    /// <summary>Number of the first frame; 0 for a clock made from a rate, which also knows the frames before it.</summary>
    public int FirstFrame { get; }

    /// <summary>Frames with a time stamp; null for a clock made from a rate, which has no end.</summary>
    public int? FrameCount => stamps?.Length;

    /// <summary>Typical time from frame to frame: 1/rate, or the median of the time stamps' steps made exact over the whole clip.</summary>
    public Duration Interval => Duration.FromSeconds(interval);

    /// <summary>1/<see cref="Interval"/>.</summary>
    public Frequency Rate => Frequency.FromHertz(1 / interval);

    /// <summary>Whether time stamps leave the even grid: frames dropped, or steps stretched by more than a quarter of an interval.</summary>
    public bool IsVariable { get; }

    /// <summary>Where frames are missing; empty for a clock made from a rate, which cannot see it.</summary>
    public IReadOnlyList<DroppedFrames> Dropped { get; }

    /// <summary>A clock with an even rate.</summary>
    /// <param name="rate">Frames a second, 1 to 100,000 Hz; nominal rates are made exact.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static FrameClock FromRate(Frequency rate)
        => rate.Hertz is >= 1 and <= 100_000
            ? new(1 / NominalRate.Exact(rate.Hertz), null, 0, false, [])
            : throw new ArgumentOutOfRangeException(nameof(rate), rate, $"a frame rate must lie between 1 and 100,000 Hz; got {rate}. Give the rate at which the clip was recorded.");

    /// <summary>A clock from the time stamp of each frame.</summary>
    /// <param name="seconds">Time of each frame in s, rising; at least 3.</param>
    /// <param name="firstFrame">Number of the frame of the first stamp.</param>
    /// <exception cref="ArgumentException">Too few stamps, or a stamp that is not finite or does not rise (the frame is named).</exception>
    public static FrameClock FromTimeStamps(ReadOnlySpan<double> seconds, int firstFrame = 0)
    {
        if (seconds.Length < 3) throw new ArgumentException($"a clock needs the time stamps of at least 3 frames; got {seconds.Length}. Give a rate instead.", nameof(seconds));
        for (var i = 0; i < seconds.Length; i++)
        {
            if (!double.IsFinite(seconds[i])) throw Bad(firstFrame + i, seconds[i], "it must be a finite number of s");
            if (i > 0 && seconds[i] <= seconds[i - 1])
                throw Bad(firstFrame + i, seconds[i], string.Create(CultureInfo.InvariantCulture, $"it must come after {seconds[i - 1]} s, the stamp of the frame before"));
        }
        var (interval, variable, dropped) = StampPattern.Of(seconds, firstFrame);
        return new(interval, seconds.ToArray(), firstFrame, variable, dropped);
    }

    /// <summary>Time of a frame: since frame 0 for a rate, as stamped otherwise.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A frame without a time stamp.</exception>
    public Duration Time(int frame) => Duration.FromSeconds(Seconds(frame));

    /// <summary>Time from one frame to another; negative when the second comes first.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A frame without a time stamp.</exception>
    public Duration Between(int from, int to) => stamps is null ? Duration.FromSeconds(((double)to - from) * interval) : Time(to) - Time(from);

    /// <summary>Width of the time in which something seen first at this frame may have happened: since the frame before (at the first frame, to the next).</summary>
    /// <exception cref="ArgumentOutOfRangeException">A frame without a time stamp.</exception>
    public Duration IntervalAt(int frame)
    {
        if (stamps is null) return Interval;
        var i = Index(frame);
        return Duration.FromSeconds(i > 0 ? stamps[i] - stamps[i - 1] : stamps[1] - stamps[0]);
    }

    /// <summary>The frame taken nearest to a time; outside the stamps the first or the last.</summary>
    public int FrameNearest(Duration time)
    {
        if (stamps is null) return (int)Math.Round(time.Seconds / interval, MidpointRounding.AwayFromZero);
        var at = Array.BinarySearch(stamps, time.Seconds);
        if (at >= 0) return FirstFrame + at;
        var next = Math.Clamp(~at, 1, stamps.Length - 1);
        return FirstFrame + (time.Seconds - stamps[next - 1] <= stamps[next] - time.Seconds ? next - 1 : next);
    }

    /// <summary>Whether the clock has a time for a frame.</summary>
    public bool Covers(int frame) => stamps is null || (frame >= FirstFrame && frame - FirstFrame < stamps.Length);

    /// <summary>The clock in a sentence, dropped frames and an uneven rate said.</summary>
    public override string ToString()
    {
        var rate = string.Create(CultureInfo.InvariantCulture, $"{1 / interval:0.###} Hz");
        if (stamps is null) return $"{rate}, even by assumption (no time stamps)";
        var missing = Dropped.Sum(d => d.Count);
        if (missing > 0) return $"{rate} by {stamps.Length} time stamps, {missing} frames dropped, first after frame {Dropped[0].AfterFrame}";
        return $"{rate} by {stamps.Length} time stamps, {(IsVariable ? "variable: steps stretch by more than a quarter" : "even")}";
    }

    internal double Seconds(int frame) => stamps is null ? frame * interval : stamps[Index(frame)];

    internal double IntervalSeconds => interval;

    private int Index(int frame) => Covers(frame)
        ? frame - FirstFrame
        : throw new ArgumentOutOfRangeException(nameof(frame), frame, $"time stamps cover frames {FirstFrame} to {FirstFrame + stamps!.Length - 1}; got frame {frame}.");

    private static ArgumentException Bad(int frame, double value, string rule)
        => new(string.Create(CultureInfo.InvariantCulture, $"Time stamp of frame {frame} is {value} s; {rule}. Check the time stamps of the recording, or give a rate instead."));
}
