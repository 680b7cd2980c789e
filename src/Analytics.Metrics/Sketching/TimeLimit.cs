namespace Analytics.Metrics.Sketching;

/// <summary>Work that may never end, since it asks a formula that anybody wrote.</summary>
internal static class TimeLimit
{
    /// <summary>Does the work; whether it was done within the limit. Work that was not goes on behind and is not to be looked at.</summary>
    /// <param name="work">The work; what it throws is thrown here.</param>
    /// <param name="limit">The limit; <see cref="Timeout.InfiniteTimeSpan"/> for none, and then it is done here.</param>
    public static bool Kept(Action work, TimeSpan limit)
    {
        if (limit == Timeout.InfiniteTimeSpan)
        {
            work();
            return true;
        }

        // A thread of its own: work left behind must not take one that others wait for, and a full pool must not pass for a slow formula.
        var task = Task.Factory.StartNew(work, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        if (!((IAsyncResult)task).AsyncWaitHandle.WaitOne(limit)) return false;
        task.GetAwaiter().GetResult();
        return true;
    }
}
