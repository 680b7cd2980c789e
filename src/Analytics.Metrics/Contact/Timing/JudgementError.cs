using System.Globalization;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Statistics.Reliability;

namespace Analytics.Metrics.Contact;

/// <summary>
/// How well both events are judged by eye: SD pooled over the clips that were read more than once, √(Σ squared deviations from the clip's mean/Σ(readings − 1)), or an assumed one.
/// Repeats show what differs from reading to reading, not what a reader always does (calling movement late); a second reader shows more.
/// </summary>
/// <param name="FirstMovement">Of the first movement.</param>
/// <param name="Contact">Of the contact.</param>
public sealed record JudgementError(EventJudgement FirstMovement, EventJudgement Contact)
{
    private const string Assumed = "assumed, common practice, no source";

    /// <summary>10 ms for first movement, which begins slowly, and 5 ms for contact: assumed, common practice, no source.</summary>
    public static JudgementError Usual { get; } = new(new(Duration.FromMilliseconds(10), null, Assumed), new(Duration.FromMilliseconds(5), null, Assumed));

    /// <summary>No error of judgement, to see what the frames alone do.</summary>
    public static JudgementError None { get; } = new(new(Duration.Zero, null, "left out"), new(Duration.Zero, null, "left out"));

    /// <summary>Pools the repeat readings of trials, usually those of one day and one reader; <see cref="Usual"/> when no clip was read twice.</summary>
    /// <param name="trials">The trials; those read once are passed over.</param>
    public static JudgementError OfRepeats(IEnumerable<ContactTrial> trials)
    {
        ArgumentNullException.ThrowIfNull(trials);
        ContactTrial[] repeated = [.. trials.Where(t => t.Readings.Count > 1 && EventTiming.Fault(t) is null)];
        return repeated.Length == 0 ? Usual : new(Pool(repeated, r => r.FirstMovement), Pool(repeated, r => r.Contact));
    }

    private static EventJudgement Pool(ContactTrial[] repeated, Func<ContactReading, EventReading> which)
    {
        var pooled = TypicalErrors.FromAttempts([.. repeated.Select(t => (double[])[.. t.Readings.Select(r => EventTiming.Seconds(t.Clock, which(r), t.Shutter))])]);
        var df = (int)pooled.DegreesOfFreedom;
        return new(Duration.FromSeconds(pooled.Value), df,
            string.Create(CultureInfo.InvariantCulture, $"repeat readings of {repeated.Length} {(repeated.Length == 1 ? "clip" : "clips")}, {df} df"));
    }
}
