using System.Globalization;
using Analytics.Quantities;
using Analytics.Statistics;
using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Metrics.Contact;

/// <summary>
/// The frame rate from which the intervals of two times no longer touch: z·√(1/(6f²) + j²) ≤ half their difference, with j the error of judging both events. Below it the two
/// times cannot be told apart from one repetition each.
/// </summary>
public sealed record FrameRateNeeded : Result
{
    private static readonly double[] Usual = [24, 25, 30, 50, 60, 100, 120, 240, 480, 1000];

    private FrameRateNeeded(Duration one, Duration other, double confidence, Duration judgement, Frequency? rate)
        => (One, Other, Confidence, Judgement, Rate) = (one, other, confidence, judgement, rate);

    /// <summary>One time.</summary>
    public Duration One { get; }

    /// <summary>The other time.</summary>
    public Duration Other { get; }

    /// <summary>Coverage of the intervals.</summary>
    public double Confidence { get; }

    /// <summary>Error of judging both events.</summary>
    public Duration Judgement { get; }

    /// <summary>The lowest rate; null when the error of judgement alone is too large and no rate helps.</summary>
    public Frequency? Rate { get; }

    /// <summary>The lowest usual rate of cameras that is enough; null when none is.</summary>
    public Frequency? UsualRate => Rate is { } needed && Usual.FirstOrDefault(r => r >= needed.Hertz) is var r and > 0 ? Frequency.FromHertz(r) : null;

    /// <summary>The rate needed to tell two times apart.</summary>
    /// <param name="one">One time, for example the beginning of a window.</param>
    /// <param name="other">The other, for example its end; not the same.</param>
    /// <param name="confidence">Coverage of the intervals, between 0 and 1.</param>
    /// <param name="judgement">Judgement of the events; assumed when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">Equal times, or a confidence outside that range.</exception>
    public static FrameRateNeeded ToTell(Duration one, Duration other, double confidence = 0.95, JudgementError? judgement = null)
    {
        if (one == other) throw new ArgumentOutOfRangeException(nameof(other), other, $"two times must differ to be told apart; both are {one}.");
        if (confidence is not (> 0 and < 1))
            throw new ArgumentOutOfRangeException(nameof(confidence), confidence, string.Create(CultureInfo.InvariantCulture, $"the confidence must lie between 0 and 1; got {confidence}."));
        judgement ??= JudgementError.Usual;
        var judged = double.Hypot(judgement.FirstMovement.Sd.Seconds, judgement.Contact.Sd.Seconds);
        var allowed = Math.Abs((other - one).Seconds) / (2 * NormalLaw.TwoSided(confidence));
        var frames = (allowed * allowed) - (judged * judged);
        return new(one, other, confidence, Duration.FromSeconds(judged), frames > 0 ? Frequency.FromHertz(1 / Math.Sqrt(6 * frames)) : null);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(string.Create(CultureInfo.InvariantCulture, $"Frame rate to tell {One} from {Other}"), string.Create(CultureInfo.InvariantCulture, $"{100 * Confidence:0.##} % intervals that do not touch"),
    [
        new("lowest rate", Rate?.Hertz, "Hz") { Note = Rate is null ? "no rate is enough: judging the events by eye errs too much" : string.Empty },
        new("lowest usual rate", UsualRate?.Hertz, "Hz"),
        new("error of judging both events", Judgement.Milliseconds, "ms"),
    ]) { Basis = "one repetition each" };
}
