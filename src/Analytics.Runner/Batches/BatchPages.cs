using Analytics.Runner.Files;
using Analytics.Runner.Running;

namespace Analytics.Runner.Batches;

/// <summary>Makes the pages of a batch, keeps them, and counts what became of them.</summary>
internal sealed class BatchPages(BatchPlan plan, BatchJournal journal, ResultFiles files)
{
    private readonly Lock gate = new();
    private readonly HashSet<BatchItem> done = [];
    private readonly List<BatchFailure> failed = [];

    public int Made => done.Count - failed.Count;

    public IReadOnlyList<BatchFailure> Failed => failed;

    public bool Has(BatchItem item) => done.Contains(item);

    public Task<NotebookRun> MakeAsync(BatchItem item, NotebookRunner runner, IRunProgress progress, CancellationToken cancellation)
    {
        plan.CheckNotebook();
        return runner.MakeAsync(plan.RunFor(item), progress, content => Keep(item, content, isComplete: false), cancellation);
    }

    /// <summary>Writes a page when it is made; one that was given up is not.</summary>
    public async Task KeepAsync(BatchItem item, Task<NotebookRun> making)
    {
        NotebookRun run;
        try
        {
            run = await making.ConfigureAwait(false);
        }
        catch (OperationCanceledException)
        {
            return;
        }

        Keep(item, run.Content, run.Ending == RunEnding.Complete);
        done.Add(item);
        if (run.Failure is { } failure)
            failed.Add(new BatchFailure(item, run.FailedCell!, failure, plan.TargetOf(item).Page));
    }

    // The page first, then the note of it: what is noted is there.
    private void Keep(BatchItem item, ResultContent content, bool isComplete)
    {
        var target = plan.TargetOf(item);
        var entry = new JournalEntry(
            item.Value, plan.MadeFrom(item.Value), isComplete, Path.GetFileName(target.Page), SteadyDigest.OfPage(content.Page), SteadyDigest.OfNotebook(content.Notebook));
        lock (gate)
        {
            files.Write(target, content);
            journal.Note(entry, files);
        }
    }
}
