using System.Runtime.CompilerServices;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning;
using Analytics.Planning.Dose;
using Analytics.Planning.Feedback;
using Analytics.Planning.Loads;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Solving;
using Analytics.Season;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>A planned week with everything its blocks ask for. Kept as long as the season is, so that the pages of a batch share one plan.</summary>
internal sealed class WeekContext
{
    private static readonly ConditionalWeakTable<SeasonData, Dictionary<(string Week, string Phase, PlanOptions? Options), WeekContext>> s_kept = [];

    private const double SecondEffort = 12;

    private readonly Dictionary<string, PlanPlayer> _players;
    private readonly Dictionary<(string Player, PlannedItem Item, DateOnly Day), Prescription> _loads = [];

    private WeekContext(SeasonData season, WeekChoice choice, PlanOptions? options)
    {
        (Season, Choice) = (season, choice);
        var training = season.Training;
        Squad = PlanPlayers.Of(season, new WeekQuestion
        {
            Monday = choice.Monday,
            Days = [.. choice.Sessions.Select(s => s.Date).Distinct()],
            Restrictions = training.Restrictions,
            Rules = training.Rules,
            Targets = new(training.Targets),
        });
        if (Squad.Players.Count == 0)
            throw new SeasonException($"Nobody trains in the week from {Words.Date(choice.Monday)}: every player of athletes.csv is listed in availability.csv as out on all its sessions. Correct the list, or choose another week.");
        Logged = LogOf(season, choice.Monday, Squad.Players);
        var logged = Logged.ToLookup(m => m.Feedback.AthleteId, StringComparer.Ordinal);
        Squad = Squad with { Players = [.. Squad.Players.Select(p => LoggedBases.Moved(p, logged[p.Id]))] };
        _players = Squad.Players.ToDictionary(p => p.Id, StringComparer.Ordinal);
        Problem = new()
        {
            Monday = choice.Monday,
            Sessions = choice.Sessions,
            Games = [.. training.Games.Where(g => g.Date >= choice.Monday.AddDays(-7) && g.Date < choice.Monday.AddDays(14))],
            Players = Squad.Players,
            Exercises = training.Exercises,
            Schemes = training.Schemes,
            Kinds = training.Kinds,
            Rooms = training.Rooms,
            Rules = training.Rules,
            SessionsAround = [.. training.Sessions.Where(s => IsNear(s.Date) && (s.Date < choice.Monday || s.Date >= choice.Monday.AddDays(7)))],
            Earlier = [.. training.Earlier.Where(e => IsNear(e.Date))],
        };
        Answer = WeekPlanner.Plan(Problem, options);
        // Rarely the search ends before it knows either way: it is given more work once, by the same count on any machine.
        if (options is null && Answer is { Plan: null, Undecided: not null }) Answer = WeekPlanner.Plan(Problem, new(SecondEffort));

        bool IsNear(DateOnly day) => day >= choice.Monday.AddDays(-7) && day < choice.Monday.AddDays(14);
    }

    public SeasonData Season { get; }

    public WeekChoice Choice { get; }

    public WeekSquad Squad { get; }

    public PlanProblem Problem { get; }

    public PlanAnswer Answer { get; }

    public TrainingSettings Training => Season.Training;

    /// <summary>Sessions of the plan; none where there is no plan.</summary>
    public IReadOnlyList<UnitSession> Sessions => Answer.Plan?.Sessions ?? [];

    /// <summary>The week of a season; planned once.</summary>
    /// <param name="season">The season.</param>
    /// <param name="week">Which week.</param>
    /// <param name="phase">Whose usual week is taken where the calendar has none.</param>
    /// <param name="options">How long a plan is sought; null for the usual.</param>
    /// <exception cref="SeasonException">A setting cannot be used.</exception>
    public static WeekContext Of(SeasonData season, string week, string phase, PlanOptions? options = null)
    {
        var known = s_kept.GetOrCreateValue(season);
        lock (known)
        {
            if (!known.TryGetValue((week, phase, options), out var context)) known[(week, phase, options)] = context = new(season, WeekChoice.Of(season, week, phase), options);
            return context;
        }
    }

    public PlanPlayer Player(string id) => _players[id];

    /// <summary>What a player puts on for an item of a session.</summary>
    public Prescription Load(string player, PlannedItem item, DateOnly day)
    {
        lock (_loads)
        {
            if (!_loads.TryGetValue((player, item, day), out var load))
                _loads[(player, item, day)] = load = LoadPlan.Of(_players[player], item, Training.Weights, Training.Rules, day);
            return load;
        }
    }

    public DoseSheet Dose(PlanPlayer player) => DoseSheet.Of(player, Answer.Plan!, Training.Rules);

    /// <summary>What the log did to the loads of this week; empty where no earlier plan was kept.</summary>
    public IReadOnlyList<LoggedMove> Logged { get; }

    private static IReadOnlyList<LoggedMove> LogOf(SeasonData season, DateOnly monday, IReadOnlyList<PlanPlayer> players)
    {
        var training = season.Training;
        if (training.Earlier.Count == 0) return [];
        var groups = players.ToDictionary(p => p.Id, p => p.Group, StringComparer.Ordinal);
        var logged = season.Sessions.Where(s => groups.ContainsKey(s.AthleteId)).Select(s => new LoggedSession(s.AthleteId, s.Work));
        var readings = PlanReadings.Of(training.Earlier.Where(e => e.AthleteId is null || groups.ContainsKey(e.AthleteId)), logged, groups);
        var said = new LoadFeedback(training.Rules, training.Schemes, ClearLosses.Of(season, monday)).Of(readings, monday);
        var bases = new LoggedBases(training.Exercises, training.Schemes, training.Weights, training.Rules);
        return [.. players.SelectMany(p => bases.Of(p, said, monday))];
    }
}
