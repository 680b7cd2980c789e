using Analytics.Simulation.Demo.Files;
using Analytics.Simulation.Demo.Mess;
using Analytics.Simulation.Demo.Squad;
using Analytics.Simulation.Demo.Testing;
using Analytics.Simulation.Demo.Truth;

namespace Analytics.Simulation.Demo;

/// <summary>A generated season: its files by path, forward slashes, and the truth behind them.</summary>
public sealed record GeneratedSeason(IReadOnlyDictionary<string, byte[]> Files, SeasonTruth Truth);

/// <summary>A squad and what was written down on its testing days.</summary>
public sealed record DrawnSeason(
    IReadOnlyList<Player> Players, IReadOnlyList<Spell> Spells, IReadOnlyList<TestingDay> Days, IReadOnlyList<RunTruth> Runs, IReadOnlyList<ContactTruth> Contacts);

/// <summary>
/// Makes a season of an invented club from a seed. The same seed and options give the same bytes. The model is
/// described in docs/demo-data.md.
/// </summary>
public static class DemoSeason
{
    /// <summary>Seed of the season kept in data-demo.</summary>
    public const ulong DemoSeed = 2026;

    public static GeneratedSeason Generate(ulong seed, DemoOptions? options = null)
    {
        options ??= new DemoOptions();
        var (players, spells, days, runs, contacts) = Draw(seed, options, [.. Enumerable.Range(0, SeasonCalendar.Of(options).Count)]);
        var errors = options.WithMess ? new TypingErrors(seed, days).Make() : [];

        var files = new SortedDictionary<string, byte[]>(StringComparer.Ordinal)
        {
            ["season.json"] = SeasonSheets.Settings(options),
            ["athletes.csv"] = CsvText.Plain.Write(SeasonSheets.Athletes(seed, players, options.WithMess)),
            ["availability.csv"] = CsvText.Plain.Write(SeasonSheets.Spells(spells, players)),
            ["sessions.csv"] = CsvText.Plain.Write(SessionSheet.Of(seed, players, spells)),
        };
        foreach (var (path, bytes) in TrainingSheets.Of(players)) files.Add(path, bytes);
        foreach (var (path, bytes) in days.SelectMany(d => d.Write())) files.Add(path, bytes);
        return new GeneratedSeason(files, new SeasonTruth
        {
            Seed = seed, Options = options, Players = players, Spells = spells, Runs = runs, Contacts = contacts, Errors = errors,
        });
    }

    /// <summary>The squad and its testing days as they were written down, before slips of typing; for those who need no files.</summary>
    /// <param name="seed">Seed of the season.</param>
    /// <param name="options">What is in it.</param>
    /// <param name="days">The testing days wanted, by number, rising; the others cost nothing and change nothing.</param>
    public static DrawnSeason Draw(ulong seed, DemoOptions options, IReadOnlyList<int> days)
    {
        var players = PlayerFactory.Draw(seed, options);
        var spells = options.WithMess ? Availability.Draw(seed, players) : [];
        var attendance = new Attendance(seed, options.WithMess, spells);
        var (runs, contacts) = (new List<RunTruth>(), new List<ContactTruth>());
        return new(players, spells, [.. days.Select(day => Test(seed, day, players, attendance, runs, options.WithClips ? contacts : null, options.Links))], runs, contacts);
    }

    private static TestingDay Test(ulong seed, int day, IReadOnlyList<Player> players, Attendance attendance, List<RunTruth> runs, List<ContactTruth>? contacts,
        IReadOnlyList<PlantedLink> links)
    {
        Sheet body = BodyTest.Sheet(), lifts = LiftTest.Sheet(), jumps = JumpTest.Sheet(), sprints = SprintTest.Sheet(),
            agility = AgilityTest.Sheet(), throws = ThrowTest.Sheet(), stairs = StairTest.Sheet(), contact = ContactDrill.Sheet();
        var clips = new List<Sheet>();
        foreach (var player in players)
        {
            var bench = new TestBench(seed, day, player, DayForm.Of(seed, player, day, links), attendance);
            BodyTest.Run(bench, body);
            LiftTest.Run(bench, lifts);
            JumpTest.Run(bench, jumps);
            SprintTest.Run(bench, sprints, runs);
            AgilityTest.Run(bench, agility);
            ThrowTest.Run(bench, throws);
            StairTest.Run(bench, stairs);
            if (contacts is not null) ContactDrill.Run(bench, contact, clips, contacts);
        }

        return new TestingDay(SeasonCalendar.DateOf(day), [body, lifts, jumps, sprints, agility, throws, stairs, contact], day switch
        {
            SeasonCalendar.March => null,
            SeasonCalendar.April => CsvText.Continental,
            _ => CsvText.Plain,
        }) { Clips = clips };
    }
}
