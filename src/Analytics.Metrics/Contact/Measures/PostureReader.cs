using Analytics.Metrics.Motion;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Contact;

/// <summary>Angles of a repetition at its moments, and how far the trunk gives.</summary>
internal sealed class PostureReader(ContactTrial trial, EventMoment first, EventMoment contact)
{
    // Long enough for six frames at 60 Hz, short beside a stride (about 0.5 s), so that a cubic follows it; our choice.
    private const double ReachSeconds = 0.1;
    // Ankles closer than this in height may both be on the ground; our choice.
    private const double LevelMetres = 0.03;
    private const double GiveReachSeconds = 0.035;
    private const string Method = "cubic through the points within 0.1 s";

    /// <summary>From contact to where the trunk is read again.</summary>
    public const double GiveSeconds = 0.15;

    private readonly EventMoment midWay = EventMoment.MidWay(first, contact);

    public PostureAt At(ReviewMoment moment) => new(moment,
        Angle(moment, "near shin lean", (t, c) => ClipSamples.Lean(t, c, BodySegment.Shank), MarkerRole.Knee, MarkerRole.Ankle),
        Angle(moment, "far shin lean", (t, c) => ClipSamples.Lean(t, c, BodySegment.Shank.Far()), MarkerRole.FarKnee, MarkerRole.FarAnkle),
        Angle(moment, "trunk lean", (t, c) => ClipSamples.Lean(t, c, BodySegment.Trunk), MarkerRole.Shoulder, MarkerRole.Hip),
        Angle(moment, "near knee flexion", (t, c) => ClipSamples.Knee(t, c, false), MarkerRole.Hip, MarkerRole.Knee, MarkerRole.Ankle),
        Angle(moment, "near hip flexion", (t, c) => ClipSamples.Hip(t, c, false), MarkerRole.Shoulder, MarkerRole.Hip, MarkerRole.Knee));

    /// <summary>Change of trunk lean from contact to 150 ms later, in degrees: near 0 for a trunk that holds, negative for one thrown back, positive for one that folds forward.</summary>
    public ContactMeasure TrunkGive()
    {
        const string Name = "trunk change after contact";
        if (WhyNot(MarkerRole.Shoulder, MarkerRole.Hip) is { } reason) return ContactMeasure.None(Name, "°", reason);
        var (trunk, frame) = (ClipSamples.Lean(trial, trial.Digitised!, BodySegment.Trunk), trial.Digitised!.Clock.Interval.Seconds);
        if (AtContact(trunk, frame) is not { } touch) return ContactMeasure.None(Name, "°", "too few points just before contact");
        var later = contact.Seconds + GiveSeconds;
        // The trunk turns fast here: a short curve, well clear of the touch itself.
        if (trunk.At(later, GiveReachSeconds, frame, 2) is not { } after) return ContactMeasure.None(Name, "°", "the points do not go on for 0.15 s after contact");
        return new(Name, "°", MomentFigure.Of(after.Value - touch.Value, after.ValueVariance + touch.ValueVariance, after.Slope - touch.Slope, after.SlopeVariance + touch.SlopeVariance, contact, touch.Samples + after.Samples,
            FormattableString.Invariant($"trunk lean {GiveSeconds} s after contact less that at contact")), "");
    }

    /// <summary>Lean at contact of the shin whose ankle is lower: the leg on the ground, or nearest to it.</summary>
    public ContactMeasure GroundShin(PostureAt touch)
    {
        const string Name = "shin lean, leg on the ground";
        if (WhyNot(MarkerRole.Ankle, MarkerRole.FarAnkle) is { } reason) return ContactMeasure.None(Name, "°", reason);
        var clip = trial.Digitised!;
        if (Height(clip, MarkerRole.Ankle) is not { } near || Height(clip, MarkerRole.FarAnkle) is not { } far) return ContactMeasure.None(Name, "°", "too few points of the ankles just before contact");
        if (Math.Abs(near - far) < LevelMetres) return ContactMeasure.None(Name, "°", "both ankles are at one height, so it cannot be told which leg is on the ground");
        return (near < far ? touch.ShinLean : touch.FarShinLean) with { Name = Name };
    }

    // Mean height of an ankle in the last 0.05 s before the touch.
    private double? Height(DigitisedClip clip, MarkerRole role)
    {
        double[] heights =
        [
            .. Enumerable.Range(0, clip.Count)
                .Where(i => clip.Clock.Time(clip.FirstFrame + i).Seconds is var t && t < contact.Seconds && t >= contact.Seconds - (ReachSeconds / 2) && clip[role][i] is not null)
                .Select(i => clip[role][i]!.Value.YMetres),
        ];
        return heights.Length == 0 ? null : heights.Average();
    }

    private ContactMeasure Angle(ReviewMoment moment, string name, Func<ContactTrial, DigitisedClip, ClipSamples> series, params MarkerRole[] needed)
    {
        if (WhyNot(needed) is { } reason) return ContactMeasure.None(name, "°", reason);
        var frame = trial.Digitised!.Clock.Interval.Seconds;
        ClipSamples samples;
        try
        {
            samples = series(trial, trial.Digitised!);
        }
        catch (ArgumentException error)
        {
            return ContactMeasure.None(name, "°", error.Message.Split('\n')[0]);
        }
        var (at, when, method) = moment switch
        {
            ReviewMoment.FirstMovement => (samples.Before(first.Seconds, ReachSeconds, frame), first, "mean over up to 0.1 s before the first movement"),
            ReviewMoment.MidWay => (samples.At(midWay.Seconds, ReachSeconds / 2, frame, 3), midWay, Method + " around"),
            _ => (AtContact(samples, frame), contact, Method + " before"),
        };
        return at is { } found ? new(name, "°", MomentFigure.Of(found, when, $"{name}, {method}"), "") : ContactMeasure.None(name, "°", "too few points near this moment");
    }

    private LocalValue? AtContact(ClipSamples samples, double frame) => samples.At(contact.Seconds, ReachSeconds, frame, 3, contact.Seconds);

    /// <summary>Why an angle cannot be read; null when it can.</summary>
    private string? WhyNot(params MarkerRole[] needed)
    {
        if (trial.Digitised is not { } clip) return "not digitised";
        string[] missing = [.. needed.Where(r => clip.Find(r) is null).Select(r => r.InWords())];
        return missing.Length > 0 ? $"no marker for the {string.Join(" and the ", missing)}" : null;
    }
}
