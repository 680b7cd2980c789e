using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests;

public sealed class SeasonCheckTextTests
{
    [Fact]
    public void Lines_WithHeldBackRows_GiveCountsPlacesAndRemedies()
    {
        using var season = new TemporarySeason()
            .With("testing/2026-03-02/body.csv", "athlete_id,mass_lb,shoe\nP001,225,\nP0O2,231,\n")
            .With("testing/2026-03-02/lifts.csv", "athlete_id,lift,load,reps\nP001,deadlift,1,1\nP002,deadlift,1,1\n")
            .With("testing/2026-03-02/jumps.csv", "");

        var lines = SeasonCheckText.Lines(season.Read());

        Assert.Equal(
        [
            "Harbour Bulls, Spring 2026: 4 athletes, 1 testing day, 0 training sessions",
            "",
            "file                               rows       kept  held back",
            "season.json                           0          0          0",
            "athletes.csv                          4          4          0",
            "testing/2026-03-02/body.csv           2          1          1",
            "testing/2026-03-02/jumps.csv          0          0          0",
            "testing/2026-03-02/lifts.csv          2          0          2",
            "all                                   8          5          3",
            "",
            "Held back",
            "  testing/2026-03-02/body.csv, line 3, column athlete_id, value 'P0O2'",
            "    Athlete 'P0O2' is not in athletes.csv.",
            "    To mend it: Did you mean P002 (Ben Vale)? Otherwise add the athlete to athletes.csv.",
            "  testing/2026-03-02/jumps.csv",
            "    The file is empty.",
            "    To mend it: Save it again from the spreadsheet, or delete it.",
            "  testing/2026-03-02/lifts.csv, line 1, column load (2 rows)",
            "    The column 'load' does not say its unit.",
            "    To mend it: Name it with its unit; accepted: load_lb, load_kg.",
            "",
            "Remarks (nothing was held back for these)",
            "  testing/2026-03-02/body.csv: The column 'shoe' is not known and was not read.",
            "",
            "8 rows read: 5 kept, 3 held back, and 1 file or cell left out.",
        ], lines);
    }

    [Fact]
    public void Lines_OneMistakeOnManyRows_SayTheRemedyOnceUnderAllPlaces()
    {
        using var season = new TemporarySeason()
            .With("testing/2026-03-02/jumps.csv", "athlete_id,jump,method,attempt,height_in\nP001,broad,mat,1,20\nP001,countermovement,mat,1,20\nP002,broad,mat,1,21\n");
        var lines = SeasonCheckText.Lines(season.Read());
        var at = lines.ToList().IndexOf("Held back");
        Assert.Equal(
        [
            "  testing/2026-03-02/jumps.csv, line 2, column jump, value 'broad'",
            "  testing/2026-03-02/jumps.csv, line 4, column jump, value 'broad'",
            "    The jump 'broad' is not known.",
        ], lines.Skip(at + 1).Take(3));
        Assert.Single(lines, l => l.StartsWith("    To mend it:", StringComparison.Ordinal));
    }

    [Fact]
    public void ExitCode_NothingHeldBack_IsZero()
    {
        using var season = new TemporarySeason().With("testing/2026-03-02/body.csv", "athlete_id,mass_lb\nP001,225\n");

        var data = season.Read();

        Assert.Equal(0, SeasonCheckText.ExitCode(data));
        Assert.Equal("All 5 rows read were kept.", SeasonCheckText.Lines(data)[^1]);
    }

    [Fact]
    public void Lines_ManyEntries_SayHowManyAreNotShown()
    {
        using var season = new TemporarySeason().With("testing/2026-03-02/body.csv", "athlete_id,mass_lb\n" + string.Concat(Enumerable.Range(0, 130).Select(i => $"X{i},225\n")));

        var lines = SeasonCheckText.Lines(season.Read());

        Assert.Equal(100, lines.Count(l => l.Contains("To mend it", StringComparison.Ordinal)));
        Assert.Contains("  testing/2026-03-02/body.csv: 30 more entries not shown", lines);
        Assert.Equal("134 rows read: 4 kept, 130 held back.", lines[^1]);
    }

    [Fact]
    public void Lines_ControlCharactersInFiles_DoNotReachTheTerminal()
    {
        using var season = new TemporarySeason().With("testing/2026-03-02/body.csv", "athlete_id,mass_lb,\u001b[2J\n\u001b[31mP\u0007,225,1\n");

        Assert.DoesNotContain(SeasonCheckText.Lines(season.Read()), l => l.Any(char.IsControl));
    }
}
