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
    private static readonly ConditionalWeakTable<SeasonData, Dictionary<(string Week, string Phase), WeekContext>> s_kept = [];

    private readonly Dictionary<string, PlanPlayer> _players;
    private readonly Dictionary<(string Player, PlannedItem Item, DateOnly Day), Prescription> _loads = [];
    private IReadOnlyList<ExerciseFeedback>? _feedback;

    private WeekContext(SeasonData season, WeekChoice choice)
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
        _players = Squad.Players.ToDictionary(p => p.Id, StringComparer.Ordinal);
        if (Squad.Players.Count == 0)
            throw new SeasonException($"Nobody trains in the week from {Words.Date(choice.Monday)}: every player of athletes.csv is listed in availability.csv as out on all its sessions. Correct the list, or choose another week.");
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
            Earlier = [.. training.Earlier.Where(e => e.Date >= choice.Monday.AddDays(-7) && e.Date < choice.Monday.AddDays(7))],
        };
        Answer = WeekPlanner.Plan(Problem);
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
    /// <exception cref="SeasonException">A setting cannot be used.</exception>
    public static WeekContext Of(SeasonData season, string week, string phase)
    {
        var known = s_kept.GetOrCreateValue(season);
        lock (known)
        {
            if (!known.TryGetValue((week, phase), out var context)) known[(week, phase)] = context = new(season, WeekChoice.Of(season, week, phase));
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

    /// <summary>What the log says about next loads; empty where no earlier plan was logged.</summary>
    public IReadOnlyList<ExerciseFeedback> Feedback => _feedback ??= MakeFeedback();

    private IReadOnlyList<ExerciseFeedback> MakeFeedback()
    {
        if (Training.Earlier.Count == 0) return [];
        var groups = Squad.Players.ToDictionary(p => p.Id, p => p.Group, StringComparer.Ordinal);
        var logged = Season.Sessions.Where(s => groups.ContainsKey(s.AthleteId)).Select(s => new LoggedSession(s.AthleteId, s.Work));
        var readings = PlanReadings.Of(Training.Earlier.Where(e => e.AthleteId is null || groups.ContainsKey(e.AthleteId)), logged, groups);
        return new LoadFeedback(Training.Rules, Training.Schemes, ClearLosses.Of(Season, Choice.Monday)).Of(readings, Choice.Monday);
    }
}
