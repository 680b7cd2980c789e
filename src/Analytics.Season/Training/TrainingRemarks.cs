using Analytics.Planning;
using Analytics.Planning.Exercises;
using Analytics.Season.Cells;
using Analytics.Season.Intake;
using Analytics.Season.Trials;

namespace Analytics.Season.Training;

/// <summary>Remarks on what the season's own training files name and nothing else has. The shipped files are not remarked on.</summary>
internal static class TrainingRemarks
{
    /// <summary>Most exercises listed in one remark.</summary>
    private const int MostListed = 5;

    /// <summary>Adds them.</summary>
    public static void Add(SeasonIntake intake, TrainingFolder folder, TrainingSettings read, TrainingSettings shipped, IReadOnlySet<string> tested)
    {
        if (read.OwnFiles.Contains("exercises.csv"))
        {
            AddLifts(intake, folder.PathOf("exercises"), read, tested);
            AddStations(intake, folder.PathOf("exercises"), read, shipped);
        }

        AddUnfit(intake, folder, read);
        if (read.OwnFiles.Contains("rooms.csv")) AddRooms(intake, folder.PathOf("rooms"), read);
    }

    private static void AddLifts(SeasonIntake intake, string path, TrainingSettings read, IReadOnlySet<string> tested)
    {
        var untested = read.Exercises.All.Where(e => e.Basis.Kind == LoadBasisKind.Lift && !tested.Contains(e.Basis.Lift!) && !tested.Contains(e.Id)).GroupBy(e => e.Basis.Lift!);
        foreach (var lift in untested)
        {
            var near = KnownLift.Ids.Contains(lift.Key) ? null : NearWord.Of(lift.Key, KnownLift.Ids.Concat(tested));
            intake.Note(path, $"Nobody was tested in '{CellText.Show(lift.Key)}'{(near is null ? "" : $" (did you mean {CellText.Show(near)}?)")}, so {Listed([.. lift.Select(e => e.Id)])} cannot be loaded yet: test first.");
        }
    }

    private static void AddStations(SeasonIntake intake, string path, TrainingSettings read, TrainingSettings shipped)
    {
        var there = read.Rooms.SelectMany(r => r.Stations.Keys).Concat(shipped.Exercises.All.SelectMany(e => e.Stations)).ToHashSet(StringComparer.Ordinal);
        foreach (var station in read.Exercises.All.SelectMany(e => e.Stations.Select(s => (Station: s, e.Id))).Where(s => !there.Contains(s.Station)).GroupBy(s => s.Station, s => s.Id))
            intake.Note(path, $"No room has the station '{CellText.Show(station.Key)}'{Near(station.Key, there)}, so {Listed([.. station])} cannot be planned; add it to rooms.csv.");
    }

    // An exercise without a scheme is never planned, and a scheme without an exercise never used: both would be lost silently.
    private static void AddUnfit(SeasonIntake intake, TrainingFolder folder, TrainingSettings read)
    {
        if (read.Exercises.All.Where(e => !read.Schemes.Any(s => s.Fits(e))).Select(e => e.Id).ToList() is { Count: > 0 } exercises && (Own("exercises") ?? Own("schemes")) is { } at)
            intake.Note(at, $"No scheme fits {Listed(exercises)}: quality, pattern, one side or both, and per cent must fit, so {(exercises.Count == 1 ? "it is" : "they are")} never planned. Add a scheme to schemes.csv.");
        if (Own("schemes") is { } file && read.Schemes.Where(s => !read.Exercises.All.Any(s.Fits)).Select(s => s.Id).ToList() is { Count: > 0 } schemes)
            intake.Note(file, $"No exercise fits {Listed(schemes)}: quality, pattern, one side or both, and per cent must fit, so {(schemes.Count == 1 ? "it is" : "they are")} never used.");

        string? Own(string name) => read.OwnFiles.Contains(name + ".csv") ? folder.PathOf(name) : null;
    }

    private static void AddRooms(SeasonIntake intake, string path, TrainingSettings read)
    {
        var used = read.Exercises.All.SelectMany(e => e.Stations).ToHashSet(StringComparer.Ordinal);
        foreach (var station in read.Rooms.SelectMany(r => r.Stations.Keys).Distinct().Where(s => !used.Contains(s)))
            intake.Note(path, $"No exercise is done at the station '{CellText.Show(station)}'{Near(station, used)}, so it has no effect.");
    }

    private static string Near(string word, IEnumerable<string> known) => NearWord.Of(word, known) is { } near ? $" (did you mean {CellText.Show(near)}?)" : "";

    private static string Listed(List<string> ids)
        => string.Join(", ", ids.Take(MostListed).Select(CellText.Show)) + (ids.Count > MostListed ? FormattableString.Invariant($" and {ids.Count - MostListed} more") : "");
}
