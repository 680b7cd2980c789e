using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Sprinting;
using Analytics.Metrics.Trials;
using Analytics.Season;
using Analytics.Simulation.Demo;
using Analytics.Simulation.Demo.Squad;
using Analytics.Simulation.Demo.Truth;

namespace Analytics.Simulation.ErrorRates;

/// <summary>A generated season after the library's own chain, put together as the testing-day notebook does it.</summary>
public sealed class SeasonChain
{
    private readonly Dictionary<string, Metric> _metrics;

    private SeasonChain(int number, SeasonTruth truth, SeasonData season)
    {
        Number = number;
        Truth = truth;
        Season = season;
        Days = [.. SeasonCalendar.Of(truth.Options).Select(date => season.Days.Single(d => d.Date == date).Athletes)];
        Players = truth.Players.ToDictionary(p => p.Id, StringComparer.Ordinal);
        var pooled = SprintMetrics.PooledOver(season.Days.SelectMany(d => d.Athletes)).ToDictionary(m => m.Id, StringComparer.Ordinal);
        _metrics = MetricCatalogue.All.Select(m => pooled.GetValueOrDefault(m.Id, m)).ToDictionary(m => m.Id, StringComparer.Ordinal);
        Profile = new SquadProfile
        {
            Squad = [.. season.Athletes.Select(a => new SquadMember(a.Id, a.Group))],
            Retests =
            [
                RepeatDays.Pair(Days[SeasonCalendar.Baseline], Days[SeasonCalendar.Retest]),
                .. truth.Options.WithEndRetest ? [RepeatDays.Pair(Days[SeasonCalendar.June], Days[SeasonCalendar.EndRetest])] : Array.Empty<RepeatDays>(),
            ],
            WorthwhileShare = season.Settings.WorthwhileShare,
        };
    }

    /// <summary>Number of the season within the study.</summary>
    public int Number { get; }

    public SeasonTruth Truth { get; }

    public SeasonData Season { get; }

    /// <summary>What was read, by testing day.</summary>
    public IReadOnlyList<IReadOnlyList<AthleteDay>> Days { get; }

    public IReadOnlyDictionary<string, Player> Players { get; }

    public SquadProfile Profile { get; }

    public Metric Metric(string id) => _metrics[id];

    /// <summary>Generates, writes to a scratch folder, reads back through the season reader.</summary>
    public static SeasonChain Run(int number, ulong seed, DemoOptions options)
    {
        var generated = DemoSeason.Generate(seed, options with { WithClips = false });
        // The folder of training has nothing to do with tests.
        return new SeasonChain(number, generated.Truth, ScratchSeason.Read(generated.Files.Where(f => !f.Key.StartsWith("training/", StringComparison.Ordinal))));
    }
}
