namespace Analytics.Metrics.Sketching;

/// <summary>How long a formula may take. A formula that never ends cannot be stopped, only left behind.</summary>
/// <param name="OneDay">For one athlete's day, above 0; <see cref="Timeout.InfiniteTimeSpan"/> for no limit.</param>
/// <param name="SlowDays">So many days that took longer, and the formula is given up.</param>
public sealed record SketchLimits(TimeSpan OneDay, int SlowDays)
{
    /// <summary>For asking the formula again on made-up days, all together: how errors of its inputs carry, whose trials it uses.</summary>
    public TimeSpan MadeUp => OneDay == Timeout.InfiniteTimeSpan ? OneDay : 15 * OneDay;

    /// <summary>Two seconds, three times: a season of 300 athlete-days should take less than one second in all.</summary>
    public static SketchLimits Usual { get; } = new(TimeSpan.FromSeconds(2), 3);

    /// <summary>No limit, for a formula known to end: worked out on the caller's thread, the same on a machine however busy.</summary>
    public static SketchLimits None { get; } = new(Timeout.InfiniteTimeSpan, int.MaxValue);
}
