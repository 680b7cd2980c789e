using System.Globalization;
using Analytics.Quantities;

namespace Analytics.Metrics.Contact;

/// <summary>The time into contact a drill asks for. It depends on the gap and the drill; it is a goal of training, no norm of ability.</summary>
public sealed record TargetWindow
{
    /// <summary>Makes a window.</summary>
    /// <param name="earliest">Above 0.</param>
    /// <param name="latest">After <paramref name="earliest"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges.</exception>
    public TargetWindow(Duration earliest, Duration latest)
    {
        Earliest = Require.Positive(earliest, "the beginning of a target window");
        Latest = latest > earliest ? latest
            : throw new ArgumentOutOfRangeException(nameof(latest), latest,
                string.Create(CultureInfo.InvariantCulture, $"a target window must end after it begins at {earliest}; got {latest}."));
    }

    /// <summary>0.40 to 0.45 s: common practice, no source.</summary>
    public static TargetWindow Usual { get; } = new(Duration.FromSeconds(0.40), Duration.FromSeconds(0.45));

    /// <summary>Beginning.</summary>
    public Duration Earliest { get; }

    /// <summary>End.</summary>
    public Duration Latest { get; }

    /// <summary>The window in words.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Earliest.Seconds:0.00#} to {Latest.Seconds:0.00#} s");
}
