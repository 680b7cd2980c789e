using System.Globalization;
using Analytics.Metrics.Motion;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Contact;

/// <summary>
/// Times of events read off frames. An event first seen at a frame happened in the interval Δ before it, so its time is taken as the frame's less Δ/2, with SD Δ/√12; for two events at an even rate
/// the halves cancel and the SD is 1/(f·√6). Rows exposed one after another shift an event by (row/H) of the read-out time. Several readings of a clip are averaged: that
/// lessens the error of judgement but not that of the frames, which they share.
/// </summary>
public static class EventTiming
{
    /// <summary>What makes a trial's readings unusable, in a sentence; null when they can be timed.</summary>
    public static string? Fault(ContactTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        if (trial.Readings.Count == 0) return $"clip '{trial.Clip}' has no reading; read the frames of first movement and contact";
        return trial.Readings.Select(r => (r.Number, Fault: r.Fault(trial.Clock, trial.Shutter))).FirstOrDefault(f => f.Fault is not null) is { Fault: { } fault } bad
            ? string.Create(CultureInfo.InvariantCulture, $"clip '{trial.Clip}', reading {bad.Number}: {fault}")
            : null;
    }

    /// <summary>Time from first movement to contact.</summary>
    /// <param name="trial">The repetition.</param>
    /// <param name="judgement">How well the events are judged, usually pooled over the day; from the trial's own repeats, or assumed, when left out.</param>
    /// <exception cref="ArgumentException">Readings that cannot be timed (<see cref="Fault"/>).</exception>
    public static TimedInterval Of(ContactTrial trial, JudgementError? judgement = null)
    {
        if (Fault(trial) is { } fault) throw new ArgumentException(fault + ".", nameof(trial));
        judgement ??= JudgementError.OfRepeats([trial]);
        var n = trial.Readings.Count;
        var (seconds, frames, shift, doubt) = (0.0, 0.0, 0.0, 0.0);
        foreach (var r in trial.Readings)
        {
            double before = trial.Clock.IntervalAt(r.FirstMovement.Frame).Seconds, after = trial.Clock.IntervalAt(r.Contact.Frame).Seconds;
            var (first, firstDoubt) = Delay(r.FirstMovement, trial.Shutter);
            var (contact, contactDoubt) = Delay(r.Contact, trial.Shutter);
            seconds += (trial.Clock.Between(r.FirstMovement.Frame, r.Contact.Frame).Seconds + ((before - after) / 2) + contact - first) / n;
            shift += (contact - first) / n;
            frames += ((before * before) + (after * after)) / 12 / n;
            doubt += ((firstDoubt * firstDoubt) + (contactDoubt * contactDoubt)) / n;
        }
        return new(seconds, new(frames, doubt, shift), judgement, n, trial.Shutter is not null);
    }

    /// <summary>Time of an event on the clip's clock in s: middle of the interval in which it fell, delay of its row added.</summary>
    internal static double Seconds(FrameClock clock, EventReading at, RollingShutter? shutter)
        => clock.Time(at.Frame).Seconds - (clock.IntervalAt(at.Frame).Seconds / 2) + Delay(at, shutter).Seconds;

    /// <summary>Mean time of an event over the readings, and the SD of one event in s: frames in full, judgement over √n.</summary>
    internal static (double Seconds, double Sd) Moment(ContactTrial trial, Func<ContactReading, EventReading> which, EventJudgement judgement)
    {
        var seconds = trial.Readings.Average(r => Seconds(trial.Clock, which(r), trial.Shutter));
        var frame = trial.Readings.Average(r => Math.Pow(trial.Clock.IntervalAt(which(r).Frame).Seconds, 2) / 12);
        return (seconds, Math.Sqrt(frame + (Math.Pow(judgement.Sd.Seconds, 2) / trial.Readings.Count)));
    }

    // A row not noted may be any: the middle of the picture, with the SD of a uniform law.
    private static (double Seconds, double Sd) Delay(EventReading at, RollingShutter? shutter) => (shutter, at.Row) switch
    {
        (null, _) => (0, 0),
        ({ } s, { } row) => (s.DelayAt(row).Seconds, 0),
        ({ } s, null) => (s.ReadOut.Seconds / 2, s.ReadOut.Seconds / Math.Sqrt(12)),
    };
}
