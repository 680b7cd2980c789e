using Analytics.Runner;

namespace Analytics.Cli.Commands;

/// <summary>What <c>--each</c> asks for.</summary>
/// <param name="Setting">The setting that gets one value after the other.</param>
/// <param name="Values">Values as typed, separated by commas; null for all there are.</param>
/// <param name="Afresh">Whether pages that are there are made anew.</param>
internal sealed record EachOption(string Setting, string? Values, bool Afresh)
{
    /// <summary>Reads the option; null when it was not given.</summary>
    public static EachOption? From(string? each, bool afresh, bool open)
    {
        if (each is null)
            return afresh ? throw new NotebookException(Fault.Usage, "--afresh goes with --each; a single report is always made anew.") : null;
        if (open)
            throw new NotebookException(Fault.Usage, "--open opens one report; with --each there are many. Leave it out and open those you want.");
        var parts = each.Split('=', 2, StringSplitOptions.TrimEntries);
        return parts[0].Length > 0 && parts is not [_, ""]
            ? new EachOption(parts[0], parts.ElementAtOrDefault(1), afresh)
            : throw new NotebookException(Fault.Usage, $"--each takes the name of a setting, such as athlete, or a name and values, such as athlete=TC01,TC05, not '{each}'.");
    }

    /// <summary>The values asked for, in the order of all there are.</summary>
    /// <param name="all">All values.</param>
    public IReadOnlyList<string> Choose(IReadOnlyList<string> all)
    {
        if (Values is null)
            return all;
        // A value may itself hold a comma.
        if (all.Contains(Values, StringComparer.Ordinal))
            return [Values];
        var wanted = Values.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).ToHashSet(StringComparer.Ordinal);
        var unknown = wanted.Except(all, StringComparer.Ordinal).Select(v => $"'{PlainLine.Of(v)}'").ToList();
        return unknown.Count == 0
            ? [.. all.Where(wanted.Contains)]
            : throw new NotebookException(Fault.Usage, $"--each {Setting}: there is no {string.Join(", ", unknown)}. There are: {Some(all)}.");
    }

    private static string Some(IReadOnlyList<string> all)
        => string.Join(", ", all.Take(30).Select(PlainLine.Of)) + (all.Count > 30 ? $" and {all.Count - 30} more" : "");
}
