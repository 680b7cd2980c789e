namespace Analytics.Runner.Running;

/// <summary>When a run started and how long it has been going.</summary>
internal sealed class RunClock(TimeProvider time)
{
    private readonly long clock = time.GetTimestamp();

    public DateTimeOffset Started { get; } = time.GetLocalNow();

    public TimeSpan Elapsed => time.GetElapsedTime(clock);
}
