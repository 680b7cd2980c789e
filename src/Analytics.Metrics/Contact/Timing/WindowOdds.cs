using Analytics.Quantities;
using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Metrics.Contact;

/// <summary>
/// How likely the true time lies before, inside and after a target window, given the time measured and its error (Student's t about the measured time, nothing else assumed known).
/// With phone rates a verdict of inside or outside is seldom certain, so chances are given and no verdict.
/// </summary>
public sealed record WindowOdds : Result
{
    private WindowOdds(TimedInterval time, TargetWindow window, double before, double after) => (Time, Window, Before, After) = (time, window, before, after);

    /// <summary>The time measured.</summary>
    public TimedInterval Time { get; }

    /// <summary>The window.</summary>
    public TargetWindow Window { get; }

    /// <summary>Chance of a time before the window, 0 to 1.</summary>
    public double Before { get; }

    /// <summary>Chance of a time inside.</summary>
    public double Inside => Math.Max(0, 1 - Before - After);

    /// <summary>Chance of a time after the window.</summary>
    public double After { get; }

    /// <summary>The chances for a time.</summary>
    /// <param name="time">The time measured.</param>
    /// <param name="window">The window; <see cref="TargetWindow.Usual"/> when left out.</param>
    public static WindowOdds Of(TimedInterval time, TargetWindow? window = null)
    {
        ArgumentNullException.ThrowIfNull(time);
        window ??= TargetWindow.Usual;
        return new(time, window, Below(window.Earliest), 1 - Below(window.Latest));

        double Below(Duration edge) => time.StandardError > Duration.Zero
            ? StudentLaw.Cdf((edge - time.Value) / time.StandardError, time.DegreesOfFreedom)
            : time.Value < edge ? 1 : 0;
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new($"Time to contact against the window {Window}", "Student's t about the measured time",
    [
        new("before", 100 * Before, "%"),
        new("inside", 100 * Inside, "%"),
        new("after", 100 * After, "%"),
    ]) { Basis = $"{Time.Value} with standard error {Time.StandardError}" };
}
