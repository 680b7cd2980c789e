using System.Globalization;
using Analytics.Quantities;
using Analytics.Statistics;
using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Metrics.Contact;

/// <summary>
/// A time between two events on film with its standard error and what it is made of, √(quantisation² + judgement² + rows²). The 95 % interval uses Student's t; its degrees of freedom follow
/// Satterthwaite, since the SD of judgement is estimated from few repeats and the others are known.
/// </summary>
public sealed record TimedInterval : Result
{
    private readonly bool shutterKnown;

    internal TimedInterval(double seconds, (double Frames, double Rows, double Shift) variance, JudgementError judgement, int readings, bool shutterKnown)
    {
        (JudgementUsed, Readings, this.shutterKnown) = (judgement, readings, shutterKnown);
        Value = Duration.FromSeconds(seconds);
        Quantisation = Duration.FromSeconds(Math.Sqrt(variance.Frames));
        double first = Share(judgement.FirstMovement), contact = Share(judgement.Contact), total = variance.Frames + variance.Rows + first + contact;
        Judgement = Duration.FromSeconds(Math.Sqrt(first + contact));
        RowDoubt = Duration.FromSeconds(Math.Sqrt(variance.Rows));
        RowShift = Duration.FromSeconds(variance.Shift);
        StandardError = Duration.FromSeconds(Math.Sqrt(total));
        var estimated = Estimated(first, judgement.FirstMovement) + Estimated(contact, judgement.Contact);
        DegreesOfFreedom = estimated > 0 ? total * total / estimated : double.PositiveInfinity;

        double Share(EventJudgement j) => j.Sd.Seconds * j.Sd.Seconds / readings;
        static double Estimated(double share, EventJudgement j) => j.DegreesOfFreedom is { } df ? share * share / df : 0;
    }

    /// <summary>The time.</summary>
    public Duration Value { get; }

    /// <summary>Its standard error.</summary>
    public Duration StandardError { get; }

    /// <summary>Part of the frames: √((Δ₁² + Δ₂²)/12), 1/(f·√6) at an even rate.</summary>
    public Duration Quantisation { get; }

    /// <summary>Part of judging both events by eye, less by the root of the readings.</summary>
    public Duration Judgement { get; }

    /// <summary>Part of rows that were not noted, for a camera that exposes them one after another; 0 when they were, or when nothing is known of the camera.</summary>
    public Duration RowDoubt { get; }

    /// <summary>Correction for the rows, already in <see cref="Value"/>.</summary>
    public Duration RowShift { get; }

    /// <summary>Judgement used.</summary>
    public JudgementError JudgementUsed { get; }

    /// <summary>Readings averaged.</summary>
    public int Readings { get; }

    /// <summary>Degrees of freedom of <see cref="StandardError"/>; infinite when all parts are taken as known.</summary>
    public double DegreesOfFreedom { get; }

    /// <summary>95 % interval, in s.</summary>
    public Interval Interval
    {
        get
        {
            var reach = StudentLaw.TwoSided(0.95, DegreesOfFreedom) * StandardError.Seconds;
            return new(Value.Seconds - reach, Value.Seconds + reach);
        }
    }

    /// <summary>The time as an estimate, in s.</summary>
    public Estimate Estimate => new(Value.Seconds, StandardError.Seconds, Interval, Readings, Method);

    private string Method => string.Create(CultureInfo.InvariantCulture,
        $"frames counted; judgement of first movement {JudgementUsed.FirstMovement}, of contact {JudgementUsed.Contact}");

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Time to contact", Method,
    [
        new("time to contact", Value.Seconds, "s") { Interval = Interval, StandardError = StandardError.Seconds, DegreesOfFreedom = DegreesOfFreedom },
        new("error of the frames", Quantisation.Milliseconds, "ms"),
        new("error of judgement", Judgement.Milliseconds, "ms"),
        new("error of rows not noted", RowDoubt.Milliseconds, "ms"),
        new("correction for rows", RowShift.Milliseconds, "ms") { Note = "in the time already" },
    ])
    {
        Basis = $"{Readings} {(Readings == 1 ? "reading" : "readings")} of the clip",
        Remarks = shutterKnown ? [] : ["How the camera exposes its rows is not known; events at different heights may be shifted by up to its read-out time (5 to 30 ms for phones, from memory)."],
    };
}
