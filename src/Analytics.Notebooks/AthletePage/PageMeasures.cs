using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Season;

namespace Analytics.Notebooks.AthletePage;

/// <summary>Which earlier value a player is compared with.</summary>
/// <param name="Word"><c>first</c>, <c>previous</c>, <c>none</c> or the date as typed.</param>
/// <param name="Day">The date; null for a word.</param>
internal sealed record Since(string Word, DateOnly? Day)
{
    public DayValue? In(IReadOnlyList<DayValue> history) => Word switch
    {
        "none" => null,
        "first" => history.Count > 1 ? history[0] : null,
        "previous" => history.Count > 1 ? history[^2] : null,
        _ => history.Take(history.Count - 1).FirstOrDefault(v => v.Date == Day),
    };
}

/// <summary>Picks the tests of a page: the chain from strength to contact, what fills it up, and the one behind the need.</summary>
internal static class PageMeasures
{
    private const int Most = 6;

    private static readonly string[][] s_links =
    [
        ["back_squat_1rm"], ["bench_press_1rm"], ["power_clean_1rm"],
        ["cmj_height", "sj_height"],
        ["sprint_10yd", "sprint_10m", "sprint_20yd", "sprint_20m"],
        ["momentum_10yd"],
        ["standing_long_jump"], ["drop_jump_rsi", "hurdle_rsi"], ["pro_agility", "agility_505"], ["max_speed"], ["throw_seated_chest", "throw_standing_chest", "throw_overhead_back"],
    ];

    private static readonly List<string> s_order = [.. s_links.SelectMany(l => l)];

    public static IReadOnlyList<PageMeasure> Of(SquadBook book, Athlete player, IReadOnlyList<DateOnly> days, Since since, string? needed)
    {
        if (days.Count == 0) return [];
        var metrics = book.On(days[^1]).Metrics;
        List<string> chosen = [.. s_links.Select(link => First(book, player.Id, days, metrics, link)).OfType<string>().Take(Most)];
        if (needed is not null && !chosen.Contains(needed)) chosen.Add(needed);
        return [.. chosen.OrderBy(s_order.IndexOf).Select(id => Of(book, player, days, since, metrics.First(m => m.Id == id)))];
    }

    // A measured test goes before one that is doubtful, such as a time at a gate that was not there.
    private static string? First(SquadBook book, string player, IReadOnlyList<DateOnly> days, IReadOnlyList<Metric> metrics, string[] link)
    {
        var done = link.Select(id => metrics.FirstOrDefault(m => m.Id == id)).OfType<Metric>()
            .Select(m => (Metric: m, Latest: Values(book, player, days, m).LastOrDefault())).Where(m => m.Latest is not null).ToList();
        return (done.Find(m => m.Latest!.Doubts.Count == 0) is { Metric: { } sure } ? sure : done.FirstOrDefault().Metric)?.Id;
    }

    private static PageMeasure Of(SquadBook book, Athlete player, IReadOnlyList<DateOnly> days, Since since, Metric metric)
    {
        var date = Values(book, player.Id, days, metric)[^1].Date;
        var squad = book.On(date);
        var standing = squad.Standing(metric);
        // The scale of the squad where the player has a value on it, else the player's own.
        var series = standing.Day.For(player.Id) is null ? null : standing.Day.Series;
        var history = Values(book, player.Id, [.. days.Where(d => d <= date)], metric, series);
        var before = since.In(history);
        var change = before is null ? null : book.Change(metric, before.Date, date);
        return new()
        {
            Metric = metric,
            Unit = squad.Unit(metric),
            History = history,
            Reliability = series is null ? standing.Reliability with { Error = null, Source = ErrorSource.None, Basis = "measured another way than the squad" } : standing.Reliability,
            Against = series is null ? null : Comparison.Of(standing, player.Group),
            Standing = series is null ? null : standing.For(player.Id),
            Degrees = Math.Min(standing.Spread?.DegreesOfFreedom ?? 0, standing.Reliability.DegreesOfFreedom),
            Margin = standing.Margin.Value,
            Before = before,
            Change = change?.Athletes.FirstOrDefault(a => a.AthleteId == player.Id),
            Rule = squad.Profile.Rule,
        };
    }

    private static List<DayValue> Values(SquadBook book, string player, IReadOnlyList<DateOnly> days, Metric metric, string? series = null)
    {
        var values = days.Select(d => (Day: d, Own: book.Of(player, d))).Where(d => d.Own is not null)
            .Select(d => MetricDay.Of(metric, [d.Own!], series)).ToList();
        // Without a scale given, that of the latest day.
        var latest = series ?? values.LastOrDefault(v => v.Values.Count > 0)?.Series;
        return [.. values.Where(v => v.Series == latest).SelectMany(v => v.Values)];
    }
}
