namespace Analytics.Runner.Batches;

/// <summary>When a batch is told to stop, the page it is at may still be finished, if that does not take long.</summary>
internal sealed class Patience : IDisposable
{
    private static readonly TimeSpan ForOnePage = TimeSpan.FromSeconds(5);

    private readonly CancellationTokenSource end;
    private readonly CancellationTokenRegistration stop;

    public Patience(TimeProvider time, CancellationToken cancellation)
    {
        end = new(Timeout.InfiniteTimeSpan, time);
        stop = cancellation.Register(() => end.CancelAfter(ForOnePage));
    }

    /// <summary>Ends a run that takes longer.</summary>
    public CancellationToken Token => end.Token;

    public void Dispose()
    {
        stop.Dispose();
        end.Dispose();
    }
}
