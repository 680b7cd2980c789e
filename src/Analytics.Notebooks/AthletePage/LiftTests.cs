using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Strength;
using Analytics.Metrics.Trials;
using Analytics.Planning.Loads;
using Analytics.Season;
using Analytics.Statistics;
using Analytics.Statistics.Distributions;

namespace Analytics.Notebooks.AthletePage;

/// <summary>The lifts a player was tested in, each by its latest day.</summary>
internal static class LiftTests
{
    // Squat, bench press and clean first, then the rest by name.
    private static readonly List<string> s_first = [Lifts.BackSquat, Lifts.BenchPress, Lifts.PowerClean];

    public static IEnumerable<KnownMaximum> Of(SquadBook book, Athlete player, IReadOnlyList<DateOnly> days)
        => days.SelectMany(d => book.Of(player.Id, d)!.Of<LiftSet>().Select(s => (Day: d, Set: s)))
            .Where(s => s.Set.Load.Kilograms > 0 && s.Set.Repetitions > 0)
            .GroupBy(s => s.Set.Lift, StringComparer.Ordinal)
            .OrderBy(l => s_first.IndexOf(l.Key) is >= 0 and var place ? place : s_first.Count).ThenBy(l => l.Key, StringComparer.Ordinal)
            .Select(lift =>
            {
                var latest = lift.Max(s => s.Day);
                var result = DayOneRepMax.From(lift.Where(s => s.Day == latest).Select(s => s.Set))!;
                return new KnownMaximum(
                    lift.Key, result.Value.Kilograms, Range(book, player.Id, lift.Key, latest, result), latest, result.HowMade, result.Doubt,
                    lift.Max(s => s.Set.Load.Kilograms), player.Absences.Where(a => a.Status == "injured" && a.From >= latest).Select(a => (DateOnly?)a.From).FirstOrDefault());
            });

    // Test error and the error of the equation together, as everywhere in the reports.
    private static Interval? Range(SquadBook book, string player, string lift, DateOnly day, OneRepMaxResult result)
    {
        var squad = book.On(day);
        if (squad.Metric(lift + "_1rm") is { } metric)
        {
            var standing = squad.Standing(metric);
            return standing.Day.For(player)?.Interval(standing.Reliability)?.Interval;
        }

        // A lift without a metric of its own: the published error of any lift [grgic2020].
        var published = StrengthMetrics.BackSquat.PublishedError!.Percent!.Value / 100 * result.Value.Kilograms;
        var error = NormalLaw.TwoSided(0.95) * Math.Sqrt(published * published + (result.ErrorParts?.Variance ?? 0));
        return new(result.Value.Kilograms - error, result.Value.Kilograms + error);
    }
}
