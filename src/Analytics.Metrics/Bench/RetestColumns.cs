using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;

namespace Analytics.Metrics.Bench;

/// <summary>The two retest days on which most athletes have a metric, with those athletes.</summary>
/// <param name="First">Dates of the first day.</param>
/// <param name="Second">Dates of the second day.</param>
/// <param name="Athletes">Athletes with a value on both.</param>
internal sealed record RetestColumns(IReadOnlySet<DateOnly> First, IReadOnlySet<DateOnly> Second, IReadOnlyList<string> Athletes)
{
    public static RetestColumns? Fullest(BenchSquad squad, SeasonValues values)
    {
        var best = squad.Profile.Retests.Where(r => r.Occasions.Count > 1).Select(r => Of(r, values)).MaxBy(c => c.Athletes.Count);
        return best is { Athletes.Count: var n } && n >= squad.Rule.Fewest ? best : null;
    }

    /// <summary>Values of an athlete on both days; null where one is missing.</summary>
    public (double First, double Second)? Pair(SeasonValues values, string athleteId)
    {
        var own = values.Of(athleteId);
        return own.FirstOrDefault(v => First.Contains(v.Date)) is { } a && own.FirstOrDefault(v => Second.Contains(v.Date)) is { } b ? (a.Value, b.Value) : null;
    }

    private static RetestColumns Of(RepeatDays days, SeasonValues values)
    {
        HashSet<DateOnly> first = [.. days.Occasions[0].Select(d => d.Date)], second = [.. days.Occasions[1].Select(d => d.Date)];
        var columns = new RetestColumns(first, second, []);
        return columns with { Athletes = [.. values.Athletes.Where(a => columns.Pair(values, a) is not null).Order(StringComparer.Ordinal)] };
    }
}
