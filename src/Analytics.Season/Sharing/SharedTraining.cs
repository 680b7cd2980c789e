using System.Globalization;
using Analytics.Planning;
using Analytics.Planning.Exercises;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rooms;
using Analytics.Season.Training;

namespace Analytics.Season.Sharing;

/// <summary>The training settings of a shared season: the kit's own words stay, a coach's lose identifiers, names and parts of names, notes on restrictions and targets fall away.</summary>
internal sealed class SharedTraining(SharedNames names, SharedTrials trials, SharedPaths paths, bool hidesLines)
{
    private static readonly TrainingSettings Shipped = ShippedTraining.In("lb");
    private static readonly IReadOnlyList<string> ExerciseIds = [.. Shipped.Exercises.All.Select(e => e.Id)];
    private static readonly HashSet<string> OwnWords = new(Words(Shipped), StringComparer.Ordinal);

    private readonly Dictionary<(string Kind, string Written), string> ids = [];
    private readonly HashSet<(string Kind, string Shown)> taken = [];

    /// <summary>The settings without players.</summary>
    public TrainingSettings Of(TrainingSettings training) => training with
    {
        Exercises = new ExerciseCatalogue(training.Exercises.All.Select(Exercise)),
        Schemes = [.. training.Schemes.Select(s => s with { Id = Id("scheme", s.Id), Name = Text(s.Name), Source = Source(s.Source) })],
        Kinds = [.. training.Kinds.Select(k => k with { Id = Id("kind", k.Id), Name = Text(k.Name), Source = Source(k.Source) })],
        Shapes = [.. training.Shapes.Select(s => s with { Source = Source(s.Source), Days = [.. s.Days.Select(d => d with { Kind = Id("kind", d.Kind) })] })],
        Rules = Planning.Rules.PlanRules.With(training.Rules.All.Select(r => r with { Source = Source(r.Source) })),
        Sessions = [.. training.Sessions.Select(s => s with { Kind = Id("kind", s.Kind), Room = s.Room.Length > 0 ? Id("room", s.Room) : "", Groups = [.. s.Groups.Select(names.Group)] })],
        Rooms = [.. training.Rooms.Select(r => new Room(Id("room", r.Id), r.Stations.ToDictionary(s => Id("station", s.Key), s => s.Value, StringComparer.Ordinal)))],
        Weights = training.Weights with { Singles = training.Weights.Singles.ToDictionary(s => Id("implement", s.Key), s => s.Value, StringComparer.Ordinal) },
        // In file order they would stand as in the squad list.
        Restrictions = [.. training.Restrictions.Select(Restriction).OrderBy(r => names.Place(r.AthleteId)).ThenBy(r => r.From)],
        // A note may name anybody; two groups whose names are no longer told apart have one target.
        Targets = [.. training.Targets.Select(t => t with { Group = t.Group is { } group ? names.Group(group) : null, Note = "" }).DistinctBy(t => (t.Group, t.MetricId))],
        Earlier = [.. training.Earlier.Select(Choice).OrderBy(c => c.Date).ThenBy(c => c.Group, StringComparer.Ordinal).ThenBy(c => c.AthleteId is { } id ? names.Place(id) : -1)],
    };

    private Exercise Exercise(Exercise exercise) => exercise with
    {
        Id = ExerciseId(exercise.Id),
        Name = Text(exercise.Name),
        Basis = exercise.Basis.Lift is { } lift ? LoadBasis.Of(ExerciseId(lift)) : exercise.Basis,
        Stations = [.. exercise.Stations.Select(s => Id("station", s))],
        Implement = exercise.Implement is { } implement ? Id("implement", implement) : null,
        Prerequisite = Text(exercise.Prerequisite),
        Caution = Text(exercise.Caution),
    };

    // A note is mostly medical, and of no use to a plan.
    private Restriction Restriction(Restriction restriction)
        => restriction with { AthleteId = names.Of(restriction.AthleteId), ExerciseId = restriction.ExerciseId is { } id ? ExerciseId(id) : null, Note = "" };

    private EarlierChoice Choice(EarlierChoice choice) => choice with
    {
        Group = choice.Group is { } group ? names.Group(group) : null,
        AthleteId = choice.AthleteId is { } id ? names.Of(id) : null,
        ExerciseId = ExerciseId(choice.ExerciseId),
        SchemeId = choice.SchemeId is { } scheme ? Id("scheme", scheme) : null,
        Place = Place(choice.Place),
    };

    private string Place(string place)
    {
        var line = place.LastIndexOf(" line ", StringComparison.Ordinal);
        return line < 0 ? paths.Path(place) : paths.Path(place[..line]) + (hidesLines ? "" : place[line..]);
    }

    /// <summary>An exercise is called as the lift of a test of the same identifier.</summary>
    private string ExerciseId(string written) => trials.Lift(written, ExerciseIds);

    /// <summary>A word that other rows refer to: two that differ stay two.</summary>
    private string Id(string kind, string written)
    {
        if (OwnWords.Contains(written)) return written;
        if (ids.TryGetValue((kind, written), out var shown)) return shown;
        var plain = names.Words(written).Replace(SharedNames.NotShown, "player", StringComparison.Ordinal);
        shown = plain;
        for (var number = 2; !taken.Add((kind, shown)); number++) shown = string.Create(CultureInfo.InvariantCulture, $"{plain}_{number}");
        return ids[(kind, written)] = shown;
    }

    // "As Coach So-and-so has it": mostly somebody who is in no list.
    private static string Source(string written) => OwnWords.Contains(written) ? written : SharedNames.NotShown;

    private string Text(string written) => written.Length is 0 || OwnWords.Contains(written) ? written : names.Words(written);

    private static IEnumerable<string> Words(TrainingSettings shipped) =>
    [
        .. shipped.Exercises.All.SelectMany(e => e.Stations.Concat([e.Name, e.Prerequisite, e.Caution, e.Implement ?? ""])),
        .. shipped.Schemes.SelectMany(s => new[] { s.Id, s.Name, s.Source }), .. shipped.Kinds.SelectMany(k => new[] { k.Id, k.Name, k.Source }),
        .. shipped.Shapes.Select(s => s.Source), .. shipped.Rules.All.Select(r => r.Source), .. shipped.Rooms.SelectMany(r => r.Stations.Keys.Append(r.Id)), .. shipped.Weights.Singles.Keys, RulesReader.Coach,
    ];
}
