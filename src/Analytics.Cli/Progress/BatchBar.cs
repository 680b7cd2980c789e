using System.Globalization;
using Analytics.Runner.Batches;

namespace Analytics.Cli.Progress;

/// <summary>A bar that fills as pages are made, for a terminal.</summary>
internal sealed class BatchBar(TextWriter writer, string notebook) : BatchProgress
{
    private readonly LiveBar bar = new(writer, notebook);

    public override void Begins(int toMake, int alreadyThere) => bar.Show(0, Math.Max(toMake, 1), alreadyThere == 0 ? notebook : string.Create(CultureInfo.InvariantCulture, $"{alreadyThere} already there"));

    public override void Starts(BatchItem item, int index, int count)
        => bar.Show(index - 1, count, string.Create(CultureInfo.InvariantCulture, $"{PlainLine.Of(item.Label)}, {index} of {count}"));

    public override void Finishing() => bar.Fill("writing");

    public override void Dispose() => bar.Dispose();
}
