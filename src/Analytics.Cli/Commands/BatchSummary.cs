using System.Globalization;
using Analytics.Runner.Batches;

namespace Analytics.Cli.Commands;

/// <summary>What a batch came to, in words.</summary>
internal static class BatchSummary
{
    private const int MostNamed = 20;

    /// <summary>What did not go as it should, for the error stream.</summary>
    public static IEnumerable<string> Complaints(BatchResult result, IReadOnlyList<BatchItem> without)
    {
        foreach (var failed in result.Failed)
        {
            yield return FailureText.Stopped(PlainLine.Of(failed.Item.Label), failed.Cell, failed.Failure);
            yield return $"  what there was before that is in {RunCommand.Shown(failed.Page)}";
        }

        if (without.Count > 0)
            yield return $"No results: {without.Count}, no page: {Named(without)}.";
        if (result.OutOfDate.Count > 0)
            yield return $"Out of date: {result.OutOfDate.Count} of earlier runs, left as they are; delete them if they are no longer wanted: {string.Join(", ", result.OutOfDate.Take(MostNamed))}{More(result.OutOfDate.Count)}.";
        if (result.Ending == BatchEnding.TimedOut)
            yield return "The run ends here, since a busy cell cannot be stopped.";
        if (result.Ending == BatchEnding.Stopped)
            yield return "Stopped.";
        if (result.Left.Count > 0)
            yield return $"Left: {result.Left.Count}: {Named(result.Left)}. The same command goes on with them.";
    }

    /// <summary>What was made.</summary>
    public static IEnumerable<string> Lines(BatchResult result, IReadOnlyList<BatchItem> without)
    {
        yield return string.Create(CultureInfo.InvariantCulture,
            $"{result.Made} made, {result.AlreadyThere} already there, {result.Failed.Count} failed, {without.Count} without results, in {result.Took.TotalSeconds:0.0} s.");
        yield return $"  pages  {RunCommand.Shown(result.Folder)}";
    }

    private static string Named(IReadOnlyList<BatchItem> items) => string.Join(", ", items.Take(MostNamed).Select(i => PlainLine.Of(i.Label))) + More(items.Count);

    private static string More(int count) => count > MostNamed ? string.Create(CultureInfo.InvariantCulture, $" and {count - MostNamed} more") : "";
}
