using Analytics.Planning;
using Analytics.Planning.Exercises;
using Analytics.Planning.Feedback;
using Analytics.Planning.Loads;
using Analytics.Planning.People;
using Analytics.Season;
using Analytics.Statistics;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>What the log says of earlier plans, and what that does to the next loads.</summary>
internal static class WeekFeedback
{
    /// <summary>One entry a player and exercise planned in the weeks before.</summary>
    public static IReadOnlyList<ExerciseFeedback> Of(SeasonData season, TrainingSettings training, DateOnly monday)
    {
        var groups = season.Athletes.Where(a => a.InLatestSeason).ToDictionary(a => a.Id, a => a.Group, StringComparer.Ordinal);
        var readings = PlanReadings.Of(training.Earlier.Where(e => e.Date < monday), season.Sessions.Select(s => new LoggedSession(s.AthleteId, s.Work)), groups);
        return new LoadFeedback(training.Rules, training.Schemes, ClearLosses.Of(season, monday)).Of(readings, monday);
    }

    /// <summary>
    /// The player with the maximum behind an exercise moved by the factor, so that every other rule of loads stays in force: what was lifted in tests stays what it was.
    /// </summary>
    public static PlanPlayer Moved(PlanPlayer player, Exercise exercise, ExerciseFeedback? feedback)
    {
        if (feedback is null || feedback.Factor == 1) return player;
        string[] lifts = [exercise.Id, .. exercise.Basis.Lift is { } lift ? [lift] : Array.Empty<string>()];
        var maxima = new Dictionary<string, KnownMaximum>(player.Maxima, StringComparer.Ordinal);
        foreach (var id in lifts.Where(maxima.ContainsKey).Distinct())
        {
            var known = maxima[id];
            maxima[id] = known with { Kilograms = known.Kilograms * feedback.Factor, Range = known.Range is { } range ? new Interval(range.Low * feedback.Factor, range.High * feedback.Factor) : null };
        }

        return player with { Maxima = maxima };
    }

    /// <summary>The note that goes with a moved load; null where it stays.</summary>
    public static string? Note(ExerciseFeedback? feedback) => feedback?.Step switch
    {
        LoadStep.Progress => FormattableString.Invariant($"up {100 * (feedback.Factor - 1):0.#}\u2009% by the log"),
        LoadStep.BackOff => FormattableString.Invariant($"down {100 * (1 - feedback.Factor):0.#}\u2009% by the log"),
        _ => null,
    };
}
