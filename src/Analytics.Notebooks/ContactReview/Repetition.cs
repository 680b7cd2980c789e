using Analytics.Metrics.Contact;
using Analytics.Metrics.Trials;

namespace Analytics.Notebooks.ContactReview;

/// <summary>One filmed repetition with all that was read off it.</summary>
internal sealed record Repetition
{
    public required ContactTrial Trial { get; init; }

    public required TimedInterval Time { get; init; }

    public required ClipMotion Motion { get; init; }

    /// <summary>Speed of the centre of mass at contact, m/s.</summary>
    public required Measured Speed { get; init; }

    /// <summary>Momentum at contact, kg·m/s.</summary>
    public required Measured Momentum { get; init; }

    /// <summary>Change of trunk lean in the time after contact, in degrees, forward positive.</summary>
    public required Measured TrunkChange { get; init; }

    public string AthleteId => Trial.AthleteId;

    public WindowChances Chances => WindowChances.Of(WindowOdds.Of(Time, Trial.Window));
}
