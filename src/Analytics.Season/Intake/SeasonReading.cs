using Analytics.Metrics.Trials;
using Analytics.Season.Checks;
using Analytics.Season.Clips;
using Analytics.Season.Files;

namespace Analytics.Season.Intake;

/// <summary>A season folder as read.</summary>
/// <param name="Data">What was read, messages still with their <see cref="Cells.CellMarks"/>.</param>
/// <param name="IsWhole">Whether the disk gave everything; false where a file was in use, say, and may be readable the next time though nothing in it changed.</param>
internal sealed record SeasonReading(SeasonData Data, bool IsWhole)
{
    /// <summary>Reads and checks a folder.</summary>
    /// <exception cref="SeasonException">The folder, its settings or its athlete list cannot be used at all.</exception>
    public static SeasonReading Of(SeasonFolder folder, CancellationToken cancellation)
    {
        var intake = new SeasonIntake(folder, cancellation);
        var contents = new SeasonContents(intake);
        var settings = contents.Settings();
        var squad = contents.Squad();
        contents.Availability(squad);
        var testing = contents.Testing(settings, squad);
        new ContactJoin(settings, squad).JoinAll(intake, testing);
        UnitMixUps.HoldBack(testing.Days, id => squad.Find(id)!.Group);
        GateUnits.HoldBack(testing.Days);
        Parallel.ForEach(testing.Days, DuplicateAttempts.HoldBack);
        // After the checks of the testing days: their best lifts tell loads in a wrong unit.
        var sessions = contents.Sessions(settings, squad, new TestedStrength(testing.Days));
        var training = contents.Training(settings, squad, testing.Days.SelectMany(d => d.Candidates).Select(c => c.Trial).OfType<LiftSet>().Select(l => l.Lift).ToHashSet(StringComparer.Ordinal));
        contents.NoteTheRest();
        AvailabilityNotes.Add(intake, testing.Days, squad);
        var athletes = squad.All.ToList();
        var assembly = new DayAssembly(athletes);
        return new SeasonReading(new SeasonData
        {
            Settings = settings,
            Athletes = athletes,
            Days = [.. testing.Days.Select(assembly.Make)],
            Sessions = sessions,
            Training = training,
            HeldBack = [.. intake.Files.SelectMany(f => f.HeldBack)],
            Notes = [.. intake.Notes],
            Files = [.. intake.Files.Select(f => f.ToInputFile())],
        }, !folder.HadTrouble);
    }
}
