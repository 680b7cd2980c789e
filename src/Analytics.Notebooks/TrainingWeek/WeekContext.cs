using Analytics.Notebooks.AthletePage;
using Analytics.Planning;
using Analytics.Planning.Dose;
using Analytics.Planning.Feedback;
using Analytics.Planning.Loads;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Solving;
using Analytics.Season;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>A planned week with everything its blocks ask for; what is worked out is worked out once.</summary>
internal sealed class WeekContext
{
    private readonly Dictionary<string, PlanPlayer> _players;
    private readonly Dictionary<(string Player, string Exercise, string Scheme, DateOnly Date), Prescription> _loads = [];
    private readonly Dictionary<(string Player, string Exercise), ExerciseFeedback> _feedback;
    private readonly Dictionary<string, DoseSheet> _doses = new(StringComparer.Ordinal);

    public WeekContext(SeasonData season, TrainingSettings training, WeekChoice choice)
    {
        (Season, Training, Choice) = (season, training, choice);
        Squad = PlanPlayers.Of(season, new()
        {
            Monday = choice.Monday,
            Days = [.. choice.Sessions.Select(s => s.Date).Distinct()],
            Restrictions = training.Restrictions,
            Rules = training.Rules,
        });
        _players = Squad.Players.ToDictionary(p => p.Id, StringComparer.Ordinal);
        Problem = new()
        {
            Monday = choice.Monday,
            Sessions = choice.Sessions,
            Games = choice.Games,
            Players = Squad.Players,
            Exercises = training.Exercises,
            Schemes = training.Schemes,
            Kinds = training.Kinds,
            Rooms = training.Rooms,
            Rules = training.Rules,
            Earlier = training.Earlier,
        };
        Answer = choice.Sessions.Count == 0 || Squad.Players.Count == 0 ? new(null, []) : WeekPlanner.Plan(Problem);
        Feedback = WeekFeedback.Of(season, training, choice.Monday);
        _feedback = Feedback.ToDictionary(f => (f.AthleteId, f.ExerciseId));
        Bar = LoadUnit.Of(season.Settings, 1);
    }

    public SeasonData Season { get; }

    public TrainingSettings Training { get; }

    public WeekChoice Choice { get; }

    public WeekSquad Squad { get; }

    public PlanProblem Problem { get; }

    public PlanAnswer Answer { get; }

    /// <summary>The sessions; none where there is no plan.</summary>
    public IReadOnlyList<UnitSession> Sessions => Answer.Plan?.Sessions ?? [];

    /// <summary>What the log says of the loads planned before.</summary>
    public IReadOnlyList<ExerciseFeedback> Feedback { get; }

    /// <summary>Unit loads are shown in.</summary>
    public LoadUnit Bar { get; }

    public PlanRules Rules => Training.Rules;

    public PlanPlayer Player(string id) => _players[id];

    /// <summary>Loads of a player for an item on a day, moved by what the log says.</summary>
    public Prescription Loads(string player, PlannedItem item, DateOnly date)
    {
        var key = (player, item.Exercise.Id, item.Scheme.Id, date);
        if (_loads.TryGetValue(key, out var known)) return known;
        var feedback = _feedback.GetValueOrDefault((player, item.Exercise.Id));
        var loads = LoadPlan.Of(WeekFeedback.Moved(Player(player), item.Exercise, feedback), item, Training.Weights, Rules, date);
        return _loads[key] = loads.Working.Count > 0 && WeekFeedback.Note(feedback) is { } note ? loads with { Notes = [.. loads.Notes, note] } : loads;
    }

    /// <summary>The dose of a player's week.</summary>
    public DoseSheet Dose(string player)
        => _doses.TryGetValue(player, out var known) ? known
            : _doses[player] = DoseSheet.Of(Player(player), Answer.Plan!, Rules, item => Loads(player, item, Choice.Monday));
}
