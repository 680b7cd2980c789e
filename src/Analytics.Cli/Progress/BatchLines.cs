using System.Globalization;
using Analytics.Runner.Batches;

namespace Analytics.Cli.Progress;

/// <summary>A line per page, for logs.</summary>
internal sealed class BatchLines(TextWriter writer, string notebook) : BatchProgress
{
    public override void Begins(int toMake, int alreadyThere)
    {
        if (alreadyThere > 0)
            writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{notebook}: {alreadyThere} already there, {toMake} to make"));
    }

    public override void Starts(BatchItem item, int index, int count)
    {
        writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{notebook}: {PlainLine.Of(item.Label)} ({index} of {count})"));
        writer.Flush();
    }

    public override void Finishing()
    {
    }

    public override void Dispose() => writer.Flush();
}
