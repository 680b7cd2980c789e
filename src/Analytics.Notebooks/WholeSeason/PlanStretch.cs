using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Planning.Exercises;
using Analytics.Planning.Feedback;
using Analytics.Planning.Needs;
using Analytics.Planning.Plans;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>The stretch between two testing days that plans are kept for: what was planned, what was logged, and the change of each quality's test over it.</summary>
internal sealed class PlanStretch
{
    private readonly SeasonContext _season;
    private readonly Dictionary<TrainedQuality, Metric?> _tests = [];
    private readonly Dictionary<string, SquadChange> _changes = [];

    private PlanStretch(SeasonContext season, Season.TestingDay before, Season.TestingDay after, PlannedDoses doses)
        => (_season, Before, After, Doses) = (season, before, after, doses);

    public Season.TestingDay Before { get; }

    public Season.TestingDay After { get; }

    public PlannedDoses Doses { get; }

    /// <summary>From the last testing day at or before the first planned day to the last testing day; null where no plan lies between two testing days.</summary>
    public static PlanStretch? Of(SeasonContext season, IReadOnlyList<EarlierChoice> rows, ExerciseCatalogue exercises)
    {
        var last = season.Days[^1];
        var within = rows.Where(r => r.Force != ChoiceForce.Never && r.Date >= season.Days[0].Date && r.Date < last.Date).ToList();
        if (within.Count == 0) return null;
        var first = within.Min(r => r.Date);
        var before = season.Days.Last(d => d.Date <= first);
        var groups = season.Squad.ToDictionary(a => a.Id, a => a.Group, StringComparer.Ordinal);
        var readings = PlanReadings.Of(rows, season.Data.Sessions.Where(s => groups.ContainsKey(s.AthleteId)).Select(s => new LoggedSession(s.AthleteId, s.Work)), groups);
        return new(season, before, last, PlannedDoses.Between(readings, exercises, before.Date, last.Date));
    }

    /// <summary>The first test of needs that serves a quality and was done on both days; null when there is none.</summary>
    public Metric? TestOf(TrainedQuality quality)
        => _tests.TryGetValue(quality, out var known) ? known : _tests[quality] = NeedTests.Among(_season.Metrics)
            .FirstOrDefault(m => TrainedQualities.ServedBy(m.Quality) == quality && Change(m).Athletes.Count > 0);

    /// <summary>Change of one player; null when he did not do it on both days.</summary>
    public AthleteChange? Change(Metric metric, string athleteId) => Change(metric).Athletes.FirstOrDefault(a => a.AthleteId == athleteId);

    /// <summary>Change of some players alone: their mean carries what an equation gets wrong about all of them.</summary>
    public SquadChange Change(Metric metric, IReadOnlyCollection<string> players) => _season.Profile.Change(metric,
        [.. Before.Athletes.Where(a => players.Contains(a.AthleteId))], [.. After.Athletes.Where(a => players.Contains(a.AthleteId))]);

    private SquadChange Change(Metric metric)
        => _changes.TryGetValue(metric.Id, out var known) ? known : _changes[metric.Id] = _season.Profile.Change(metric, Before.Athletes, After.Athletes);
}
