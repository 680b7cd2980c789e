using System.Globalization;
using Analytics.Metrics.Motion;

namespace Analytics.Metrics.Contact;

/// <summary>One reading of one repetition: both its events. Reading the same clip again on another occasion shows how well events can be judged.</summary>
/// <param name="Number">Which reading, from 1.</param>
/// <param name="FirstMovement">First frame in which the player moves towards the contact.</param>
/// <param name="Contact">First frame in which the bodies (or body and bag) touch.</param>
public sealed record ContactReading(int Number, EventReading FirstMovement, EventReading Contact)
{
    /// <summary>What is wrong with the reading, in a sentence with what to do; null when it can be used.</summary>
    /// <param name="clock">Times of the frames of the clip.</param>
    /// <param name="shutter">How the rows are exposed; null when not known.</param>
    public string? Fault(FrameClock clock, RollingShutter? shutter = null)
    {
        ArgumentNullException.ThrowIfNull(clock);
        if (Number < 1) return Say($"the number of a reading must be 1 or more; got {Number}");
        if (FaultOf("first movement", FirstMovement, clock, shutter) is { } first) return first;
        if (FaultOf("contact", Contact, clock, shutter) is { } second) return second;
        if (Contact.Frame < FirstMovement.Frame)
            return Say($"contact at frame {Contact.Frame} comes before first movement at frame {FirstMovement.Frame}; check whether the two frames were swapped");
        return Contact.Frame == FirstMovement.Frame
            ? Say($"contact and first movement are both at frame {Contact.Frame}; a run into contact takes many frames, so read both events again")
            : null;
    }

    private static string? FaultOf(string what, EventReading at, FrameClock clock, RollingShutter? shutter)
    {
        if (!clock.Covers(at.Frame))
            return Say($"{what} is at frame {at.Frame}; the time stamps cover frames {clock.FirstFrame} to {clock.FirstFrame + clock.FrameCount - 1}");
        if (at.Row is not { } row) return null;
        if (!(row >= 0 && double.IsFinite(row))) return Say($"{what} is at row {row} of the picture; rows count from 0 at the top");
        return row > shutter?.PictureHeightPixels
            ? Say($"{what} is at row {row} of the picture, which has {shutter.PictureHeightPixels} rows")
            : null;
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
