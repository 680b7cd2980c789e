using System.Globalization;
using Analytics.Notebooks.TestingDay;
using Analytics.Season;

namespace Analytics.Notebooks.AthletePage;

/// <summary>The settings of a page. No message names a player other than the one asked for: it may end up on the page.</summary>
/// <param name="Athlete">Identifier, or <c>first</c>.</param>
/// <param name="Day">Date, or <c>latest</c>.</param>
/// <param name="Since">Date, <c>first</c>, <c>previous</c> or <c>none</c>.</param>
/// <param name="BarStep">In the season's mass unit.</param>
internal sealed record PageChoice(string Athlete, string Day, string Since, double BarStep)
{
    private const double LargestStep = 50;

    public Season.TestingDay Today(SeasonData season)
    {
        var days = DaySetting.DaysOf(season);
        return Day == "latest" ? days[^1] : DaySetting.Find(days, "day", Short(Day), "\"latest\"");
    }

    /// <summary>The day asked for by date; null for a word.</summary>
    public DateOnly? SinceDay(SeasonData season, DateOnly today)
        => Since is "first" or "previous" or "none" ? null
            : DaySetting.Find([.. season.Days.Where(d => d.Date < today)], "since", Short(Since), "\"first\", \"previous\", \"none\"").Date;

    public Athlete Player(SeasonData season, DateOnly today)
    {
        if (Athlete == "first")
            return season.Athletes.FirstOrDefault(a => a.InLatestSeason && HasResult(season, a.Id, today)) ?? season.Athletes[0];
        return season.Athletes.FirstOrDefault(a => a.Id == Athlete) ?? throw new SeasonException(string.Create(CultureInfo.InvariantCulture,
            $"athlete is '{Short(Athlete)}'; the season's list has {season.Athletes.Count} players, none with this athlete_id. Use an athlete_id as athletes.csv writes it (where names are not shared, what he is called instead), or \"first\"."));
    }

    public double Step(SeasonSettings settings)
        => BarStep is > 0 and <= LargestStep ? BarStep : throw new SeasonException(string.Create(CultureInfo.InvariantCulture,
            $"barStep is {BarStep}; it must be above 0 and at most {LargestStep} {settings.MassUnit}. Write the smallest step your bars can be loaded by, for example 5 with plates of 2.5 {settings.MassUnit}."));

    private static bool HasResult(SeasonData season, string id, DateOnly today)
        => season.Days.Any(d => d.Date <= today && d.Athletes.Any(a => a.AthleteId == id && a.Trials.Count > 0));

    // A date is never that long.
    private static string Short(string text) => text.Length <= 40 ? text : text[..40] + "\u2026";
}
