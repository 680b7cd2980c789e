using Analytics.Runner.Running;

namespace Analytics.Runner.Batches;

/// <summary>Hears when the cells of a run are done and only its files are left to make.</summary>
internal sealed class CellsOnly : IRunProgress
{
    private readonly TaskCompletionSource done = new(TaskCreationOptions.RunContinuationsAsynchronously);

    public Task Done => done.Task;

    public void CellStarts(string label, int index, int count)
    {
    }

    public void Writing() => done.TrySetResult();
}
