using System.Text;
using Analytics.Simulation.Commands;
using Analytics.Simulation.Frozen;
using Analytics.Simulation.Tests.Demo;

namespace Analytics.Simulation.Tests.Frozen;

public sealed class SeasonCutTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("season-cut-");

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public void Of_Tables_KeepsTheLinesOfTheAthletesAsTheyStand()
    {
        Write("season.json", "{}");
        Write("sessions.csv", "date,athlete_id\n");
        Write("truth/a.csv", "athlete_id\n");
        Write("testing/d/body.csv", "\uFEFFathlete_id;mass_lb\r\nTC01;1,5\r\nTC05;2\r\nTC02;3\r\n");
        Write("testing/d/contact.csv", "athlete_id,clip\nTC01,tc01-1\nTC01,tc01-2\n");
        Write("testing/d/clips/tc01-1.csv", "1");
        Write("testing/d/clips/tc01-2.csv", "2");
        var files = SeasonCut.Frozen.Of(folder.FullName);
        Assert.Equal(["season.json", "testing/d/body.csv", "testing/d/clips/tc01-1.csv", "testing/d/contact.csv"], files.Keys);
        Assert.Equal("\uFEFFathlete_id;mass_lb\r\nTC01;1,5\r\nTC02;3\r\n", Encoding.UTF8.GetString(files["testing/d/body.csv"]));
        Assert.Equal("athlete_id,clip\nTC01,tc01-1\n", Encoding.UTF8.GetString(files["testing/d/contact.csv"]));
    }

    // The committed workbook, read with a general spreadsheet reader.
    [Fact]
    public void Of_Workbook_KeepsTheRowsOfTheAthletes()
    {
        var bytes = File.ReadAllBytes(Path.Combine(RepositoryFiles.DemoFolder, "testing/2026-03-02.xlsx"));
        Directory.CreateDirectory(Path.Combine(folder.FullName, "testing"));
        File.WriteAllBytes(Path.Combine(folder.FullName, "testing/w.xlsx"), bytes);
        Assert.Equal(Rows(bytes).Where(r => r.Contains("|athlete_id|", StringComparison.Ordinal) || SeasonCut.Frozen.Athletes.Any(a => r.Contains($"|{a}|", StringComparison.Ordinal))),
            Rows(SeasonCut.Frozen.Of(folder.FullName)["testing/w.xlsx"]));
    }

    [Fact]
    public void Run_SeasonThatIsThere_IsNotWrittenOver()
    {
        Write("out/season/season.json", "{}");
        var failure = Assert.Throws<ArgumentException>(() => FrozenSeasonCommand.Run(new Arguments(["--from", RepositoryFiles.DemoFolder, "--out", Path.Combine(folder.FullName, "out")]), TextWriter.Null));
        Assert.Contains("It is frozen", failure.Message, StringComparison.Ordinal);
    }

    private void Write(string path, string text)
    {
        var file = Path.Combine(folder.FullName, path);
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllText(file, text, new UTF8Encoding(false));
    }

    private static List<string> Rows(byte[] workbook)
    {
        var rows = new List<string>();
        using var reader = SpreadsheetReader.Open(workbook);
        do
        {
            while (reader.Read())
                rows.Add($"{reader.Name}|" + string.Concat(Enumerable.Range(0, reader.FieldCount).Select(i => FormattableString.Invariant($"{reader.GetValue(i)}|"))));
        }
        while (reader.NextResult());
        return rows;
    }
}
