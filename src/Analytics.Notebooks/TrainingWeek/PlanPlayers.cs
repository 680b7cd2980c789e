using Analytics.Metrics.Catalogue;
using Analytics.Notebooks.AthletePage;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Units;
using Analytics.Planning.Loads;
using Analytics.Planning.Needs;
using Analytics.Planning.People;
using Analytics.Season;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>From a season to the players a week is planned for: who trains, what is known of his lifts, what he needs.</summary>
internal static class PlanPlayers
{
    /// <summary>The squad of a week: the athletes of the latest season, by squad order.</summary>
    public static WeekSquad Of(SeasonData season, WeekQuestion week)
    {
        ArgumentNullException.ThrowIfNull(season);
        ArgumentNullException.ThrowIfNull(week);
        IReadOnlyList<DateOnly> days = week.Days.Count > 0 ? week.Days : [.. Enumerable.Range(0, 7).Select(week.Monday.AddDays)];
        var tests = new LatestTests(season, week.Monday);
        List<PlanPlayer> players = [];
        List<PlayerNote> off = [], partly = [], limited = [];
        foreach (var athlete in season.Athletes.Where(a => a.InLatestSeason))
        {
            var absence = WeekAbsence.Of(athlete, days);
            if (absence.IsWholeWeek)
            {
                off.Add(new(athlete.Id, athlete.Name, absence.Reason));
                continue;
            }

            if (absence.Out.Count > 0) partly.Add(new(athlete.Id, athlete.Name, absence.Reason));
            List<Restriction> listed = [.. week.Restrictions.Where(r => r.AthleteId == athlete.Id)];
            if (absence.LimitedReason(listed) is { } reason) limited.Add(new(athlete.Id, athlete.Name, reason));
            players.Add(Player(season, week, tests, athlete) with { Restrictions = [.. listed, .. absence.Restrictions(athlete.Id, listed)] });
        }

        return new(players, off, partly, limited);
    }

    private static PlanPlayer Player(SeasonData season, WeekQuestion week, LatestTests tests, Athlete athlete) => new()
    {
        Id = athlete.Id,
        Name = athlete.Name,
        Group = athlete.Group,
        BodyMass = tests.BodyMass(athlete.Id),
        TrainingYears = athlete.TrainingYears,
        Maxima = Maxima(season, athlete, week.Monday),
        Needs = PlayerNeeds.Of(athlete.Group, tests.Of(athlete), week.Monday, week.Rules, week.Targets, (metric, value) => Show(season, metric, value)),
    };

    private static Dictionary<string, KnownMaximum> Maxima(SeasonData season, Athlete athlete, DateOnly today) => SquadBook.Ask(season, book =>
    {
        var days = season.Days.Where(d => d.Date <= today && book.Of(athlete.Id, d.Date) is { Trials.Count: > 0 }).Select(d => d.Date).ToList();
        return LiftTests.Of(book, athlete, days).Select(m => m.HurtSince > today ? m with { HurtSince = null } : m)
            .ToDictionary(m => m.Lift, StringComparer.Ordinal);
    });

    /// <summary>A value in the unit it is shown in. A margin would round to nothing in the decimals of a value, so it gets one more.</summary>
    public static string Show(SeasonData season, Metric metric, double value)
    {
        var unit = ShownUnit.For(metric, season.Settings);
        var shown = unit.Of(value);
        return Figures.Plain(shown, shown != 0 && Math.Abs(shown) < 2 * Math.Pow(10, -unit.Decimals) ? unit.Decimals + 1 : unit.Decimals, unit.Symbol);
    }
}
