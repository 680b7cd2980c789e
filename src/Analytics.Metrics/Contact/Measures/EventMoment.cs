using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Contact;

/// <summary>A moment of a repetition on the clock of its clip.</summary>
/// <param name="Seconds">When it happened, the row in which it was seen counted; every sample of a marker is compared with this, its own row counted.</param>
/// <param name="Variance">Variance of the moment, s².</param>
/// <param name="FrameVariance">Its part that is uniform over one frame interval; 0 where several are mixed.</param>
/// <param name="EstimatedVariance">Its part that rests on few repeat readings.</param>
/// <param name="DegreesOfFreedom">Of that part.</param>
internal readonly record struct EventMoment(double Seconds, double Variance, double FrameVariance, double EstimatedVariance, double DegreesOfFreedom)
{
    public static EventMoment FirstMovement(ContactTrial trial, JudgementError judgement) => Of(trial, r => r.FirstMovement, judgement.FirstMovement);

    public static EventMoment Contact(ContactTrial trial, JudgementError judgement) => Of(trial, r => r.Contact, judgement.Contact);

    /// <summary>Half way in time.</summary>
    public static EventMoment MidWay(EventMoment first, EventMoment contact) => new(
        (first.Seconds + contact.Seconds) / 2, (first.Variance + contact.Variance) / 4, 0,
        (first.EstimatedVariance + contact.EstimatedVariance) / 4, Math.Min(first.DegreesOfFreedom, contact.DegreesOfFreedom));

    private static EventMoment Of(ContactTrial trial, Func<ContactReading, EventReading> which, EventJudgement judgement)
    {
        var (seconds, sd) = EventTiming.Moment(trial, which, judgement);
        var judged = judgement.Sd.Seconds * judgement.Sd.Seconds / trial.Readings.Count;
        return new(seconds, sd * sd, (sd * sd) - judged, judgement.DegreesOfFreedom is null ? 0 : judged, judgement.DegreesOfFreedom ?? double.PositiveInfinity);
    }
}
