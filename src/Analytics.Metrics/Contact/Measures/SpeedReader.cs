using Analytics.Metrics.Motion;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Contact;

/// <summary>Speed and momentum of the centre of mass at contact.</summary>
internal static class SpeedReader
{
    private const double ReachSeconds = 0.15;

    // How fast the centre of segments that were not clicked may move against the rest, SD in m/s for the whole body unseen: arms and head of a runner. Our assumption, no source.
    private const double UnseenSpeed = 0.3;

    /// <summary>Below this share of body mass a speed is not that of the body; our choice.</summary>
    private const double LeastShare = 0.5;

    public static ContactMeasure Speed(ContactTrial trial, EventMoment contact)
    {
        const string Name = "speed at contact";
        if (trial.Digitised is not { } clip) return ContactMeasure.None(Name, "m/s", "not digitised");
        CentreOfMass centre;
        try
        {
            centre = CentreOfMass.OfBody(SegmentTable.DeLevaMale, clip);
        }
        catch (ArgumentException)
        {
            return ContactMeasure.None(Name, "m/s", "no segment of the body has both its ends digitised");
        }
        if (centre.MassShare < LeastShare)
            return ContactMeasure.None(Name, "m/s", FormattableString.Invariant($"the markers show {100 * centre.MassShare:0} % of body mass; shoulder, hips, knees and ankles are needed"));
        var samples = ClipSamples.CentreForward(trial, clip, centre);
        if (samples.At(contact.Seconds, ReachSeconds, clip.Clock.Interval.Seconds, 3, contact.Seconds) is not { } at)
            return ContactMeasure.None(Name, "m/s", "too few points of the whole body just before contact");
        double scale = (clip.ScaleRelativeSd ?? 0) * at.Slope, unseen = (1 - Math.Min(1, centre.MassShare)) * UnseenSpeed;
        // The moment moves a speed by the acceleration, here that of a run not yet at its top: from the curve's own second half.
        var acceleration = samples.At(contact.Seconds - (ReachSeconds / 2), ReachSeconds / 2, clip.Clock.Interval.Seconds, 2, contact.Seconds) is { } middle
            ? (at.Slope - middle.Slope) / (ReachSeconds / 2) : 0;
        return new(Name, "m/s", MomentFigure.Of(at.Slope, at.SlopeVariance + (scale * scale) + (unseen * unseen), acceleration, 0, contact, at.Samples,
            FormattableString.Invariant($"centre of {100 * centre.MassShare:0} % of body mass, cubic through the points within {ReachSeconds} s before contact")), "");
    }

    public static ContactMeasure Momentum(ContactMeasure speed, Mass? bodyMass)
    {
        const string Name = "momentum at contact", Unit = "kg·m/s";
        if (speed.Estimate is not { } v) return ContactMeasure.None(Name, Unit, speed.WhyNot);
        if (bodyMass is not { } mass) return ContactMeasure.None(Name, Unit, "no body mass known");
        if (v.StandardError is not { } error) return new(Name, Unit, v.Times(mass.Kilograms) with { Method = v.Method + "; times body mass" }, "");
        var whole = double.Hypot(mass.Kilograms * error, v.Value * BodyMassError.Usual.Kilograms);
        var reach = whole * (v.Interval!.Value.High - v.Value) / error;
        var value = mass.Kilograms * v.Value;
        return new(Name, Unit, new(value, whole, new(value - reach, value + reach), v.N, $"{v.Method}; times body mass {mass} (SD {BodyMassError.Usual})"), "");
    }
}
