using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Transfer;
using Analytics.Metrics.Trials;
using Analytics.Notebooks.OnTrial;
using Analytics.Notebooks.TestingDay;
using Analytics.Notebooks.Units;
using Analytics.Season;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>A season with everything its blocks ask for; each metric is worked through once.</summary>
internal sealed class SeasonContext
{
    private readonly Dictionary<string, SeasonValues> _values = [];
    private readonly Dictionary<string, SeasonTrend> _trends = [];
    private readonly Dictionary<string, SeasonChange> _changes = [];
    private readonly Dictionary<string, TestQuality> _qualities = [];
    private readonly Dictionary<string, Athlete> _athletes;
    private readonly Dictionary<string, int> _places;
    private readonly IReadOnlyList<IReadOnlyList<AthleteDay>> _tested;
    private readonly Lazy<TrainedStretch?> _trained;
    private readonly Lazy<TransferStudy?> _transfer;
    private readonly Lazy<TransferStudy?> _transferWithTrials;
    private readonly Lazy<Presence> _presence;

    public SeasonContext(SeasonData data, IReadOnlyList<Season.TestingDay> days, TrialMetrics? trials = null)
    {
        OnTrial = trials ?? TrialMetrics.None;
        (Data, Days) = (data, days);
        _tested = [.. days.Select(d => d.Athletes)];
        Squad = SquadSetup.Squad(data, days);
        _athletes = Squad.ToDictionary(a => a.Id, StringComparer.Ordinal);
        _places = Squad.GroupBy(a => a.Group).SelectMany(g => g).Select((a, i) => (a.Id, i)).ToDictionary(p => p.Id, p => p.i, StringComparer.Ordinal);
        Groups = [.. Squad.Select(a => a.Group).Distinct()];
        Profile = SquadSetup.Profile(data, Squad);
        Metrics = SquadSetup.Metrics(days, _tested);
        Measures = SeasonMeasures.Of(this);
        Headlines = SeasonMeasures.Headlines(Measures);
        Trials = [.. OnTrial.Metrics.Where(m => SeasonMeasures.IsDoneTwice(this, m))];
        _trained = new(() => TrainedStretch.Of(data, days));
        _transfer = new(() => Study(Measures));
        _transferWithTrials = new(() => Trials.Count == 0 ? null : Study(Looked));
        _presence = new(() => new Presence(data));
    }

    public SeasonData Data { get; }

    public IReadOnlyList<Season.TestingDay> Days { get; }

    public IReadOnlyList<Athlete> Squad { get; }

    public IReadOnlyList<string> Groups { get; }

    public SquadProfile Profile { get; }

    public IReadOnlyList<Metric> Metrics { get; }

    /// <summary>The measures the report speaks about: done on two occasions or more by enough players.</summary>
    public IReadOnlyList<Metric> Measures { get; }

    /// <summary>The measures with pictures.</summary>
    public IReadOnlyList<Metric> Headlines { get; }

    /// <summary>The metrics on trial, as given.</summary>
    public TrialMetrics OnTrial { get; }

    /// <summary>Those of them that were done on two occasions or more by enough players.</summary>
    public IReadOnlyList<Metric> Trials { get; }

    /// <summary>The measures and those on trial behind them.</summary>
    public IReadOnlyList<Metric> Looked => [.. Measures, .. Trials];

    /// <summary>The measures with pictures and those on trial behind them.</summary>
    public IReadOnlyList<Metric> Pictured => [.. Headlines, .. Trials];

    /// <summary>The stretch of the season in which training was written down; null without sessions.</summary>
    public TrainedStretch? Trained => _trained.Value;

    /// <summary>Weight-room measures beside field measures; null where one side is empty.</summary>
    public TransferStudy? Transfer => _transfer.Value;

    /// <summary>The study with metrics on trial among the measures; null without any. What it says of the others is the business of <see cref="Transfer"/>.</summary>
    public TransferStudy? TransferWithTrials => _transferWithTrials.Value;

    /// <summary>Who was tested when.</summary>
    public Presence Presence => _presence.Value;

    public string Name(string id) => _athletes.TryGetValue(id, out var athlete) ? athlete.Name : id;

    /// <summary>A testing day in words, with its year where the report covers more than one.</summary>
    public string Day(DateOnly date) => Days[0].Date.Year == Days[^1].Date.Year ? Words.ShortDate(date) : Words.Date(date);

    public Athlete Athlete(string id) => _athletes[id];

    /// <summary>Place in the squad list, group by group.</summary>
    public int PlaceOf(string id) => _places.GetValueOrDefault(id, int.MaxValue);

    /// <summary>The groups with enough players in a measure for a mean that is not a player's own.</summary>
    public IReadOnlyList<TrendCourse> GroupsOf(Metric metric) => [.. Trend(metric).Groups.Where(g => g.Athletes >= Profile.MinimumGroup)];

    public ShownUnit Unit(Metric metric) => ShownUnit.For(metric, Data.Settings);

    public SeasonValues Values(Metric metric) => Once(_values, metric, m => SeasonValues.Of(m, _tested));

    public SeasonTrend Trend(Metric metric) => Once(_trends, metric, m => SeasonTrend.Of(Profile, Values(m)));

    public SeasonChange Change(Metric metric) => Once(_changes, metric, m => SeasonChange.Of(Profile, Values(m)));

    public TestQuality Quality(Metric metric) => Once(_qualities, metric, m => OnTrial.Costed(TestQuality.Of(Profile, Values(m), Data.Settings.TestMinutes)));

    /// <summary>The same season with metrics on trial besides.</summary>
    public SeasonContext With(IEnumerable<MetricSketch> sketches) => new(Data, Days, OnTrial.And(sketches, SquadSetup.DaysLookedAt(Data, Days)));

    private TransferStudy? Study(IReadOnlyList<Metric> measures)
    {
        var (room, field) = (SeasonMeasures.WeightRoom(measures), SeasonMeasures.Field(measures));
        return room.Count == 0 || field.Count == 0 ? null : TransferStudy.Of(
            Profile, [.. room.Select(Values)], [.. field.Select(Values)], _tested,
            Squad.ToDictionary(a => a.Id, a => new AthleteBackground(a.TrainingYears, a.BirthYear), StringComparer.Ordinal));
    }

    private static T Once<T>(Dictionary<string, T> known, Metric metric, Func<Metric, T> make)
        => known.TryGetValue(metric.Id, out var made) ? made : known[metric.Id] = make(metric);
}
