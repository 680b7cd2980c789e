using Analytics.Season.Tests.Support;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace Analytics.Season.Tests;

/// <summary>Whatever stands in the cells: every row with something in it is counted, and each is delivered or listed.</summary>
public sealed class NothingLostTests
{
    private static readonly string[] Heads =
    [
        "athlete_id", "mass_lb", "mass_kg", "stature_in", "lift", "set", "load_lb", "load_kg", "load", "reps", "rir", "rpe", "jump", "method", "attempt", "height_in", "height_cm",
        "flight_ms", "contact_ms", "distance_m", "timing", "start", "t_10yd_s", "t_20yd_s", "t_10m_s", "t_10", "test", "side", "time_s", "throw", "ball_kg", "rise_cm", "checked", "nonsense", "",
    ];

    private static readonly string[] Cells =
    [
        "", " ", "P001", "p002", "P003", "P9", "225", "231.5", "102", "-1", "0", "1", "2", "2.5", "NaN", "1e308", "1,5", "1.234,5", "405 lb", "#N/A", "back_squat", "Back Squat", "nonsense", "countermovement",
        "standing_long", "mat", "reach", "electronic", "hand", "signal", "pro_agility", "left", "overhead_back", "4.4", "1.62", "2.75", "620", "yes", "2026-03-02", "ü", "\u00a0", "x\u0001y", "9999999999999999999999",
    ];

    private static readonly string[] Awkward = [.. Cells, "\"", "\"open", "close\"", "a\nb", "a\r\nb", "a\"b\"c", "\"\"", "\"q;q\"", "\"q,q\"", "\"line\nbreak\""];

    private static Gen<(string Table, string Text, int Rows)> Tables(string[] cells) =>
        from table in Gen.Elements("body", "lifts", "jumps", "sprints", "agility", "throws", "stairs")
        from separator in Gen.Elements(",", ";", "\t")
        from heads in Gen.ArrayOf(Gen.Elements(Heads.Where(h => h.Length > 0).ToArray()), 7)
        from rows in Gen.ListOf(Gen.ArrayOf(Gen.Elements(cells.Where(c => !c.Contains(separator, StringComparison.Ordinal)).ToArray()), 9))
        let head = new[] { "athlete_id" }.Concat(heads.Where(h => h != "athlete_id").Distinct())
        select (table, string.Join(separator, head) + "\n" + string.Concat(rows.Select(r => string.Join(separator, r.Take(1 + r[8].Length % 8)) + "\n")),
            rows.Count(r => r.Take(1 + r[8].Length % 8).Any(c => !string.IsNullOrWhiteSpace(c))));

    [Property(MaxTest = 300, Replay = "(4711,17)")]
    public Property Read_AnyPlainCells_CountsEveryRowOnce() => Prop.ForAll(Tables(Cells).ToArbitrary(), drawn =>
    {
        using var season = new TemporarySeason().With($"testing/2026-03-02/{drawn.Table}.csv", drawn.Text);

        var data = season.Read();

        Assert.Equal(drawn.Rows, data.Files.Single(f => f.Path.StartsWith("testing", StringComparison.Ordinal)).Rows);
    });

    [Property(MaxTest = 300, Replay = "(4711,19)")]
    public Property Read_AnyCellsWithQuotesAndLineBreaks_BalancesTheCount() => Prop.ForAll(Tables(Awkward).ToArbitrary(), drawn =>
    {
        using var season = new TemporarySeason().With($"testing/2026-03-02/{drawn.Table}.csv", drawn.Text);

        Assert.All(season.Read().HeldBack, h => Assert.True(h.Reason.Length < 2000, h.Reason));
    });

    private static readonly (string File, string[] Heads)[] TrainingFiles =
    [
        ("exercises", ["exercise", "name", "pattern", "quality", "load_basis", "least_percent", "most_percent", "repetition_time_s", "jump_contacts", "impact", "stations", "unilateral"]),
        ("schemes", ["scheme", "kind", "qualities", "sets", "repetitions", "rest_s", "interval_s", "least_percent", "most_percent", "partner_repetitions"]),
        ("day-kinds", ["kind", "quality", "least", "most", "own_work"]), ("week-shapes", ["phase", "weekday", "days_to_game", "kind", "minutes"]), ("rules", ["rule", "value", "unit", "handling"]),
        ("rooms", ["room", "station", "places"]), ("weights", ["item", "weight_lb", "weight_kg", "pairs"]), ("calendar", ["date", "start", "kind", "minutes", "room", "groups"]),
        ("restrictions", ["athlete_id", "from", "to", "out", "note"]), ("plan", ["date", "group", "athlete_id", "exercise", "scheme", "part", "keep", "sets", "load_lb"]),
        ("targets", ["group", "metric", "value", "unit", "note"]),
    ];

    private static readonly string[] TrainingCells =
    [
        "", "1", "2", "60", "-5", "0.5", "NaN", "P001", "P9", "back_squat", "Back Squat", "squat", "jump+squat", "jump", "maximal_strength", "none", "height", "low", "yes", "straight", "on_the_minute", "contrast",
        "power", "game", "off_season", "monday", "hard_sets", "sets", "restrictions", "off", "keep", "never", "own", "bar", "plate", "dumbbell", "rack", "weight room", "2026-03-02", "2026-03-03", "2027-01-01", "07:00", "7:30", "25:00",
        "Linebackers", "Linebackers+Receivers", "everything", "back_squat_1rm", "cmj_height", "lb", "+", "\u00a0", "x\u0001y", "9999999999999999999999",
    ];

    private static Gen<(string File, string Text, int Rows)> TrainingTables() =>
        from file in Gen.Elements(TrainingFiles)
        from separator in Gen.Elements(",", ";", "\t")
        from rows in Gen.ListOf(Gen.ArrayOf(Gen.Elements(TrainingCells), 13))
        select (file.File, string.Join(separator, file.Heads) + "\n" + string.Concat(rows.Select(r => string.Join(separator, r.Take(1 + r[12].Length % 13)) + "\n")), rows.Count(r => r.Take(1 + r[12].Length % 13).Any(c => !string.IsNullOrWhiteSpace(c))));

    [Property(MaxTest = 400, Replay = "(4711,31)")]
    public Property Read_AnyTrainingCells_CountsEveryRowOnce() => Prop.ForAll(TrainingTables().ToArbitrary(), drawn =>
    {
        using var season = new TemporarySeason().With($"training/{drawn.File}.csv", drawn.Text);

        var data = season.Read();

        Assert.Equal(drawn.Rows, data.Files.Single(f => f.Path.StartsWith("training", StringComparison.Ordinal)).Rows);
        Assert.NotEmpty(data.Training.Exercises.All);
    });

    [Property(MaxTest = 200, Replay = "(4711,23)")]
    public Property Read_AnyBytes_EndsInWords() => Prop.ForAll(Gen.ArrayOf(Gen.Choose(0, 255).Select(b => (byte)b)).Zip(Gen.Elements("testing/2026-03-02/lifts.csv", "testing/2026-03-02.xlsx", "availability.csv", "sessions.csv", "training/exercises.csv", "training/calendar.csv", "training/plan.csv")).ToArbitrary(), drawn =>
    {
        using var season = new TemporarySeason().With(drawn.Item2, drawn.Item1);

        season.Read();
    });

    [Property(MaxTest = 200, Replay = "(4711,29)")]
    public Property Read_DamagedWorkbook_EndsInWords()
    {
        var whole = TestWorkbook.Of(("lifts", [["athlete_id", "lift", "load_lb", "reps"], ["P001", "back_squat", 405.0, 3.0], ["P002", "back_squat", 385.0, "x"]]));
        return Prop.ForAll(Gen.Choose(0, whole.Length - 1).Zip(Gen.Choose(0, 255)).ToArbitrary(), drawn =>
        {
            var bytes = whole.ToArray();
            bytes[drawn.Item1] = (byte)drawn.Item2;
            using var season = new TemporarySeason().With("testing/2026-03-02.xlsx", bytes);

            season.Read();
        });
    }
}
