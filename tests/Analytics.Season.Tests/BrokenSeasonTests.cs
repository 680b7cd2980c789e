using System.Text;
using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests;

/// <summary>Season files as they break in real life, and worse: each must be told in plain words, and nothing may be lost.</summary>
public sealed class BrokenSeasonTests
{
    private const string Body = "testing/2026-03-02/body.csv";
    private const string Lifts = "testing/2026-03-02/lifts.csv";
    private const string Jumps = "testing/2026-03-02/jumps.csv";
    private const string Sprints = "testing/2026-03-02/sprints.csv";
    private const string Workbook = "testing/2026-03-02.xlsx";
    private const string Sessions = "sessions.csv";
    private const string Exercise = "date,athlete_id,focus,minutes,session_rpe,lift,sets,repetitions,load_lb\n";
    private const string Liftheads = "athlete_id,lift,set,load_lb,reps\n";

    /// <summary>File, its text, rows in it, rows held back, and what the first held-back entry must say (reason and remedy).</summary>
    public static TheoryData<string, string, string, int, int, string> BrokenText => new()
    {
        { "empty file", Body, "", 0, 0, "the file is empty|Save it again" },
        { "only blank lines", Body, "\n  \r\n\n", 0, 0, "no head line|column names" },
        { "head only of separators", Body, ",,,\n,,,\n", 0, 0, "no head line|column names" },
        { "binary", Body, "\u0001\0\0\u0002PNG\0", 0, 0, "binary data|CSV" },
        { "wrong separator", Body, "athlete_id|mass_lb\nP001|225\n", 0, 0, "separated by '|'|commas, semicolons or tabs" },
        { "space separated", Body, "athlete_id mass_lb\nP001 225\nP002 231\n", 2, 2, "athlete_id is missing; the head has: athlete_id mass_lb|first line" },
        { "no head", Body, "P001,225\nP002,231\n", 1, 1, "athlete_id is missing; the head has: P001, 225|first line is the head" },
        { "unit missing in head", Lifts, "athlete_id,lift,set,load,reps\nP001,back_squat,1,405,3\n", 1, 1, "'load' does not say its unit|load_lb, load_kg" },
        { "unit unknown in head", Lifts, "athlete_id,lift,set,load_st,reps\nP001,back_squat,1,28,3\n", 1, 1, "unit of the column 'load_st' is not known|load_lb, load_kg" },
        { "gate without unit", Sprints, "athlete_id,t_10,t_20yd_s\nP001,1.6,2.7\n", 1, 1, "'t_10' does not say its units|t_10yd_s, t_10m_s" },
        { "gate without time unit", Sprints, "athlete_id,t_10yd\nP001,1.6\n", 1, 1, "'t_10yd' does not say its units|t_10yd_s" },
        { "same gate twice", Sprints, "athlete_id,t_10yd_s,t_9.144m_s\nP001,1.6,1.6\n", 1, 1, "two columns for the same gate|Delete one" },
        { "column twice", Body, "athlete_id,mass_lb,Mass (lb)\nP001,225,225\n", 1, 1, "'Mass (lb)' twice (columns 2 and 3)|Delete or rename" },
        { "tester twice", Body, "athlete_id,mass_lb,tester,Tester\nP001,225,KB,RM\n", 1, 1, "'Tester' twice (columns 3 and 4)|Delete or rename" },
        { "needed column missing", Lifts, "athlete_id,lift,load_lb\nP001,back_squat,405\n", 1, 1, "column reps is missing|Add a column reps" },
        { "unclosed quote", Lifts, Liftheads + "P001,back_squat,1,405,3\nP002,\"back_squat,1,385,3\nP003,back_squat,1,455,2\nP004,back_squat,1,315,4\n", 4, 3, "never closed, so 3 lines|stray quote" },
        { "quoted line break in a number", Lifts, Liftheads + "P001,back_squat,1,\"40\n5\",3\n", 1, 1, "line breaks|stray quote" },
        { "quote opened and closed lines later", Lifts, Liftheads + "P001,\"back_squat,1,405,3\nP002,back_squat\",1,385,3\n", 1, 1, "line breaks|stray quotes" },
        { "10 MB cell", Lifts, Liftheads + "P001," + new string('x', 10_000_000) + ",1,405,3\n", 1, 1, "(10000000 characters)' is too long|short name" },
        { "10 MB number", Lifts, Liftheads + "P001,back_squat,1," + new string('9', 10_000_000) + ",3\n", 1, 1, "10000000 characters)' is not a finite number|Write" },
        { "NaN", Body, "athlete_id,mass_lb\nP001,NaN\n", 1, 1, "'NaN' is not a finite number|leave the cell empty" },
        { "infinity", Body, "athlete_id,mass_lb\nP001,-Infinity\n", 1, 1, "'-Infinity' is not a finite number|leave the cell empty" },
        { "1e999", Body, "athlete_id,mass_lb\nP001,1e999\n", 1, 1, "'1e999' is not a finite number|Write the number" },
        { "1e308", Body, "athlete_id,mass_lb\nP001,1e308\n", 1, 1, "1E+308 lb is outside the allowed 77.2 to 551 lb|Correct" },
        { "negative", Body, "athlete_id,mass_lb\nP001,-225\n", 1, 1, "-225 lb is outside the allowed 77.2 to 551 lb|Correct" },
        { "zero", Body, "athlete_id,mass_lb\nP001,0\n", 1, 1, "0 lb is outside the allowed 77.2 to 551 lb|Correct" },
        { "unit in the cell", Lifts, Liftheads + "P001,back_squat,1,405 lb,3\n", 1, 1, "'405 lb' is not a plain number|unit stands in the head" },
        { "letter for a digit", Lifts, Liftheads + "P001,back_squat,1,4O5,3\n", 1, 1, "'4O5' is not a plain number|number only" },
        { "dash for missing", Lifts, Liftheads + "P001,back_squat,1,-,3\n", 1, 1, "'-' is not a number|leave the cell empty" },
        { "spreadsheet error", Lifts, Liftheads + "P001,back_squat,1,#DIV/0!,3\n", 1, 1, "could not work out this cell (#DIV/0!)|formula" },
        { "repetitions not whole", Lifts, Liftheads + "P001,back_squat,1,405,2.5\n", 1, 1, "2.5 is not a whole number|whole number" },
        { "no repetitions", Lifts, Liftheads + "P001,back_squat,1,405,0\n", 1, 1, "0 is outside the allowed 1 to 100|Correct" },
        { "load impossible for the lift", Lifts, Liftheads + "P001,bench_press,1,1405,1\n", 1, 1, "for bench_press, 1405 lb is outside the allowed 4.41 to 881 lb|140.5 lb" },
        { "too many cells", Lifts, Liftheads + "P001,back_squat,1,4,05,3\n", 1, 1, "the row has 6 cells, the head has 5 columns|extra separator" },
        { "too few cells", Lifts, Liftheads + "P001,back_squat,1\n", 1, 1, "no load|Fill in the load" },
        { "value under no head", Body, "athlete_id,mass_lb,\nP001,225,x\n", 1, 1, "column 3 has a value but no head|head" },
        { "ambiguous thousands", Lifts, "athlete_id;lift;set;load_lb;reps\nP001;back_squat;1;1,250;3\n", 1, 1, "'1,250' may be 1.25 or 1250|without thousands mark" },
        { "unknown athlete", Body, "athlete_id,mass_lb\nP01,225\n", 1, 1, "'P01' is not in athletes.csv|P001 (Ada Stone)" },
        { "no athlete", Body, "athlete_id,mass_lb\n,225\n", 1, 1, "no athlete_id|Fill in" },
        { "name for identifier", Body, "athlete_id,mass_lb\nCal Reed,325\n", 1, 1, "'Cal Reed' is not in athletes.csv|P003 (Cal Reed)" },
        { "unknown word", Jumps, "athlete_id,jump,method,attempt,height_in\nP001,countermovement,laser,1,25\n", 1, 1, "method 'laser' is not known|mat, force_plate, reach, video, tape" },
        { "jump without result", Jumps, "athlete_id,jump,method,attempt,height_in\nP001,squat,mat,1,\n", 1, 1, "neither a height nor a flight time|Fill in" },
        { "long jump without distance", Jumps, "athlete_id,jump,method,attempt,height_in\nP001,standing_long,tape,1,25\n", 1, 1, "no distance|distance_in" },
        { "height and flight disagree", Jumps, "athlete_id,jump,method,attempt,height_in,flight_ms\nP001,squat,mat,1,25,420\n", 1, 1, "420 ms gives a height of 8.51 in, not 25|unit" },
        { "seconds as milliseconds", Jumps, "athlete_id,jump,method,attempt,flight_ms\nP001,squat,mat,1,0.62\n", 1, 1, "0.62 ms is outside the allowed 200 to 1050 ms; it looks like s|write 620" },
        { "milliseconds as seconds", Sprints, "athlete_id,t_10yd_s\nP001,1620\n", 1, 1, "looks like ms|1.62" },
        { "decimal point lost", Sprints, "athlete_id,t_10yd_s\nP001,162\n", 1, 1, "decimal point is missing|1.62" },
        { "split backwards", Sprints, "athlete_id,t_10yd_s,t_20yd_s\nP001,1.62,1.08\n", 1, 1, "goes backwards: 1.08 s at t_20yd_s, after 1.62 s at t_10yd_s|add them up" },
        { "faster than anyone", Sprints, "athlete_id,t_30yd_s,t_40yd_s\nP001,3.80,4.45\n", 1, 1, "14.1 m/s; allowed 1.5 to 12.5 m/s|yards or metres" },
        { "first gate too fast", Sprints, "athlete_id,t_10yd_s\nP001,0.9\n", 1, 1, "faster than anyone runs; allowed from 1.01 s for electronic, three-point start|between gates" },
        { "first gate too fast off a still start", Sprints, "athlete_id,start,t_5yd_s\nP001,first_movement,0.80\n", 1, 1, "faster than anyone runs; allowed from 0.87 s for electronic, start at first movement|between gates" },
        { "first gate too fast by hand", Sprints, "athlete_id,timing,t_10yd_s\nP001,hand,0.75\n", 1, 1, "faster than anyone runs; allowed from 0.80 s for hand, three-point start|between gates" },
        { "run without times", Sprints, "athlete_id,t_10yd_s,t_20yd_s\nP001,,\n", 1, 1, "no time at any gate|delete the row" },
        { "same attempt twice", Sprints, "athlete_id,attempt,t_10yd_s\nP001,1,1.62\nP001,1,1.62\n", 2, 1, "the same result already stands in line 2|Delete one" },
        { "attempt with two results", Sprints, "athlete_id,attempt,t_10yd_s\nP001,1,1.62\nP001,1,1.66\n", 2, 1, "attempt 1 already stands in line 2 with another result|Number the attempts" },
        { "weighed twice", Body, "athlete_id,mass_lb\nP001,225\nP001,229\n", 2, 1, "a body mass of this athlete and day already stands in line 2|Keep the right one" },
        { "two units disagree", Body, "athlete_id,mass_lb,mass_kg\nP001,225,95\n", 1, 1, "'mass_kg' and 'mass_lb' do not agree|Leave one" },
        { "rir against rpe", Lifts, "athlete_id,lift,load_lb,reps,rir,rpe\nP001,back_squat,405,3,4,10\n", 1, 1, "rpe 10 means 0 repetitions in reserve, but rir says 4|Leave one" },
        { "outside the season", "testing/2027-03-02/body.csv", "athlete_id,mass_lb\nP001,225\nP002,231\n", 2, 2, "2027-03-02 is outside the season, 2026-01-05 to 2026-07-31|season.json" },
        { "availability reversed", "availability.csv", "athlete_id,from,to,status\nP001,2026-03-20,2026-03-01,injured\n", 1, 1, "ends on 2026-03-01, before it begins on 2026-03-20|Swap" },
        { "availability not a date", "availability.csv", "athlete_id,from,to,status\nP001,02/03/2026,,injured\n", 1, 1, "'02/03/2026' is not a date|2026-03-02" },
        { "availability unknown status", "availability.csv", "athlete_id,from,to,status\nP001,2026-03-02,,hurt\n", 1, 1, "status 'hurt' is not known|injured, ill, absent, limited" },
        { "session before the season", "sessions.csv", "date,athlete_id,minutes\n2025-03-02,P001,60\n", 1, 1, "2025-03-02 is outside the season|season.json" },
        { "sets without repetitions", Sessions, Exercise + "2026-03-02,P001,power,60,7,back_squat,5,,315\n", 1, 1, "no number of repetitions in a set|Fill in" },
        { "lift without anything", Sessions, Exercise + "2026-03-02,P001,power,60,7,back_squat,,,\n", 1, 1, "no number of sets; also repetitions: there is no number of repetitions in a set|Fill in" },
        { "sets of no lift", Sessions, Exercise + "2026-03-02,P001,power,60,7,,5,5,315\n", 1, 1, "no lift|Fill in the lift" },
        { "exercise without load", Sessions, Exercise + "2026-03-02,P001,power,60,7,pull_up,5,5,\n", 1, 1, "no load|the added load, 0 for none" },
        { "exercise without load column", Sessions, "date,athlete_id,lift,sets,repetitions\n2026-03-02,P001,back_squat,5,5\n", 1, 1, "no load|the added load, 0 for none" },
        { "session load without unit", Sessions, "date,athlete_id,lift,sets,repetitions,load\n2026-03-02,P001,back_squat,5,5,315\n", 1, 1, "'load' does not say its unit|load_lb, load_kg" },
        { "load impossible in training", Sessions, Exercise + "2026-03-02,P001,power,60,7,bench_press,5,5,1405\n", 1, 1, "for bench_press, 1405 lb is outside the allowed 4.41 to 881 lb|140.5 lb" },
        { "sets and repetitions swapped with their product", Sessions, Exercise + "2026-03-02,P001,power,60,7,back_squat,25,25,315\n", 1, 1, "25 sets of 25 are 625 repetitions; at most 500|of one set" },
        { "sets not whole", Sessions, Exercise + "2026-03-02,P001,power,60,7,back_squat,4.5,5,315\n", 1, 1, "4.5 is not a whole number|whole number" },
        { "too many sets", Sessions, Exercise + "2026-03-02,P001,power,60,7,back_squat,60,5,315\n", 1, 1, "60 is outside the allowed 1 to 50|Correct" },
        { "rating off the scale", Sessions, Exercise + "2026-03-02,P001,power,60,11,,,,\n", 1, 1, "11 is outside the allowed 0 to 10|Correct" },
        { "minutes contradict", Sessions, Exercise + "2026-03-02,P001,power,60,7,back_squat,5,5,315\n2026-03-02,P001,Power,65,7,bench_press,5,5,225\n", 2, 1, "the same session has 60 minutes in line 2, here 65|second another focus" },
        { "ratings contradict", Sessions, Exercise + "2026-03-02,P001,power,60,7,,,,\n2026-03-02,P001,power,60,8,,,,\n", 2, 1, "the same session has a rating of 7 in line 2, here 8|second another focus" },
        { "session twice", Sessions, Exercise + "2026-03-02,P001,power,60,7,,,,\n2026-03-02,P001,power,60,7,,,,\n", 2, 1, "adds nothing to the session in line 2|second another focus" },
    };

    [Theory]
    [MemberData(nameof(BrokenText))]
    public void Read_BrokenText_SaysWhatWhereAndHowToMend(string what, string path, string text, int rows, int heldBack, string says)
    {
        Assert.NotEmpty(what);
        BrokenFile.IsTold(path, text, rows, heldBack, says);
    }

    public static TheoryData<string, Func<byte[]>, string> BrokenWorkbooks => new()
    {
        { "not a zip", () => Encoding.UTF8.GetBytes("athlete_id,mass_lb\nP001,225\n"), "named .xlsx but is no workbook|CSV" },
        { "old format or password", () => [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1, .. new byte[600]], "protected by a password|without a password" },
        { "cut off", () => TestWorkbook.Of(("body", [["athlete_id", "mass_lb"], ["P001", 225.0]]))[..400], "damaged|save it again" },
        { "zip bomb, high ratio", () => TestWorkbook.Zip(("xl/workbook.xml", new byte[64 * 1024 * 1024])), "more than 200 times its size|new workbook" },
        { "zip bomb, false size", () => FalseSize(TestWorkbook.Zip(("xl/workbook.xml", new byte[64 * 1024 * 1024]))), "workbook|workbook|spreadsheet" },
        { "too many parts", () => TestWorkbook.Zip([.. Enumerable.Range(0, 2500).Select(i => ($"xl/p{i}.xml", new byte[1]))]), "2500 parts; at most 2000|new workbook" },
        { "zip of something else", () => TestWorkbook.Zip(("readme.txt", [65])), "damaged|save it again" },
        { "entity bomb", () => TestWorkbook.Zip(("xl/workbook.xml", Encoding.UTF8.GetBytes("<!DOCTYPE a [<!ENTITY b \"b\"><!ENTITY c \"&b;&b;&b;\">]><workbook>&c;</workbook>"))), "damaged|save it again" },
        { "no sheet with a head", () => TestWorkbook.Of(("body", [])), "no sheet with a head line|first row" },
    };

    [Theory]
    [MemberData(nameof(BrokenWorkbooks))]
    public void Read_BrokenWorkbook_SaysWhatAndHowToMend(string what, Func<byte[]> bytes, string says)
    {
        using var season = new TemporarySeason().With(Workbook, bytes());

        var data = season.Read();

        Assert.NotEmpty(what);
        var held = Assert.Single(data.HeldBack);
        Assert.Equal((Workbook, 0, 0), (held.File, held.Line, held.Rows));
        var parts = says.Split('|');
        Assert.Contains(parts[0], held.Reason, StringComparison.Ordinal);
        Assert.Contains(parts[^1], held.Remedy, StringComparison.Ordinal);
        Assert.Equal(2, SeasonCheckText.ExitCode(data));
    }

    [Fact]
    public void Read_WorkbookNamedCsv_SaysSo()
    {
        using var season = new TemporarySeason().With(Body, TestWorkbook.Of(("body", [["athlete_id"]])));

        Assert.Contains("zip archive or workbook", Assert.Single(season.Read().HeldBack).Reason, StringComparison.Ordinal);
    }

    /// <summary>Writes a small unpacked size into every header of the archive.</summary>
    private static byte[] FalseSize(byte[] zip)
    {
        for (var i = 0; i < zip.Length - 46; i++)
        {
            if (zip.AsSpan(i, 4).SequenceEqual("PK\u0001\u0002"u8)) BitConverter.TryWriteBytes(zip.AsSpan(i + 24), 1000);
            if (zip.AsSpan(i, 4).SequenceEqual("PK\u0003\u0004"u8)) BitConverter.TryWriteBytes(zip.AsSpan(i + 22), 1000);
        }

        return zip;
    }
}
