using Analytics.Metrics.Contact;
using Analytics.Metrics.Motion;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Season.Clips;

/// <summary>One row of <c>contact.csv</c>: one reading. Rows of one repetition become one <see cref="ContactTrial"/>; an attempt of 0 is not numbered yet.</summary>
internal sealed record ContactRow : Trial
{
    public required string Clip { get; init; }

    /// <summary>Number of the reading; null when not numbered.</summary>
    public required int? Reading { get; init; }

    /// <summary>The rate as typed, Hz; null when not given.</summary>
    public required double? RateHertz { get; init; }

    public required EventReading FirstMovement { get; init; }

    public required EventReading Contact { get; init; }

    public required Length? Gap { get; init; }

    public required ContactParty Against { get; init; }

    public required Travel? Travel { get; init; }

    /// <summary>Ground contacts read off the clip; empty when none were.</summary>
    public IReadOnlyList<FootContact> Steps { get; init; } = [];

    /// <summary>The column in which this row differs from another of the same repetition though it must not; null when it does not.</summary>
    public string? DiffersIn(ContactRow other)
        => RateHertz != other.RateHertz ? "rate_hz"
            : Gap != other.Gap ? "gap"
            : Against != other.Against ? "against"
            : Travel != other.Travel ? "travel"
            : !Steps.SequenceEqual(other.Steps) && Steps.Count > 0 && other.Steps.Count > 0 ? "steps"
            : null;
}
