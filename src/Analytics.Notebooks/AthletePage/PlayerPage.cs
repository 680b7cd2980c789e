using Analytics.Metrics.Profile;
using Analytics.Season;

namespace Analytics.Notebooks.AthletePage;

/// <summary>Everything one page says, with nothing of another player in it but figures of groups.</summary>
internal sealed record PlayerPage
{
    public required SeasonData Season { get; init; }

    public required Athlete Player { get; init; }

    /// <summary>The day of the page; dates count from here, since the library has no clock.</summary>
    public required DateOnly Today { get; init; }

    public required PlayerStatus Status { get; init; }

    /// <summary>The latest day up to <see cref="Today"/> with a result of the player; null when there is none.</summary>
    public required DateOnly? Tested { get; init; }

    public required IReadOnlyList<PageMeasure> Measures { get; init; }

    /// <summary>Of the latest day tested; null when never tested.</summary>
    public required Need? Need { get; init; }

    public required double NeedThreshold { get; init; }

    public required IReadOnlyList<NextLoad> Loads { get; init; }

    public required LoadUnit Bar { get; init; }

    public static PlayerPage Of(SeasonData season, PageChoice choice)
    {
        var today = choice.Today(season).Date;
        var player = choice.Player(season, today);
        var since = choice.SinceDay(season, today);
        var bar = LoadUnit.Of(season.Settings, choice.Step(season.Settings));
        return SquadBook.Ask(season, book =>
        {
            var days = season.Days.Where(d => d.Date <= today && book.Of(player.Id, d.Date) is { Trials.Count: > 0 }).Select(d => d.Date).ToList();
            DateOnly? tested = days.Count == 0 ? null : days[^1];
            var needs = tested is { } day ? book.On(day).Needs : null;
            var need = needs?.Athletes.FirstOrDefault(n => n.AthleteId == player.Id);
            var status = PlayerStatus.Of(player, today, isLatest: today == season.Days[^1].Date);
            return new PlayerPage
            {
                Season = season,
                Player = player,
                Today = today,
                Status = status,
                Tested = tested,
                Measures = PageMeasures.Of(book, player, days, new Since(choice.Since, since), need?.First?.Metric.Id),
                Need = need,
                NeedThreshold = needs?.Threshold ?? 0,
                Loads = status.IsOut ? [] : [.. LiftTests.Of(book, player, days).Select(t => LoadRule.Of(t, today, bar))],
                Bar = bar,
            };
        });
    }
}
