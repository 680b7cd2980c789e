using System.Globalization;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Jumping;

/// <summary>What a jump trial says about height, and on which scale.</summary>
internal sealed record JumpReading(Length Height, string Series, string? Doubt)
{
    /// <summary>
    /// A mat or video height is made from flight time, so both must agree but for rounding: a 10 ms clock is 1.4 cm at 0.57 s.
    /// Anything above this is a slip of the pen or another definition of height.
    /// </summary>
    private static readonly Length Agreement = Length.FromCentimetres(2);

    /// <summary>Height of the jump; null when the trial gives neither height nor flight time.</summary>
    public static JumpReading? From(JumpTrial jump)
    {
        Length? flown = jump.FlightTime is { } t && t > Duration.Zero ? JumpHeight.FromFlightTime(t) : null;
        return (jump.Height ?? flown) is { } height ? new(height, Scale(jump), Disagreement(jump, flown)) : null;
    }

    /// <summary>Name of a method in a report.</summary>
    public static string Name(JumpMethod method) => method switch
    {
        JumpMethod.Mat => "mat",
        JumpMethod.ForcePlate => "force plate",
        JumpMethod.Reach => "jump and reach",
        JumpMethod.Video => "video",
        JumpMethod.Tape => "tape",
        _ => throw new ArgumentOutOfRangeException(nameof(method), method, "Unknown jump method."),
    };

    // A plate's own height comes from impulse; a height from flight time on the same plate is another scale [baumgart2017].
    public static string Scale(JumpTrial jump)
        => jump is { Method: JumpMethod.ForcePlate, Height: null } ? "force plate, flight time" : Name(jump.Method);

    private static string? Disagreement(JumpTrial jump, Length? flown)
    {
        if (jump.Method is not (JumpMethod.Mat or JumpMethod.Video) || jump.Height is not { } read || flown is not { } f) return null;
        var apart = Math.Abs((read - f).Metres);
        return apart <= Agreement.Metres ? null
            : string.Create(CultureInfo.InvariantCulture, $"height as read is {read.Centimetres:0.0} cm, its flight time gives {f.Centimetres:0.0} cm");
    }
}
