using Analytics.Metrics.Contact;
using Analytics.Metrics.Motion;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Notebooks.ContactReview;

/// <summary>The digitised points of a repetition for pictures: gaps filled, even in time, filtered. Figures come from the points themselves, not from here.</summary>
internal sealed class ClipPicture
{
    // Where residuals give no cut-off; usual for a sprint, from memory.
    private const double FallbackHertz = 10;
    private const double LongestGapSeconds = 0.05;
    private readonly double first;
    private readonly double contact;

    private ClipPicture(ContactMeasures measures, DigitisedClip? clip)
    {
        Clip = clip;
        // Pictures are in the time of frames; half a frame does not show.
        first = measures.Trial.Readings.Average(r => measures.Trial.Clock.Time(r.FirstMovement.Frame).Seconds);
        contact = measures.Trial.Readings.Average(r => measures.Trial.Clock.Time(r.Contact.Frame).Seconds);
    }

    /// <summary>The points; null when there are none or they cannot be filtered.</summary>
    public DigitisedClip? Clip { get; }

    public static ClipPicture Of(ContactMeasures measures)
    {
        if (measures.Trial.Digitised is not { } raw) return new(measures, null);
        try
        {
            var even = EvenGrid.Of(raw);
            var whole = new GapFill(Math.Max(1, (int)(LongestGapSeconds / even.Clock.Interval.Seconds))).Apply(even);
            return new(measures, ClipSmoother.SmoothByResiduals(whole, Frequency.FromHertz(Math.Min(FallbackHertz, 0.4 * even.Clock.Rate.Hertz))).Clip);
        }
        catch (ArgumentException)
        {
            // Too few frames for a filter: no picture; the figures say for themselves what they could not read.
            return new(measures, null);
        }
    }

    /// <summary>Seconds from contact to a sample, negative before it.</summary>
    public double SecondsToContact(int sample) => Clip!.Clock.Time(Clip.FirstFrame + sample).Seconds - contact;

    /// <summary>First movement on the same scale.</summary>
    public double FirstMovement => first - contact;

    /// <summary>The sample nearest to a moment; null when the points do not reach it.</summary>
    public int? SampleAt(ReviewMoment moment)
    {
        if (Clip is null) return null;
        var at = moment switch { ReviewMoment.FirstMovement => first, ReviewMoment.MidWay => (first + contact) / 2, _ => contact };
        var frame = Clip.Clock.FrameNearest(Duration.FromSeconds(at));
        return frame >= Clip.FirstFrame && frame <= Clip.LastFrame && Math.Abs(Clip.Clock.Time(frame).Seconds - at) <= 1.5 * Clip.Clock.Interval.Seconds ? frame - Clip.FirstFrame : null;
    }

    /// <summary>The lean of a segment; null without its markers.</summary>
    public AngleSeries? Lean(BodySegment segment)
    {
        if (Clip?.Find(segment.Proximal) is null || Clip.Find(segment.Distal) is null) return null;
        try
        {
            return AngleSeries.Lean(Clip, segment);
        }
        catch (ArgumentException)
        {
            // Both ends clicked at one place in some frame.
            return null;
        }
    }
}
