using System.Globalization;
using Analytics.Metrics.Motion;
using Analytics.Quantities;
using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Metrics.Contact;

/// <summary>
/// What a frame rate f alone does to times: an event falls anywhere within one frame, so one event has SD 1/(f·√12) and the time between two of them 1/(f·√6), with a triangular law on ±1/f.
/// Judging the frame by eye comes on top. Arithmetic of two uniform errors; no source needed.
/// </summary>
public sealed record FrameQuantisation : Result
{
    private FrameQuantisation(Duration frame) => Frame = frame;

    /// <summary>1/f.</summary>
    public Duration Frame { get; }

    /// <summary>SD of the time of one event: 1/(f·√12).</summary>
    public Duration EventSd => Frame / Math.Sqrt(12);

    /// <summary>SD of the time between two events: 1/(f·√6).</summary>
    public Duration IntervalSd => Frame / Math.Sqrt(6);

    /// <summary>The time between two events cannot be off by more: 1/f.</summary>
    public Duration LargestIntervalError => Frame;

    /// <summary>Half the 95 % interval of a time between two events, as if its error were normal: 1.959964/(f·√6).</summary>
    public Duration NormalHalfWidth => IntervalSd * NormalLaw.TwoSided(0.95);

    /// <summary>The same by the triangular law the error really has: (1 − √0.05)/f.</summary>
    public Duration TriangularHalfWidth => Frame * (1 - Math.Sqrt(0.05));

    /// <summary>The figures at a frame rate.</summary>
    /// <param name="rate">f, 1 to 100,000 Hz; nominal rates (29.97) are made exact.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static FrameQuantisation At(Frequency rate) => new(FrameClock.FromRate(rate).Interval);

    /// <summary>How far something moves from frame to frame.</summary>
    /// <param name="speed">Its speed.</param>
    public Length TravelPerFrame(Speed speed) => speed * Frame;

    /// <summary>How far something smears in one picture: speed times exposure.</summary>
    /// <param name="speed">Its speed.</param>
    /// <param name="exposure">Exposure of one frame, 0 or more; at most the frame itself.</param>
    /// <exception cref="ArgumentOutOfRangeException">Below 0 or longer than a frame.</exception>
    public Length MotionBlur(Speed speed, Duration exposure)
        => Require.NotNegative(exposure, "exposure") <= Frame ? speed * exposure
            : throw new ArgumentOutOfRangeException(nameof(exposure), exposure, $"an exposure cannot be longer than the frame, {Frame}; got {exposure}.");

    /// <summary>SD of the place at the time of an event: speed times <see cref="EventSd"/>.</summary>
    /// <param name="speed">Speed of what is looked at.</param>
    public Length PositionSd(Speed speed) => speed * EventSd;

    /// <summary>SD of a mean speed over a distance whose time was counted in frames: d/t²·SD(t).</summary>
    /// <param name="distance">d.</param>
    /// <param name="time">t, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A time of 0 or less.</exception>
    public Speed MeanSpeedSd(Length distance, Duration time) => distance / Require.Positive(time, "time over the distance") * (IntervalSd / time);

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(string.Create(CultureInfo.InvariantCulture, $"Error of times at {1 / Frame.Seconds:0.###} frames a second"), "events uniform within a frame, first frame seen for both",
    [
        new("frame", Frame.Milliseconds, "ms"),
        new("SD of one event", EventSd.Milliseconds, "ms"),
        new("SD of a time between two", IntervalSd.Milliseconds, "ms"),
        new("half of its 95 % interval, normal", NormalHalfWidth.Milliseconds, "ms"),
        new("half of its 95 % interval, triangular", TriangularHalfWidth.Milliseconds, "ms"),
    ]) { Basis = "the frame rate alone", Remarks = ["Judging the frame by eye comes on top."] };
}
