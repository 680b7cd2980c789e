using System.Globalization;
using Analytics.Planning.Rules;
using Analytics.Planning.Schemes;

namespace Analytics.Planning.Feedback;

/// <summary>
/// From the log to the next load, never on one reading: up when the last readings did all that was planned and none was rated too hard, down when each of them fell
/// short, else it stays (common practice, no source; figures in the rules). What was not logged is not known: it is never taken as not done.
/// </summary>
public sealed class LoadFeedback
{
    /// <summary>Fewest readings, whatever the rule says.</summary>
    private const int Fewest = 2;

    private readonly PlanRules _rules;
    private readonly Dictionary<string, SetScheme> _schemes;
    private readonly IReadOnlyDictionary<string, string> _losses;

    /// <summary>The rule with its figures.</summary>
    /// <param name="rules">Steps, rating, readings and days.</param>
    /// <param name="schemes">Set schemes: they tell where the load goes up from set to set.</param>
    /// <param name="losses">Players with a clear loss at their latest test, with it in words; null for none. No load of theirs goes up.</param>
    public LoadFeedback(PlanRules rules, IEnumerable<SetScheme> schemes, IReadOnlyDictionary<string, string>? losses = null)
    {
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(schemes);
        (_rules, _schemes, _losses) = (rules, schemes.ToDictionary(s => s.Id, StringComparer.Ordinal), losses ?? new Dictionary<string, string>());
    }

    /// <summary>One entry for each player and exercise planned within the days of the rule, by player and exercise.</summary>
    /// <param name="readings">Plan and log.</param>
    /// <param name="today">Day of the next plan; what is planned for it or later is not looked at.</param>
    public IReadOnlyList<ExerciseFeedback> Of(PlanReadings readings, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(readings);
        var days = _rules.Value(RuleIds.FeedbackDays);
        return [.. readings.Readings.Where(r => r.Date < today && today.DayNumber - r.Date.DayNumber <= days)
            .GroupBy(r => (r.AthleteId, r.ExerciseId))
            .OrderBy(g => g.Key.AthleteId, StringComparer.Ordinal).ThenBy(g => g.Key.ExerciseId, StringComparer.Ordinal)
            .Select(g => Of(g.Key.AthleteId, g.Key.ExerciseId, [.. g.OrderByDescending(r => r.Date)]))];
    }

    private ExerciseFeedback Of(string athlete, string exercise, IReadOnlyList<PlanReading> latestFirst)
    {
        ExerciseFeedback Say(LoadStep step, double factor, string reason, (PlanReading Reading, DoneAsPlanned Done)? on = null) => new()
        {
            AthleteId = athlete, ExerciseId = exercise, Step = step, Factor = factor, Reason = reason, PlannedKilograms = on?.Reading.PlannedKilograms ?? latestFirst[0].PlannedKilograms,
            PlannedSchemeId = on?.Reading.PlannedSchemeId, LoggedOn = on?.Reading.LoggedOn, WasDone = on?.Done.IsDone,
        };

        var logged = latestFirst.Where(r => r.LoggedOn is not null).Select(r => (Reading: r, Done: DoneAsPlanned.Of(r, _schemes))).ToList();
        if (logged.Count == 0) return Say(LoadStep.Hold, 1, "not logged: hold");
        var known = logged.Where(r => r.Done.IsDone is not null).ToList();
        if (known.Count == 0) return Say(LoadStep.Hold, 1, $"{logged[0].Done.Text}: hold");

        var latest = known[0];
        var needed = Math.Max(Fewest, (int)Math.Ceiling(_rules.Value(RuleIds.ReadingsNeeded)));
        var last = known.Take(needed).ToList();
        var said = string.Join("; ", last.Select(r => Said(r.Reading, r.Done)));
        if (last.Count < needed)
            return Say(LoadStep.Hold, 1, string.Create(CultureInfo.InvariantCulture, $"{(last.Count == 1 ? "one reading is" : $"{last.Count} readings are")} not enough, it takes {needed}: {said}"), latest);

        var health = _losses.TryGetValue(athlete, out var loss) ? $"health first: {loss}; " : "";
        if (last.TrueForAll(r => r.Done.IsDone == false))
        {
            return _rules.IsOn(RuleIds.BackOffStep)
                ? Say(LoadStep.BackOff, 1 - _rules.Value(RuleIds.BackOffStep) / 100, $"{health}less than planned each time: {said}", latest)
                : Say(LoadStep.Hold, 1, $"{health}less than planned each time, but loads are not taken down by rule: {said}", latest);
        }

        if (!last.TrueForAll(r => r.Done.IsDone == true)) return Say(LoadStep.Hold, 1, $"{health}the readings do not agree: {said}", latest);
        if (health.Length > 0) return Say(LoadStep.Hold, 1, health + said, latest);
        if (!_rules.IsOn(RuleIds.ProgressStep)) return Say(LoadStep.Hold, 1, $"all done, but loads are not taken up by rule: {said}", latest);
        if (last.Exists(r => IsTooHard(r.Reading))) return Say(LoadStep.Hold, 1, string.Create(CultureInfo.InvariantCulture, $"all done, but rated above {_rules.Value(RuleIds.ProgressRating):0.#}: {said}"), latest);
        return Say(LoadStep.Progress, 1 + _rules.Value(RuleIds.ProgressStep) / 100, $"all done each time: {said}", latest);
    }

    // A session that was not rated is neither hard nor easy: the sets alone speak.
    private bool IsTooHard(PlanReading reading) => _rules.IsOn(RuleIds.ProgressRating) && reading.Rating > _rules.Value(RuleIds.ProgressRating);

    private static string Said(PlanReading reading, DoneAsPlanned done)
    {
        var rated = reading.Rating is { } rating ? string.Create(CultureInfo.InvariantCulture, $"rated {rating:0.#}") : "not rated";
        return string.Create(CultureInfo.InvariantCulture, $"{reading.LoggedOn:d MMMM} {done.Text}, {rated}");
    }
}
