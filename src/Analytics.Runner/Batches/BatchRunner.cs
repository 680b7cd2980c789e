using Analytics.Runner.Files;
using Analytics.Runner.Kernels;
using Analytics.Runner.Running;

namespace Analytics.Runner.Batches;

/// <summary>Runs a notebook once for each value of one of its settings, in this process, and writes a page for each.</summary>
/// <remarks>
/// Every page is what a run of its own would have written. A run that fails does not stop the others. A batch that ended
/// early, in whatever way, goes on where it was when it is run again: pages made from the same things are left alone.
/// </remarks>
/// <param name="startKernel">Starts a kernel, or hands over one that was started early.</param>
/// <param name="files">Writes the results.</param>
/// <param name="time">The clock.</param>
public sealed class BatchRunner(Func<IRepeatingKernel> startKernel, ResultFiles files, TimeProvider time)
{
    /// <summary>Runs the batch.</summary>
    /// <param name="request">What to make.</param>
    /// <param name="progress">Hears how far it is.</param>
    /// <param name="cancellation">Stops it after the page it is at, or within seconds if that takes long.</param>
    /// <exception cref="NotebookException">The notebook, a setting or the folder for results cannot be used.</exception>
    public async Task<BatchResult> RunAsync(BatchRequest request, IBatchProgress progress, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(progress);
        var clock = new RunClock(time);
        var plan = BatchPlan.Of(request);
        files.Prepare(plan.TargetOf(request.Items[0]));
        using var folder = FolderLock.Take(plan.LockFile, Path.GetFileName(request.Run.Notebook));
        ResultFiles.CleanUp(plan.Folder, plan.FileNames);
        var journal = BatchJournal.Read(plan.JournalFile);
        journal.ForgetMissing(plan.Folder);
        var toMake = ToMake(request, plan, journal);
        progress.Begins(toMake.Count, request.Items.Count - toMake.Count);

        var pages = new BatchPages(plan, journal, files);
        var ending = await MakeAsync(request, toMake, pages, progress, cancellation).ConfigureAwait(false);
        return new BatchResult
        {
            Ending = ending,
            Folder = plan.Folder,
            Made = pages.Made,
            AlreadyThere = request.Items.Count - toMake.Count,
            Failed = pages.Failed,
            Left = [.. toMake.Where(i => !pages.Has(i))],
            OutOfDate = OutOfDate(request, plan, journal),
            Took = clock.Elapsed,
        };
    }

    private async Task<BatchEnding> MakeAsync(BatchRequest request, List<BatchItem> toMake, BatchPages pages, IBatchProgress progress, CancellationToken cancellation)
    {
        using var runs = new RepeatedRuns(startKernel, request.Setting, CellLog.SettingsLabel);
        using var patience = new Patience(time, cancellation);
        var writing = Task.CompletedTask;
        for (var i = 0; i < toMake.Count && runs.IsFree && !cancellation.IsCancellationRequested; i++)
        {
            var item = toMake[i];
            progress.Starts(item, i + 1, toMake.Count);
            var cells = new CellsOnly();
            var making = pages.MakeAsync(item, new NotebookRunner(() => runs.For(item.Value), files, time), cells, patience.Token);
            // Once its cells are done a page is put together and written while the cells of the next already run.
            await Task.WhenAny(making, cells.Done).ConfigureAwait(false);
            await writing.ConfigureAwait(false);
            writing = pages.KeepAsync(item, making);
        }

        progress.Finishing();
        await writing.ConfigureAwait(false);
        return cancellation.IsCancellationRequested ? BatchEnding.Stopped : runs.IsFree ? BatchEnding.Complete : BatchEnding.TimedOut;
    }

    // One that ended badly before comes last, so that the others get their turn if it ends the whole process again.
    private static List<BatchItem> ToMake(BatchRequest request, BatchPlan plan, BatchJournal journal)
        => [.. request.Items.Where(i => request.Afresh || !journal.Holds(i.Value, plan.MadeFrom(i.Value), plan.TargetOf(i)))
            .OrderBy(i => journal.Find(i.Value) is { IsComplete: false })];

    private static List<string> OutOfDate(BatchRequest request, BatchPlan plan, BatchJournal journal)
    {
        var now = request.Items.Select(i => i.Value).ToHashSet(StringComparer.Ordinal);
        return [.. journal.Entries.Where(e => !now.Contains(e.Value) && e.MadeFrom != plan.MadeFrom(e.Value)).Select(e => e.Page).Order(StringComparer.Ordinal)];
    }
}
