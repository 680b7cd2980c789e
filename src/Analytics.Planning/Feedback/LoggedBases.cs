using System.Globalization;
using Analytics.Metrics.Strength;
using Analytics.Planning.Exercises;
using Analytics.Planning.Loads;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rooms;
using Analytics.Planning.Rules;
using Analytics.Planning.Schemes;
using Analytics.Quantities;

namespace Analytics.Planning.Feedback;

/// <summary>
/// From what the log says to the loads of the next week: the 1RM behind an exercise is put where the latest planned load stood, moved by the step, so that a step is taken
/// once, holds through the weeks, and carries over to a scheme of another per cent. Everything else about loads stays in force. See docs/methods/planning.md.
/// </summary>
public sealed class LoggedBases
{
    /// <summary>A step that the weights are too coarse for is taken to the next weight when that is at most this many steps up (our choice, no source).</summary>
    public const double MostSteps = 3;

    private const string AsTested = "as the tests say";

    // A load read from a file, in pounds and back.
    private const double SameLoad = 1e-6;

    private readonly ExerciseCatalogue _exercises;
    private readonly Dictionary<string, SetScheme> _schemes;
    private readonly WeightStock _stock;
    private readonly PlanRules _rules;

    /// <summary>What loads are made with.</summary>
    /// <param name="exercises">Exercises.</param>
    /// <param name="schemes">Set schemes: they tell what per cent the planned load was.</param>
    /// <param name="stock">Bars, plates and other weights.</param>
    /// <param name="rules">The rules.</param>
    public LoggedBases(ExerciseCatalogue exercises, IEnumerable<SetScheme> schemes, WeightStock stock, PlanRules rules)
    {
        ArgumentNullException.ThrowIfNull(schemes);
        (_exercises, _schemes, _stock, _rules) = (exercises, schemes.ToDictionary(s => s.Id, StringComparer.Ordinal), stock, rules);
    }

    /// <summary>What the log does to the loads of a player; one entry an exercise it says something about.</summary>
    /// <param name="player">The player.</param>
    /// <param name="feedback">What the log says; that of other players is not looked at.</param>
    /// <param name="today">First day of the week the loads are for.</param>
    public IReadOnlyList<LoggedMove> Of(PlanPlayer player, IEnumerable<ExerciseFeedback> feedback, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(player);
        ArgumentNullException.ThrowIfNull(feedback);
        return [.. feedback.Where(f => f.AthleteId == player.Id).Select(f => Of(player, f, today))];
    }

    /// <summary>A player whose loads stand where the log has put them.</summary>
    /// <param name="player">The player.</param>
    /// <param name="moves">What the log does to his loads.</param>
    public static PlanPlayer Moved(PlanPlayer player, IEnumerable<LoggedMove> moves)
    {
        ArgumentNullException.ThrowIfNull(player);
        ArgumentNullException.ThrowIfNull(moves);
        return player with { Logged = moves.Where(m => m.Base is not null).ToDictionary(m => m.Feedback.ExerciseId, m => m.Base!, StringComparer.Ordinal) };
    }

    private LoggedMove Of(PlanPlayer player, ExerciseFeedback said, DateOnly today)
    {
        LoggedMove Stay(string why) => new(said, null, why);
        if (said is not { PlannedKilograms: { } planned, LoggedOn: { } day, WasDone: { } done }) return Stay(AsTested);
        if (_exercises.Find(said.ExerciseId) is not { Basis.Kind: LoadBasisKind.Lift } exercise) return Stay("no load of this exercise goes by a 1RM");
        var known = ExerciseBase.Of(player, exercise, today, _rules);
        if (known.Test is not { } test) return Stay(known.Instead ?? AsTested);
        if (test.Test.Date >= day) return Stay(string.Create(CultureInfo.InvariantCulture, $"tested since, on {test.Test.Date:d MMMM}: the test speaks"));

        var scheme = said.PlannedSchemeId is { } id ? _schemes.GetValueOrDefault(id) : null;
        var share = scheme is null ? null : LiftLoads.Percents(exercise, scheme, RepetitionTables.Textbook).Percent.Select(p => p / 100).Cast<double?>().Max();
        var start = share is { } of && !IsFromTests(player, exercise, scheme!, planned, today) ? planned / of : known.Kilograms;
        // What was not done is no evidence for more than the tests say.
        if (!done) start = Math.Min(start, known.Kilograms);
        var next = start * said.Factor;
        string? coarse = null;
        if (said.Step == LoadStep.Progress && share is { } part && exercise.Implement is { } implement)
            (next, coarse) = Up(LoadableWeights.Of(_stock, implement), planned, start, said.Factor, part);
        var text = coarse ?? Text(said.Step);
        return Math.Abs(next - known.Kilograms) <= SameLoad ? Stay(coarse ?? AsTested) : new(said, new(next, day, text), text);
    }

    /// <summary>A step up from the planned load, at least the next weight where that is not too far; where it is, no step, with the reason.</summary>
    private (double Kilograms, string? Coarse) Up(LoadableWeights weights, double planned, double start, double factor, double share)
    {
        if (weights.All.FirstOrDefault(w => w.Kilograms > planned * (1 + SameLoad)) is not { Kilograms: > 0 } heavier) return (start, "no heavier weight is listed");
        if (heavier.Kilograms > planned * (1 + MostSteps * (factor - 1)) + SameLoad)
            return (start, string.Create(CultureInfo.InvariantCulture, $"the next weight, {LoadWords.Of(heavier, _stock.Unit)}, is {100 * (heavier.Kilograms / planned - 1):0} % up: repetitions first, then the load"));
        var stepped = Math.Max(heavier.Kilograms, weights.Down(Mass.FromKilograms(planned * factor))?.Kilograms ?? 0);
        // What rounding took off the planned load must not come back on top of the step.
        var next = start * factor;
        return (weights.Down(Mass.FromKilograms(next * share))?.Kilograms == stepped ? next : stepped / share, null);
    }

    // Loads are rounded down: where the tests still give the planned load, the base is theirs, or rounding would take a little off every week.
    private bool IsFromTests(PlanPlayer player, Exercise exercise, SetScheme scheme, double planned, DateOnly today)
    {
        var load = LoadPlan.Of(player, new PlannedItem(exercise, scheme, null, Duration.Zero, false), _stock, _rules, today);
        return load.Working.Count > 0 && Math.Abs(load.Working.Max(w => w.Kilograms) - planned) <= planned * DoneAsPlanned.Rounding;
    }

    private static string Text(LoadStep step) => step switch
    {
        LoadStep.Progress => "a step up by the log",
        LoadStep.BackOff => "a step down by the log",
        _ => "kept where the log has it",
    };
}
