using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Trials;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Exercises;
using Analytics.Planning.Needs;
using Analytics.Season;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>
/// For each player and metric the latest day whose standings give a probability, else the latest day with a value. Each day's standings are worked out once.
/// </summary>
internal sealed class LatestTests
{
    private readonly List<(DateOnly Date, DayContext Squad)> _days;

    /// <summary>Looks at the testing days up to a day, the latest first.</summary>
    public LatestTests(SeasonData season, DateOnly today)
        => _days = [.. season.Days.Where(d => d.Date <= today && d.Athletes.Any(a => a.Trials.Count > 0)).OrderByDescending(d => d.Date)
            .Select(d => (d.Date, new DayContext(season, new DayChoice(d, null))))];

    /// <summary>His tests; none when he was never tested.</summary>
    public IEnumerable<PlayerTest> Of(Athlete player)
        => MetricCatalogue.All.Where(m => m.Better != Direction.Neither && TrainedQualities.ServedBy(m.Quality) is not null).Select(m => Latest(player, m.Id)).OfType<PlayerTest>();

    /// <summary>Latest body mass; null when he was never weighed.</summary>
    public Quantities.Mass? BodyMass(string athleteId)
        => _days.Select(d => MetricDay.Of(BodyMetrics.BodyMass, d.Squad.DayOf(athleteId) is { } own ? [own] : []).For(athleteId)).FirstOrDefault(v => v is not null) is { } value
            ? Quantities.Mass.FromKilograms(value.Value) : null;

    private PlayerTest? Latest(Athlete player, string metricId)
    {
        PlayerTest? latest = null;
        foreach (var (date, squad) in _days)
        {
            if (squad.DayOf(player.Id) is not { } own || squad.Metric(metricId) is not { } metric) continue;
            // On a day on which only a few came to catch up nobody can be compared: an earlier day still tells where he stood.
            if (On(date, squad, player, own, metric) is not { } test) continue;
            if (test.Standing?.ProbabilityBehind is not null) return test;
            latest ??= test;
        }

        return latest;
    }

    private static PlayerTest? On(DateOnly date, DayContext squad, Athlete player, AthleteDay own, Metric metric)
    {
        var standing = squad.Standing(metric);
        var listed = player.Absences.Where(a => a.Covers(date)).Select(a => a.Status).ToList();
        var test = new PlayerTest
        {
            Metric = metric,
            Date = date,
            Standing = standing.For(player.Id),
            Margin = standing.Margin.Value,
            Remark = listed.Count > 0 ? $"tested while listed as {listed[0]}" : "",
        };
        // As in the reports: what somebody shows on a day on which he is hurt tells of the injury, not of what he should train.
        if (test.Standing is not null && listed.Find(s => s != "limited") is { } hurt) return test with { Standing = null, Reason = $"tested while listed as {hurt}", Remark = "" };
        if (test.Standing is not null) return test;
        var other = standing.Day.NotCompared.FirstOrDefault(n => n.AthleteId == player.Id);
        return other is null && !metric.FromTrials(own).Any() ? null : test with { Reason = other?.Reason ?? "no value on the scale of the squad" };
    }
}
