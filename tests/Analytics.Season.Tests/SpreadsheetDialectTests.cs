using System.Text;
using Analytics.Metrics.Trials;
using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests;

/// <summary>The same two sets, written in every way a spreadsheet may write them.</summary>
public sealed class SpreadsheetDialectTests
{
    private const string Lifts = "testing/2026-03-02/lifts.csv";
    private const string Plain = "athlete_id,lift,set,load_lb,reps\nP001,back_squat,1,402.5,3\nP002,bench_press,1,1100,1\n";

    public static TheoryData<string, string> Texts => new()
    {
        { "comma", Plain },
        { "semicolon", Plain.Replace(',', ';') },
        { "tab", Plain.Replace(',', '\t') },
        { "semicolon, decimal comma", Plain.Replace(',', ';').Replace('.', ',') },
        { "tab, decimal comma", Plain.Replace(',', '\t').Replace('.', ',') },
        { "Windows line ends", Plain.Replace("\n", "\r\n", StringComparison.Ordinal) },
        { "old line ends", Plain.Replace('\n', '\r') },
        { "no last line end", Plain.TrimEnd('\n') },
        { "separator named", "sep=;\n" + Plain.Replace(',', ';') },
        { "all quoted", string.Join('\n', Plain.TrimEnd('\n').Split('\n').Select(l => "\"" + l.Replace(",", "\",\"", StringComparison.Ordinal) + "\"")) },
        { "quoted decimal comma", Plain.Replace("402.5", "\"402,5\"", StringComparison.Ordinal) },
        { "outer spaces", Plain.Replace(",", " ,  ", StringComparison.Ordinal) },
        { "hard spaces", Plain.Replace(",back_squat,", ",\u00a0back_squat\u00a0,", StringComparison.Ordinal) },
        { "empty columns at the end", Plain.Replace("\n", ",,,\n", StringComparison.Ordinal) },
        { "empty rows at the end", Plain + ",,,,\n\n,,,,\n" },
        { "empty rows between", Plain.Replace("\nP002", "\n,,,,\n\n\nP002", StringComparison.Ordinal) },
        { "empty rows before", "\n\n" + Plain },
        { "head in capitals with brackets", Plain.Replace("load_lb", "Load (LB)", StringComparison.Ordinal).Replace("athlete_id", "Athlete ID", StringComparison.Ordinal) },
        { "words in other forms", Plain.Replace("back_squat", "Back-Squat", StringComparison.Ordinal).Replace("bench_press", "BENCH PRESS", StringComparison.Ordinal) },
        { "columns in another order", "reps,load_lb,set,lift,athlete_id\n3,402.5,1,back_squat,P001\n1,1100,1,bench_press,P002\n" },
        { "identifiers in lower case", Plain.Replace('P', 'p').Replace("bench_Press", "bench_press", StringComparison.Ordinal) },
        { "exponent", Plain.Replace("1100", "1.1e3", StringComparison.Ordinal) },
        { "plus sign", Plain.Replace("402.5", "+402.50", StringComparison.Ordinal) },
        { "grouped and decimal", Plain.Replace(',', ';').Replace("1100", "1,100.0", StringComparison.Ordinal) },
        { "grouped with points", Plain.Replace(',', ';').Replace("1100", "1.100,0", StringComparison.Ordinal) },
        { "grouped with space", Plain.Replace("1100", "1 100", StringComparison.Ordinal) },
    };

    [Theory]
    [MemberData(nameof(Texts))]
    public void Read_AnyDialect_GivesTheSameSets(string what, string text)
    {
        // 1100 lb is more than anyone has benched; a lift without own limits carries the check.
        using var season = new TemporarySeason().With(Lifts, text.Replace("bench_press", "trap_bar_deadlift", StringComparison.Ordinal).Replace("BENCH PRESS", "TRAP BAR DEADLIFT", StringComparison.Ordinal));

        var data = season.Read();

        Assert.NotEmpty(what);
        Assert.Empty(data.HeldBack);
        var sets = data.Days.Single().Athletes.SelectMany(a => a.Of<LiftSet>()).ToList();
        Assert.Equal(["P001", "P002"], sets.Select(s => s.AthleteId));
        Assert.Equal(["back_squat", "trap_bar_deadlift"], sets.Select(s => s.Lift));
        Assert.Equal([402.5, 1100], sets.Select(s => Math.Round(s.Load.Pounds, 9)));
        Assert.Equal([3, 1], sets.Select(s => s.Repetitions));
    }

    public static TheoryData<string, Encoding, bool> Encodings => new()
    {
        { "UTF-8", new UTF8Encoding(false), false },
        { "UTF-8 with mark", new UTF8Encoding(true), false },
        { "UTF-16 little", new UnicodeEncoding(false, true), false },
        { "UTF-16 big", new UnicodeEncoding(true, true), false },
        { "UTF-32", new UTF32Encoding(false, true), false },
        { "Windows-1252", CodePagesEncodingProvider.Instance.GetEncoding(1252)!, true },
    };

    [Theory]
    [MemberData(nameof(Encodings))]
    public void Read_AnyEncoding_KeepsAccents(string what, Encoding encoding, bool remarked)
    {
        using var season = new TemporarySeason().With("athletes.csv", "athlete_id,name,position,group\nP001,Zoë Núñez,LB,Linebackers\n", encoding);

        var data = season.Read();

        Assert.NotEmpty(what);
        Assert.Equal("Zoë Núñez", Assert.Single(data.Athletes).Name);
        Assert.Equal(remarked, data.Notes.Any(n => n.Text.Contains("Windows-1252", StringComparison.Ordinal)));
    }

    [Fact]
    public void Read_QuotedFieldWithLineBreakAndSeparators_IsOneCell()
    {
        using var season = new TemporarySeason().With("availability.csv", "athlete_id,from,to,status,note\nP001,2026-03-01,2026-03-09,ill,\"fever,\nback \"\"soon\"\"\"\nP002,2026-03-01,,limited,\n");

        var data = season.Read();

        Assert.Empty(data.HeldBack);
        Assert.Equal(2, data.Files.Single(f => f.Path == "availability.csv").Rows);
        Assert.Null(data.Athletes[1].Absences.Single().To);
    }

    [Fact]
    public void Read_HeldBackRowAfterQuotedLineBreak_NamesItsOwnLine()
    {
        using var season = new TemporarySeason().With("availability.csv", "athlete_id,from,to,status,note\nP001,2026-03-01,2026-03-09,ill,\"a\nb\nc\"\n\nP009,2026-03-01,,limited,\n");

        Assert.Equal(6, Assert.Single(season.Read().HeldBack).Line);
    }

    [Fact]
    public void Read_Workbook_GivesWhatTheTextFileGives()
    {
        using var season = new TemporarySeason().With("testing/2026-03-02.xlsx", TestWorkbook.Of(
            ("Lifts", [["athlete_id", "lift", "set", "load_lb", "reps"], ["P001", "back_squat", 1.0, 402.5, 3.0], [], ["P002", "trap bar deadlift", 1.0, "1100", 1.0, null]]),
            ("weather", [["sun"]])));

        var data = season.Read();

        Assert.Empty(data.HeldBack);
        var sets = data.Days.Single().Athletes.SelectMany(a => a.Of<LiftSet>()).ToList();
        Assert.Equal([402.5, 1100], sets.Select(s => Math.Round(s.Load.Pounds, 9)));
        Assert.Equal(new TrialSource("testing/2026-03-02.xlsx#Lifts", 4), sets[1].Source);
        Assert.Contains(data.Notes, n => n.File == "testing/2026-03-02.xlsx#weather");
    }

    [Theory]
    [InlineData("<c r=\"@\" t=\"e\"><v>#DIV/0!</v></c>", "#DIV/0!")]
    [InlineData("<c r=\"@\" t=\"e\"><f>A1/0</f><v>#N/A</v></c>", "#N/A")]
    [InlineData("<c r=\"@\"><f>SUM(A1)</f></c>", "#NOT CALCULATED")]
    [InlineData("<c r=\"@\" t=\"str\"><f>SUM(A1)</f><v></v></c>", "#NOT CALCULATED")]
    public void Read_WorkbookCellWithoutUsableResult_IsHeldBackNotEmpty(string cell, string shown)
    {
        using var season = new TemporarySeason().With("testing/2026-03-02.xlsx", TestWorkbook.Of(
            ("body", [["athlete_id", "mass_lb", "stature_in"], ["P001", 225.0, cell], ["P002", "<c r=\"@\"><f>200+31</f><v>231</v></c>", null]])));

        var data = season.Read();

        var held = Assert.Single(data.HeldBack);
        Assert.Equal((2, $"The spreadsheet could not work out this cell ({shown})."), (held.Line, held.Reason));
        Assert.Equal(231, Math.Round(Assert.Single(data.Days[0].Athletes).BodyMass!.Value.Pounds, 9));
    }

    [Theory]
    [InlineData("1,583", 1.583)]
    [InlineData("1,58", 1.58)]
    [InlineData("0,985", 0.985)]
    public void Read_OneComma_IsDecimalWhereThousandsAreImpossible(string cell, double seconds)
    {
        using var season = new TemporarySeason().With("testing/2026-03-02/sprints.csv", $"athlete_id;t_5yd_s\nP001;{cell}\n");

        Assert.Equal(seconds, season.Read().Days[0].Athletes[0].Of<SprintTrial>().Single().Splits[0].Time.Seconds);
    }

    [Fact]
    public void Read_WorkbookDates_AreRead()
    {
        // 46083 is 2 March 2026 in the 1900 date system (days since 1899-12-30).
        using var season = new TemporarySeason().With("availability.xlsx", TestWorkbook.Of(
            ("availability", [["athlete_id", "from", "to", "status"], ["P001", new DateOnly(2026, 3, 2), 46083.0, "injured"]])));

        var spell = Assert.Single(season.Read().Athletes[0].Absences);

        Assert.Equal((new DateOnly(2026, 3, 2), new DateOnly(2026, 3, 2)), (spell.From, spell.To));
    }
}
