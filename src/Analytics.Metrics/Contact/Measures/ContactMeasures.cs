using Analytics.Metrics.Motion;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Statistics.Results;

namespace Analytics.Metrics.Contact;

/// <summary>
/// Everything read off one repetition, each figure with its error or the reason why it is missing. Figures at contact use only what was seen before the first touch, straight from the points by local curves;
/// the filter serves pictures. Not in the errors: a camera that is not square, movement out of the plane, markers that are not the joint centres.
/// </summary>
public sealed record ContactMeasures : Result
{
    private ContactMeasures(ContactTrial trial, JudgementError judgement, Mass? bodyMass)
    {
        (Trial, Time) = (trial, EventTiming.Of(trial, judgement));
        Odds = WindowOdds.Of(Time, trial.Window);
        EventMoment first = EventMoment.FirstMovement(trial, judgement), contact = EventMoment.Contact(trial, judgement);
        var reader = new PostureReader(trial, first, contact);
        Postures = [reader.At(ReviewMoment.FirstMovement), reader.At(ReviewMoment.MidWay), reader.At(ReviewMoment.Contact)];
        GroundShinLean = reader.GroundShin(Postures[2]);
        TrunkGive = reader.TrunkGive();
        Speed = SpeedReader.Speed(trial, contact);
        Momentum = SpeedReader.Momentum(Speed, bodyMass);
        Steps = StepTimes.Of(trial.Clock, trial.Steps);
    }

    /// <summary>The repetition.</summary>
    public ContactTrial Trial { get; }

    /// <summary>Time from first movement to contact.</summary>
    public TimedInterval Time { get; }

    /// <summary>How likely that lies before, inside and after the window of the drill.</summary>
    public WindowOdds Odds { get; }

    /// <summary>Posture at first movement, mid-way and contact.</summary>
    public IReadOnlyList<PostureAt> Postures { get; }

    /// <summary>Lean at contact of the shin whose ankle is lower, so that repetitions can be compared whichever leg is in front.</summary>
    public ContactMeasure GroundShinLean { get; }

    /// <summary>Speed of the centre of mass just before contact, forward, in m/s.</summary>
    public ContactMeasure Speed { get; }

    /// <summary>Body mass times speed, in kg·m/s.</summary>
    public ContactMeasure Momentum { get; private init; }

    /// <summary>Change of trunk lean over the 150 ms after contact, in degrees; the nearer to 0, the stiffer.</summary>
    public ContactMeasure TrunkGive { get; }

    /// <summary>Times of the steps whose ground contacts were read; empty when none were.</summary>
    public IReadOnlyList<StepTime> Steps { get; }

    /// <summary>The measures of a repetition.</summary>
    /// <param name="trial">The repetition.</param>
    /// <param name="judgement">How well events are judged, usually pooled over the day; from the trial's own repeats, or assumed, when left out.</param>
    /// <param name="bodyMass">Body mass; without it there is no momentum.</param>
    /// <exception cref="ArgumentException">Readings that cannot be timed (<see cref="EventTiming.Fault"/>).</exception>
    public static ContactMeasures Of(ContactTrial trial, JudgementError? judgement = null, Mass? bodyMass = null)
    {
        ArgumentNullException.ThrowIfNull(trial);
        return new(trial, judgement ?? JudgementError.OfRepeats([trial]), bodyMass);
    }

    /// <summary>The same repetition of a player of another body mass: only momentum is another.</summary>
    /// <param name="bodyMass">Body mass; without it there is no momentum.</param>
    internal ContactMeasures Of(Mass? bodyMass) => this with { Momentum = SpeedReader.Momentum(Speed, bodyMass) };

    /// <summary>The posture at a moment.</summary>
    public PostureAt At(ReviewMoment moment) => Postures[(int)moment];

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new($"Repetition {Trial.Clip}", "frames counted; angles and speed by local curves through the digitised points",
    [
        new("time to contact", Time.Value.Seconds, "s") { Interval = Time.Interval, StandardError = Time.StandardError.Seconds, DegreesOfFreedom = Time.DegreesOfFreedom },
        .. At(ReviewMoment.Contact).All.Select(m => (m with { Name = m.Name + " at contact" }).Line()), GroundShinLean.Line(), Speed.Line(), Momentum.Line(), TrunkGive.Line(),
        .. Steps.Where(s => s.Contact is not null).Select(s => new ResultLine("step " + s.Number.ToString(System.Globalization.CultureInfo.InvariantCulture) + ", on the ground", s.Contact!.Value.Value.Seconds, "s") { StandardError = s.Contact.Value.StandardError.Seconds }),
    ])
    {
        Basis = $"{Time.Readings} {(Time.Readings == 1 ? "reading" : "readings")} of the clip, {(Trial.Digitised is { } clip ? $"{clip.Tracks.Count} markers over {clip.Count} frames" : "not digitised")}",
        Remarks = ["Leans are from upright, forward positive. A camera that is not square and movement out of the plane are not in the errors."],
    };
}
