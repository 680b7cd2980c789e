using Analytics.Runner.Batches;

namespace Analytics.Runner.Tests.Batches;

/// <summary>Keeps what a batch tells of its progress.</summary>
internal sealed class BatchHeard : IBatchProgress
{
    public List<string> Lines { get; } = [];

    public Action<int> OnStart { get; init; } = _ => { };

    public void Begins(int toMake, int alreadyThere) => Lines.Add($"{toMake} to make, {alreadyThere} there");

    public void Starts(BatchItem item, int index, int count)
    {
        Lines.Add($"{item.Label} {index}/{count}");
        OnStart(index);
    }

    public void Finishing() => Lines.Add("finishing");
}
