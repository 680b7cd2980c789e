using Analytics.Metrics.Contact;
using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Metrics.Trials;

/// <summary>
/// One repetition of a contact drill on film: from first movement to the first touch. The trial carries what was read and how the clip was recorded; times and their errors are made by
/// <see cref="EventTiming"/>, all else by the contact measures. Body mass comes from <see cref="AthleteDay"/>.
/// </summary>
public sealed record ContactTrial : Trial
{
    /// <summary>Name of the clip.</summary>
    public required string Clip { get; init; }

    /// <summary>When each frame was taken: from the rate, or from the time stamps of the recording.</summary>
    public required FrameClock Clock { get; init; }

    /// <summary>The readings of the events, by rising number; at least one. More than one is repeat reading of the same clip.</summary>
    public required IReadOnlyList<ContactReading> Readings { get; init; }

    /// <summary>How the rows of the picture are exposed; null when not known, and then nothing is corrected.</summary>
    public RollingShutter? Shutter { get; init; }

    /// <summary>Gap covered, from the place of first movement to the place of contact; null when not measured.</summary>
    public Length? Gap { get; init; }

    /// <summary>What the player ran into.</summary>
    public ContactParty Against { get; init; } = ContactParty.NotNoted;

    /// <summary>Which way the player runs in the picture; null when not noted. The points of <see cref="Digitised"/> are mirrored already.</summary>
    public Travel? Travel { get; init; }

    /// <summary>The digitised points in metres, x forward, y up, as digitised (not yet filtered); null when the clip was only timed.</summary>
    public DigitisedClip? Digitised { get; init; }

    /// <summary>Ground contacts of the feet, if they were read; in order of touchdown.</summary>
    public IReadOnlyList<FootContact> Steps { get; init; } = [];

    /// <summary>The time into contact the drill asks for.</summary>
    public TargetWindow Window { get; init; } = TargetWindow.Usual;
}
