using System.Runtime.CompilerServices;
using Analytics.Metrics.Bench.Inputs;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Bench;

/// <summary>A squad's season to judge sketched metrics by. Library metrics are read off it once.</summary>
/// <example>
/// <code>
/// var squad = new BenchSquad(profile, season.Days.Select(d => d.Athletes).ToList(), MetricCatalogue.All);
/// SketchCard card = squad.Judge(idea);
/// RivalTable rivals = squad.Compare(idea.BestOf(), idea.MeanOf());
/// </code>
/// </example>
public sealed class BenchSquad
{
    private readonly ConditionalWeakTable<Metric, SeasonValues> _values = [];
    private readonly ConditionalWeakTable<MetricSketch, SketchCard> _cards = [];
    private readonly Lazy<IReadOnlyList<InputField>> _inputs;

    /// <summary>Takes a season.</summary>
    /// <param name="profile">The squad with its groups and retest days.</param>
    /// <param name="days">Testing days in any order, one entry an athlete and day.</param>
    /// <param name="library">The metrics to compare with.</param>
    /// <param name="minutes">Minutes per athlete the season sets, by metric; null for none.</param>
    /// <param name="rule">Thresholds; null for <see cref="BenchRule.Standard"/>.</param>
    public BenchSquad(
        SquadProfile profile, IReadOnlyList<IReadOnlyList<AthleteDay>> days, IEnumerable<Metric> library, IReadOnlyDictionary<string, double>? minutes = null, BenchRule? rule = null)
    {
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(days);
        ArgumentNullException.ThrowIfNull(library);
        (Profile, Days, Minutes, Rule) = (profile, days, minutes ?? new Dictionary<string, double>(), rule ?? BenchRule.Standard);
        Library = [.. library.Where(m => !m.IsTrial)];
        _inputs = new(() => InputFields.Of([.. days.SelectMany(d => d)], Library));
    }

    /// <summary>The squad.</summary>
    public SquadProfile Profile { get; }

    /// <summary>The testing days.</summary>
    public IReadOnlyList<IReadOnlyList<AthleteDay>> Days { get; }

    /// <summary>The reviewed metrics.</summary>
    public IReadOnlyList<Metric> Library { get; }

    /// <summary>Minutes per athlete the season sets, by metric.</summary>
    public IReadOnlyDictionary<string, double> Minutes { get; }

    /// <summary>The thresholds.</summary>
    public BenchRule Rule { get; }

    /// <summary>Everything that is asked of a sketch, each part answered once, when it is asked for.</summary>
    /// <param name="sketch">The sketch. One with a fault has a card without values.</param>
    public SketchCard Judge(MetricSketch sketch)
    {
        ArgumentNullException.ThrowIfNull(sketch);
        return _cards.GetValue(sketch, s => new SketchCard(this, s));
    }

    /// <summary>Rival definitions side by side on the same data.</summary>
    /// <param name="rivals">Two sketches or more, the first one the one to beat.</param>
    public RivalTable Compare(params IReadOnlyList<MetricSketch> rivals) => RivalTable.Of(this, rivals);

    /// <summary>Everything a formula may take in; found once, so that the season is read once for each.</summary>
    internal IReadOnlyList<InputField> Inputs => _inputs.Value;

    /// <summary>A metric over the season, read once.</summary>
    internal SeasonValues Values(Metric metric) => _values.GetValue(metric, m => SeasonValues.Of(m, Days));
}
