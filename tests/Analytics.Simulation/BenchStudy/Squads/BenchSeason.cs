using Analytics.Metrics.Bench;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Simulation.Demo;
using Analytics.Simulation.Demo.Squad;

namespace Analytics.Simulation.BenchStudy.Squads;

/// <summary>A generated squad with the truth behind it and its trials, ready for the bench.</summary>
public sealed class BenchSeason
{
    private readonly IReadOnlyList<IReadOnlyList<AthleteDay>> _days;
    private readonly Dictionary<string, Player> _players;

    private BenchSeason(ulong seed, IReadOnlyList<int> dayNumbers, IReadOnlyList<Player> players, IReadOnlyList<IReadOnlyList<AthleteDay>> days)
        => (Seed, DayNumbers, Players, _days, _players) = (seed, dayNumbers, players, days, players.ToDictionary(p => p.Id, StringComparer.Ordinal));

    public ulong Seed { get; }

    /// <summary>Testing days in it, by number.</summary>
    public IReadOnlyList<int> DayNumbers { get; }

    public IReadOnlyList<Player> Players { get; }

    /// <summary>What was done, by testing day.</summary>
    public IReadOnlyList<IReadOnlyList<AthleteDay>> Days => _days;

    public Player Player(AthleteDay day) => _players[day.AthleteId];

    /// <summary>Draws a squad and its testing days: no files, no typing errors, no film; absences, injuries and short series as in the demo.</summary>
    /// <param name="seed">Seed.</param>
    /// <param name="days">Testing days wanted, by number; baseline and retest are all a verdict rests on.</param>
    /// <param name="withMess">Whether tests are missed as in the demo.</param>
    public static BenchSeason Draw(ulong seed, IReadOnlyList<int> days, bool withMess = true)
    {
        var drawn = DemoSeason.Draw(seed, new DemoOptions { WithClips = false, WithMess = withMess }, days);
        var (latest, made) = (new Dictionary<string, BodyMeasure>(StringComparer.Ordinal), new List<IReadOnlyList<AthleteDay>>());
        foreach (var sheets in drawn.Days)
        {
            var trials = SheetTrials.Of(sheets).GroupBy(t => t.AthleteId, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.ToList(), StringComparer.Ordinal);
            foreach (var body in trials.Values.SelectMany(t => t).OfType<BodyMeasure>()) latest[body.AthleteId] = body;
            made.Add([.. drawn.Players.Where(p => trials.ContainsKey(p.Id)).Select(p => new AthleteDay
            {
                AthleteId = p.Id, Date = sheets.Date, Trials = trials[p.Id], Stature = Length.FromInches(p.StatureInches),
                BodyMass = latest.GetValueOrDefault(p.Id)?.BodyMass, BodyMassDate = latest.GetValueOrDefault(p.Id)?.Date,
            })]);
        }

        return new(seed, days, drawn.Players, made);
    }

    /// <summary>The squad as the bench gets it.</summary>
    /// <param name="choice">Who and which days.</param>
    /// <param name="rule">Thresholds; null for the rule of the bench.</param>
    public BenchSquad Squad(SquadChoice choice, BenchRule? rule = null)
    {
        ArgumentNullException.ThrowIfNull(choice);
        List<IReadOnlyList<AthleteDay>> days = [];
        for (var i = 0; i < _days.Count; i++)
        {
            var isRetest = DayNumbers[i] == SeasonCalendar.Retest;
            if (isRetest && choice.Retested == 0) continue;
            List<AthleteDay> there = [.. _days[i].Where(d => Player(d).Index < choice.Players)];
            // Those retested are spread over the squad list, so that all groups are in it.
            days.Add(isRetest && choice.Retested < there.Count ? [.. Enumerable.Range(0, choice.Retested).Select(k => there[k * there.Count / choice.Retested])] : there);
        }

        var members = Players.Where(p => p.Index < choice.Players).Select(p => new SquadMember(p.Id, p.Group)).ToList();
        var profile = new SquadProfile { Squad = members, Retests = choice.Retested == 0 ? [] : [RepeatDays.Pair(days[0], days[1])] };
        return new BenchSquad(profile, days, MetricCatalogue.All, rule: rule);
    }
}
