using Analytics.Runner.Batches;

namespace Analytics.Cli.Progress;

/// <summary>Shows how far a batch is: a bar on a terminal, a plain line per page elsewhere.</summary>
internal abstract class BatchProgress : IBatchProgress, IDisposable
{
    public static BatchProgress For(Screen screen, string notebook)
        => screen.IsTerminal ? new BatchBar(screen.Error, notebook) : new BatchLines(screen.Error, notebook);

    public abstract void Begins(int toMake, int alreadyThere);

    public abstract void Starts(BatchItem item, int index, int count);

    public abstract void Finishing();

    public abstract void Dispose();
}
