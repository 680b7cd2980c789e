using Analytics.Metrics.Contact;
using Analytics.Metrics.Motion;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Statistics;

namespace Analytics.Notebooks.ContactReview;

/// <summary>The three moments at which a posture is shown.</summary>
internal enum Moment
{
    FirstMovement,
    MidWay,
    Contact,
}

/// <summary>The digitised points of a repetition, filtered for its angles; or why there are none.</summary>
internal sealed class ClipMotion
{
    // Where residuals give no cut-off; usual for a sprint, from memory.
    private const double FallbackHertz = 10;
    private readonly ContactTrial _trial;

    private ClipMotion(ContactTrial trial, DigitisedClip? clip, string whyNot)
    {
        (_trial, Clip, WhyNot) = (trial, clip, whyNot);
        (Shin, ShinWhyNot) = Series(clip, BodySegment.Shank, "shin");
        (Trunk, TrunkWhyNot) = Series(clip, BodySegment.Trunk, "trunk");
    }

    /// <summary>The points, filtered and on an even grid where the frame rate was not even; null when there are none.</summary>
    public DigitisedClip? Clip { get; }

    /// <summary>Why there are no points; empty when there are.</summary>
    public string WhyNot { get; }

    public AngleSeries? Shin { get; }

    public string ShinWhyNot { get; }

    public AngleSeries? Trunk { get; }

    public string TrunkWhyNot { get; }

    public static ClipMotion Of(ContactTrial trial)
    {
        if (trial.Digitised is not { } raw) return new(trial, null, "not digitised");
        try
        {
            var even = raw.Clock.IsVariable ? EvenGrid.Of(raw) : raw;
            return new(trial, ClipSmoother.SmoothByResiduals(even, Frequency.FromHertz(Math.Min(FallbackHertz, 0.4 * even.Clock.Rate.Hertz))).Clip, "");
        }
        catch (ArgumentException error)
        {
            return new(trial, null, "points not usable: " + error.Message.Split('\n')[0]);
        }
    }

    /// <summary>Seconds since first movement, mean over the readings.</summary>
    public double SecondsOf(Moment moment)
    {
        double first = Mean(r => r.FirstMovement), contact = Mean(r => r.Contact);
        return moment switch { Moment.FirstMovement => 0, Moment.Contact => contact - first, _ => (contact - first) / 2 };
    }

    /// <summary>Seconds from contact to a sample of the clip, negative before.</summary>
    public double SecondsToContact(int sample) => Clip!.Clock.Time(Clip.FirstFrame + sample).Seconds - Mean(r => r.Contact);

    /// <summary>The sample nearest to a moment; null when the digitised frames do not reach it.</summary>
    public int? SampleAt(Moment moment, double secondsLater = 0)
    {
        if (Clip is null) return null;
        var seconds = Mean(r => r.FirstMovement) + SecondsOf(moment) + secondsLater;
        var frame = Clip.Clock.FrameNearest(Duration.FromSeconds(seconds));
        return frame >= Clip.FirstFrame && frame <= Clip.LastFrame && Math.Abs(Clip.Clock.Time(frame).Seconds - seconds) <= 1.5 * Clip.Clock.Interval.Seconds ? frame - Clip.FirstFrame : null;
    }

    /// <summary>A lean at a moment.</summary>
    public Measured Lean(AngleSeries? series, string whyNot, Moment moment)
    {
        if (series is null) return new(null, whyNot);
        if (SampleAt(moment) is not { } at || series.Degrees[at] is not { } degrees) return new(null, "the points do not reach this moment");
        var se = series.StandardErrorDegrees[at];
        return new(new Estimate(degrees, se, se is { } s ? new Interval(degrees - (1.96 * s), degrees + (1.96 * s)) : null, 1, series.Name));
    }

    // The beginning of the frame interval in which an event fell is the same for all, so differences need no more than the frames' times.
    private double Mean(Func<ContactReading, EventReading> which) => _trial.Readings.Average(r => _trial.Clock.Time(which(r).Frame).Seconds);

    private static (AngleSeries? Series, string WhyNot) Series(DigitisedClip? clip, BodySegment segment, string name)
    {
        if (clip is null) return (null, "not digitised");
        string[] missing = [.. new[] { segment.Proximal, segment.Distal }.Where(r => clip.Find(r) is null).Select(r => r.InWords())];
        if (missing.Length > 0) return (null, $"{name}: no marker for the {string.Join(" and the ", missing)}");
        try
        {
            return (AngleSeries.Lean(clip, segment), "");
        }
        catch (ArgumentException error)
        {
            return (null, error.Message.Split('\n')[0]);
        }
    }
}
