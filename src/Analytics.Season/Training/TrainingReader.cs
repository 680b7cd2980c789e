using Analytics.Planning;
using Analytics.Planning.Exercises;
using Analytics.Planning.Weeks;
using Analytics.Season.Intake;
using Analytics.Season.Squad;
using Analytics.Season.Tables;

namespace Analytics.Season.Training;

/// <summary>Reads the folder <c>training</c>; what it does not say comes from the shipped files.</summary>
/// <param name="intake">The reading.</param>
/// <param name="settings">Settings of the season.</param>
/// <param name="squad">The athletes.</param>
/// <param name="tested">Lifts that somebody of the season was tested in.</param>
internal sealed class TrainingReader(SeasonIntake intake, SeasonSettings settings, SquadList squad, IReadOnlySet<string> tested)
{
    private readonly TrainingSettings shipped = ShippedTraining.In(settings.MassUnit);
    private readonly List<string> own = [];

    /// <summary>Reads the folder.</summary>
    public TrainingSettings Read(TrainingFolder folder)
    {
        var exercises = Own(folder, "exercises", t => ExercisesReader.Read(intake, t)) is { } list ? new ExerciseCatalogue(list) : shipped.Exercises;
        var schemes = Own(folder, "schemes", t => SchemesReader.Read(intake, t)) ?? shipped.Schemes;
        var kinds = Own(folder, "day-kinds", t => DayKindsReader.Read(intake, t)) ?? shipped.Kinds;
        List<string> kindIds = [.. kinds.Select(k => k.Id)];
        var shapes = Shapes(folder, kindIds);
        var rules = Own(folder, "rules", t => RulesReader.Read(intake, t)) ?? shipped.Rules;
        var rooms = Own(folder, "rooms", t => RoomsReader.Read(intake, t)) ?? shipped.Rooms;
        var weights = Own(folder, "weights", t => WeightsReader.Read(intake, t, Implements(exercises))) ?? shipped.Weights;
        List<string> groups = [.. squad.All.Select(a => a.Group).Where(g => g.Length > 0).Distinct()];
        var (sessions, games) = CalendarReader.Read(intake, Listed(folder, "calendar"), new CalendarWords(settings, kindIds, [.. rooms.Select(r => r.Id)], groups));
        var restrictions = RestrictionsReader.Read(intake, Listed(folder, "restrictions"), squad, exercises);
        var targets = TargetsReader.Read(intake, Listed(folder, "targets"), groups);
        var earlier = PlanReader.Read(intake, Listed(folder, "plan"), new PlanNames(settings, squad, groups, exercises, [.. schemes.Select(s => s.Id)]));
        var read = new TrainingSettings
        {
            Exercises = exercises, Schemes = schemes, Kinds = kinds, Shapes = shapes, Rules = rules, Sessions = sessions, Games = games, Rooms = rooms, Weights = weights,
            Restrictions = restrictions, Targets = targets, Earlier = earlier, OwnFiles = own,
        };
        TrainingRemarks.Add(intake, folder, read, shipped, tested);
        return read;
    }

    /// <summary>What exercises are done with.</summary>
    public static IReadOnlyCollection<string> Implements(ExerciseCatalogue exercises)
        => [.. exercises.All.Select(e => e.Implement).OfType<string>().Concat(["dumbbell", "medicine_ball", "kettlebell", "sled_plate"]).Distinct()];

    /// <summary>What a file says; null where the shipped one stands in for it.</summary>
    private T? Own<T>(TrainingFolder folder, string name, Func<IReadOnlyList<Table>, T?> read) where T : class
    {
        if (!folder.Has(name)) return null;
        if (folder.Tables(name) is { Count: > 0 } tables && read(tables) is { } said && said is not System.Collections.ICollection { Count: 0 })
        {
            own.Add($"{name}.csv");
            return said;
        }

        intake.Note(folder.PathOf(name), "No row of this file could be used, so what comes with the kit is taken in its place.");
        return null;
    }

    /// <summary>Tables of a file that nothing stands in for.</summary>
    private IReadOnlyList<Table> Listed(TrainingFolder folder, string name)
    {
        if (folder.Has(name)) own.Add($"{name}.csv");
        return folder.Tables(name);
    }

    private IReadOnlyList<WeekShape> Shapes(TrainingFolder folder, List<string> kinds)
    {
        var said = Own(folder, "week-shapes", t => WeekShapesReader.Read(intake, t, kinds)) ?? [];
        return [.. TrainedPhases.All.Select(p => said.FirstOrDefault(s => s.Phase == p) ?? Usual(folder, p, kinds, said.Count > 0)).Where(s => s.Days.Count > 0)];
    }

    /// <summary>The shipped week of a phase, without the kinds of day that the season does not have.</summary>
    private WeekShape Usual(TrainingFolder folder, SeasonPhase phase, List<string> kinds, bool hasOthers)
    {
        var week = shipped.Shapes.First(s => s.Phase == phase);
        if (hasOthers) intake.Note(folder.PathOf("week-shapes"), $"There is no week of {TrainedPhases.Id(phase)}, so the one that comes with the kit is taken.");
        List<string> lost = [.. week.Days.Select(d => d.Kind).Where(k => !kinds.Contains(k)).Distinct()];
        if (lost.Count > 0)
            intake.Note(folder.PathOf("day-kinds"), $"The usual week of {TrainedPhases.Id(phase)} has days of the kind {string.Join(", ", lost)}, which this file does not have; they were left out. Write week-shapes.csv with kinds of your own.");
        return week with { Days = [.. week.Days.Where(d => kinds.Contains(d.Kind))] };
    }
}
