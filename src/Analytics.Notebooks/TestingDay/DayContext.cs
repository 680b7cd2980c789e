using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Trials;
using Analytics.Notebooks.OnTrial;
using Analytics.Notebooks.Units;
using Analytics.Planning.Needs;
using Analytics.Season;

namespace Analytics.Notebooks.TestingDay;

/// <summary>One testing day with everything its blocks ask for; each comparison is made once.</summary>
internal sealed class DayContext
{
    private readonly Dictionary<string, SquadChange> _changes = [];
    private readonly Dictionary<string, GroupStanding> _standings = [];
    private readonly Dictionary<string, Athlete> _athletes;
    private readonly Dictionary<string, AthleteDay> _today;
    private readonly Lazy<SquadNeeds> _needs;

    public DayContext(SeasonData season, DayChoice choice, int? fewestInGroup = null, TrialMetrics? trials = null)
    {
        Choice = choice;
        OnTrial = trials ?? TrialMetrics.None;
        Season = season;
        Today = choice.Today;
        Before = choice.Before;
        _athletes = season.Athletes.ToDictionary(a => a.Id, StringComparer.Ordinal);
        _today = Today.Athletes.ToDictionary(a => a.AthleteId, StringComparer.Ordinal);
        Metrics = [.. SquadSetup.Metrics(season.Days, Before is null ? [Today.Athletes] : [Before.Athletes, Today.Athletes]), .. OnTrial.Metrics];
        Groups = [.. season.Athletes.Select(a => a.Group).Distinct()];
        Profile = SquadSetup.Profile(season, season.Athletes);
        if (fewestInGroup is { } fewest) Profile = Profile with { MinimumGroup = fewest };
        Headlines = TestingDay.Headlines.Of(this);
        _needs = new(() => Profile.Needs(
            [.. NeedTests.Among(Metrics).Select(Standing)],
            Before is null ? [] : [.. Headlines.Select(Change)],
            Unavailable));
    }

    public SeasonData Season { get; }

    public Season.TestingDay Today { get; }

    public Season.TestingDay? Before { get; }

    /// <summary>Both days.</summary>
    public DayChoice Choice { get; }

    /// <summary>The metrics on trial.</summary>
    public TrialMetrics OnTrial { get; }

    /// <summary>Why nothing is compared; only asked when there is no day before.</summary>
    public bool IsFirst => Season.Days.All(d => d.Date >= Today.Date);

    public SquadProfile Profile { get; }

    public IReadOnlyList<Metric> Metrics { get; }

    public IReadOnlyList<Metric> Headlines { get; }

    public IReadOnlyList<string> Groups { get; }

    public SquadNeeds Needs => _needs.Value;

    /// <summary>Athletes who were out on the day, with the word written in the availability list.</summary>
    public IReadOnlyDictionary<string, string> Unavailable => Season.Athletes
        .Select(a => (a.Id, Status: StatusOf(a)))
        .Where(a => a.Status is not null and not "limited")
        .ToDictionary(a => a.Id, a => a.Status!, StringComparer.Ordinal);

    /// <summary>The same day with metrics on trial besides.</summary>
    public DayContext With(IEnumerable<MetricSketch> sketches)
        => new(Season, Choice, trials: OnTrial.And(sketches, SquadSetup.DaysLookedAt(Season, Before is null ? [Today] : [Before, Today])));

    public Athlete Athlete(string id) => _athletes[id];

    public string Name(string id) => _athletes.TryGetValue(id, out var athlete) ? athlete.Name : id;

    public AthleteDay? DayOf(string id) => _today.GetValueOrDefault(id);

    public bool WasTested(string id) => DayOf(id) is { Trials.Count: > 0 };

    public string? StatusOf(Athlete athlete)
        => athlete.Absences.FirstOrDefault(s => s.Covers(Today.Date))?.Status;

    public Metric? Metric(string id) => Metrics.FirstOrDefault(m => m.Id == id);

    public ShownUnit Unit(Metric metric) => ShownUnit.For(metric, Season.Settings);

    public GroupStanding Standing(Metric metric)
        => _standings.TryGetValue(metric.Id, out var known) ? known : _standings[metric.Id] = Profile.Standing(metric, Today.Athletes);

    /// <summary>Change since the day before; only asked when there is one.</summary>
    public SquadChange Change(Metric metric)
        => _changes.TryGetValue(metric.Id, out var known) ? known : _changes[metric.Id] = Profile.Change(metric, Before!.Athletes, Today.Athletes);
}
