using System.Globalization;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.OnTrial;

/// <summary>What stands under the head of a report with metrics on trial.</summary>
internal static class TrialNotes
{
    private const int MostLines = 12;

    /// <summary>The head, followed by what the reader must know of metrics on trial; the head alone without any.</summary>
    /// <param name="head">The head of the report.</param>
    /// <param name="trials">The metrics on trial.</param>
    /// <param name="leftAlone">What does not rest on them, for example <c>The answers and the needs</c>.</param>
    /// <param name="name">Name of an athlete as this report calls him.</param>
    /// <param name="day">A day in words.</param>
    public static Block Under(Block head, TrialMetrics trials, string leftAlone, Func<string, string> name, Func<DateOnly, string> day)
        => trials.IsEmpty ? head : new Together([head, new UnderHead(Lines(trials, leftAlone, name, day))]);

    private static IEnumerable<Block> Lines(TrialMetrics trials, string leftAlone, Func<string, string> name, Func<DateOnly, string> day)
    {
        if (trials.Metrics.Count > 0)
        {
            var count = trials.Metrics.Count;
            yield return new Note(string.Create(CultureInfo.InvariantCulture,
                $"With {count} trial {(count == 1 ? "metric" : "metrics")}, not reviewed: {Words.List([.. trials.Metrics.Select(TrialMark.Without)])}. Marked wherever {(count == 1 ? "it stands" : "they stand")}. {leftAlone} leave {(count == 1 ? "it" : "them")} out; every further measure looked at is one more chance of a false flag."));
        }

        List<string> wrong = [.. trials.LeftOut, .. trials.Failures.Select(f => f.Words(name, day))];
        if (wrong.Count == 0) yield break;
        yield return new Callout("Not all of the trial metrics could be worked out. Everything else stands.",
            [.. wrong.Take(MostLines).Select(OutsideText.Visible), .. wrong.Count > MostLines ? [string.Create(CultureInfo.InvariantCulture, $"And {wrong.Count - MostLines} more.")] : Array.Empty<string>()]);
    }
}
