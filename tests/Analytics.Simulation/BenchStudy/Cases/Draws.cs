using Analytics.Metrics.Trials;
using Analytics.Simulation.BenchStudy.Squads;
using Analytics.Simulation.Demo;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.BenchStudy.Cases;

/// <summary>Standard normal numbers of a player, of his day or of an attempt: asked again they are the same.</summary>
internal static class Draws
{
    public static double OfPlayer(BenchSeason season, string purpose, int player) => RandomNumbers.For(season.Seed, purpose, player).Normal();

    public static double OfDay(BenchSeason season, string purpose, AthleteDay day) => OfAttempt(season, purpose, day, 0);

    public static double OfAttempt(BenchSeason season, string purpose, AthleteDay day, int attempt)
        => RandomNumbers.For(season.Seed, purpose, season.Player(day).Index, 1000 + 100 * Number(day.Date) + attempt).Normal();

    private static int Number(DateOnly date)
    {
        for (var day = 0; day < SeasonCalendar.TestingDays.Count; day++)
            if (SeasonCalendar.TestingDays[day] == date) return day;
        throw new ArgumentException(FormattableString.Invariant($"{date:yyyy-MM-dd} is no testing day of the generated season."), nameof(date));
    }
}
