using Analytics.Quantities;

namespace Analytics.Metrics.Jumping;

/// <summary>
/// How much jump comes out of how little time on the ground.
/// </summary>
/// <remarks>
/// Four indices with similar names are in use. They have different units and sizes and are kept apart here:
/// <list type="bullet">
/// <item>reactive strength index, height ÷ contact time, m/s [flanagan2008];</item>
/// <item>flight : contact ratio, flight time ÷ contact time, no unit;</item>
/// <item>modified index, countermovement-jump height ÷ time to take-off, m/s [ebben2010];</item>
/// <item>flight : contraction ratio, flight time ÷ time to take-off, no unit [mcmahon2018rsi].</item>
/// </list>
/// </remarks>
public static class ReactiveStrength
{
    /// <summary>Ground contacts under this are called fast stretch-shortening work; common practice, no source.</summary>
    public static Duration FastContactLimit { get; } = Duration.FromSeconds(0.25);

    /// <summary>Reactive strength index of a drop or hurdle jump: height ÷ contact time, in m/s.</summary>
    /// <param name="height">Jump height, 0 m or more.</param>
    /// <param name="contact">Ground contact time, above 0 s.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside those ranges.</exception>
    public static Speed Index(Length height, Duration contact)
        => Require.NotNegative(height, "Jump height") / Require.Positive(contact, "Contact time");

    /// <summary>Flight time ÷ contact time of a drop or hurdle jump; no unit.</summary>
    /// <param name="flight">Flight time, 0 s or more.</param>
    /// <param name="contact">Ground contact time, above 0 s.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside those ranges.</exception>
    public static double FlightContactRatio(Duration flight, Duration contact)
        => Require.NotNegative(flight, "Flight time") / Require.Positive(contact, "Contact time");

    /// <summary>Modified index of a countermovement jump: height ÷ time from first movement to take-off, in m/s.</summary>
    /// <param name="height">Jump height, 0 m or more.</param>
    /// <param name="timeToTakeOff">From first movement to take-off, above 0 s.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside those ranges.</exception>
    public static Speed Modified(Length height, Duration timeToTakeOff)
        => Require.NotNegative(height, "Jump height") / Require.Positive(timeToTakeOff, "Time to take-off");

    /// <summary>Flight time ÷ time from first movement to take-off of a countermovement jump; no unit.</summary>
    /// <param name="flight">Flight time, 0 s or more.</param>
    /// <param name="timeToTakeOff">From first movement to take-off, above 0 s.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside those ranges.</exception>
    public static double FlightContractionRatio(Duration flight, Duration timeToTakeOff)
        => Require.NotNegative(flight, "Flight time") / Require.Positive(timeToTakeOff, "Time to take-off");
}
