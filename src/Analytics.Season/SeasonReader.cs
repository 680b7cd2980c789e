using Analytics.Season.Checks;
using Analytics.Season.Clips;
using Analytics.Season.Files;
using Analytics.Season.Intake;
using Analytics.Season.Settings;
using Analytics.Season.Squad;

namespace Analytics.Season;

/// <summary>Reads a season folder into typed trials.</summary>
public static class SeasonReader
{
    /// <summary>Reads and checks a season folder. Every data row read is either kept or held back with a reason.</summary>
    /// <param name="folder">The season folder.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <exception cref="SeasonException">The folder, its settings or its athlete list cannot be used at all.</exception>
    /// <exception cref="OperationCanceledException">The reading was stopped.</exception>
    public static SeasonData Read(string folder, CancellationToken cancellation = default)
    {
        var intake = new SeasonIntake(SeasonFolder.Open(folder), cancellation);
        var contents = new SeasonContents(intake);
        var settings = contents.Settings();
        var squad = contents.Squad();
        contents.Availability(squad);
        var testing = contents.Testing(settings, squad);
        new ContactJoin(settings, squad).JoinAll(intake, testing);
        var sessions = contents.Sessions(settings, squad);
        contents.NoteTheRest();
        UnitMixUps.HoldBack(testing.Days, id => squad.Find(id)!.Group);
        GateUnits.HoldBack(testing.Days);
        Parallel.ForEach(testing.Days, DuplicateAttempts.HoldBack);
        AvailabilityNotes.Add(intake, testing.Days, squad);
        var athletes = squad.All.ToList();
        var assembly = new DayAssembly(athletes);
        return new SeasonData
        {
            Settings = settings,
            Athletes = athletes,
            Days = [.. testing.Days.Select(assembly.Make)],
            Sessions = sessions,
            HeldBack = [.. intake.Files.SelectMany(f => f.HeldBack)],
            Notes = intake.Notes,
            Files = [.. intake.Files.Select(f => f.ToInputFile())],
        };
    }
}
