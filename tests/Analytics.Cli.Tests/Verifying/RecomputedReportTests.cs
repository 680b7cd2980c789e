namespace Analytics.Cli.Tests.Verifying;

/// <summary>A report recomputed from a season.</summary>
public sealed class RecomputedReportTests(DemoReport report) : IClassFixture<DemoReport>
{
    [Fact]
    public async Task Verify_SameSeasonInAnotherPlace_SaysTheSame()
    {
        var heard = await report.VerifyAgainstAsync(report.SeasonCopy("moved"), report.Text);
        Assert.Equal(0, report.Made);
        Assert.Equal("same inputs, same numbers", heard.LastLine);
        Assert.Equal(0, heard.ExitCode);
    }

    [Fact]
    public async Task Verify_OneDigitOfOneFile_NamesTheFileAndTheNumbersThatDiffer()
    {
        var season = report.SeasonCopy("edited");
        var lifts = Path.Combine(season, "testing", DemoReport.Day, "lifts.csv");
        await File.WriteAllTextAsync(lifts, (await File.ReadAllTextAsync(lifts)).Replace("TC01;back_squat;1;420;1;", "TC01;back_squat;1;425;1;", StringComparison.Ordinal));
        var heard = await report.VerifyAgainstAsync(season, report.Text);
        Assert.Equal(2, heard.ExitCode);
        Assert.StartsWith($"inputs changed: testing/{DemoReport.Day}/lifts.csv; ", heard.LastLine, StringComparison.Ordinal);
        Assert.Contains("File: as it was made.", heard.Out, StringComparison.Ordinal);
        Assert.Contains("table 'Strength', row 'Alden Brackwater OT', column 'Squat 1RM lb': report says '420', recomputed '425", heard.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Verify_FilesGoneAndAdded_AreNamed()
    {
        var season = report.SeasonCopy("other");
        File.Delete(Path.Combine(season, "testing", "2026-06-08", "throws.csv"));
        File.Copy(Path.Combine(season, "testing", DemoReport.Day, "lifts.csv"), Path.Combine(Directory.CreateDirectory(Path.Combine(season, "testing", "2026-07-20")).FullName, "lifts.csv"));
        var heard = await report.VerifyAgainstAsync(season, report.Text);
        Assert.Equal(2, heard.ExitCode);
        Assert.Contains("inputs changed: testing/2026-06-08/throws.csv (missing), testing/2026-07-20/lifts.csv (new)", heard.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Verify_ProofChangedWithThePage_IsFoundByTheRecomputation()
    {
        var forged = ForgedProof.Consistent(report.Text, "<td>420</td><td>1.41</td>", "<td>430</td><td>1.41</td>");
        var heard = await report.VerifyAgainstAsync(DemoReport.Season, forged);
        Assert.Contains("File: as it was made.", heard.Out, StringComparison.Ordinal);
        Assert.Matches(@"Inputs: \d+ files, all as they were\.", heard.Out);
        Assert.StartsWith("numbers differ: 1 place, first table 'Strength', row 'Alden Brackwater OT', column 'Squat 1RM lb'", heard.LastLine, StringComparison.Ordinal);
        Assert.Equal(2, heard.ExitCode);
    }

    [Fact]
    public async Task Verify_SeasonThatIsNone_SaysWhichFilesAreGone()
    {
        using var empty = new TempFolder();
        var heard = await report.VerifyAgainstAsync(empty.Path, report.Text);
        Assert.Equal(2, heard.ExitCode);
        Assert.Contains("The notebook stopped at cell 2", heard.Out, StringComparison.Ordinal);
        Assert.Contains("athletes.csv (missing)", heard.Out, StringComparison.Ordinal);
        Assert.EndsWith("the numbers could not be recomputed", heard.Out.TrimEnd(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Verify_AnotherNotebook_IsSaidAndTheNumbersDecide()
    {
        using var folder = new TempFolder();
        var other = folder.File("testing-day.ipynb");
        await File.WriteAllTextAsync(other, (await File.ReadAllTextAsync(DemoReport.Notebook)).Replace("First the pictures", "At first the pictures", StringComparison.Ordinal));
        var heard = await report.VerifyAsync(report.Text, "--season", DemoReport.Season, "--notebook", other);
        Assert.Contains("is not the one the report was made with", heard.Out, StringComparison.Ordinal);
        Assert.Equal("same inputs, same numbers", heard.LastLine);
        Assert.Equal(0, heard.ExitCode);
    }

    [Fact]
    public async Task Verify_NoNotebookAtHand_AsksForIt()
    {
        var heard = await report.VerifyAsync(report.Text, "--season", DemoReport.Season);
        Assert.Equal(1, heard.ExitCode);
        Assert.Contains("--notebook", heard.Error, StringComparison.Ordinal);
    }
}
