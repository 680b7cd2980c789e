using Analytics.Metrics.Bench;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Notebooks.TestingDay;
using Analytics.Notebooks.Units;
using Analytics.Notebooks.WholeSeason;
using Analytics.Season;

namespace Analytics.Notebooks.Bench;

/// <summary>A season with what the bench's blocks ask for.</summary>
internal sealed class BenchContext
{
    private readonly Dictionary<string, Athlete> _athletes;
    private readonly Lazy<TrainedStretch?> _trained;

    public BenchContext(SeasonData data)
    {
        Data = data;
        Days = DaySetting.DaysOf(data);
        Athletes = SquadSetup.Squad(data, Days);
        _athletes = Athletes.ToDictionary(a => a.Id, StringComparer.Ordinal);
        IReadOnlyList<IReadOnlyList<Metrics.Trials.AthleteDay>> tested = [.. Days.Select(d => d.Athletes)];
        Squad = new(SquadSetup.Profile(data, Athletes), tested, SquadSetup.Metrics(Days, tested), data.Settings.TestMinutes);
        _trained = new(() => TrainedStretch.Of(data, Days));
    }

    public SeasonData Data { get; }

    public IReadOnlyList<Season.TestingDay> Days { get; }

    public IReadOnlyList<Athlete> Athletes { get; }

    public BenchSquad Squad { get; }

    /// <summary>The stretch of the season in which training was written down; null without sessions.</summary>
    public TrainedStretch? Trained => _trained.Value;

    public SketchCard Card(MetricSketch sketch) => Squad.Judge(sketch);

    public ShownUnit Unit(Metric metric) => ShownUnit.For(metric, Data.Settings);

    public string Name(string id) => _athletes.TryGetValue(id, out var athlete) ? athlete.Name : id;
}
