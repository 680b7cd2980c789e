namespace Analytics.Cli.Tests.Verifying;

/// <summary>A report that was changed after it was made: found from the file alone, with the place.</summary>
public sealed class ChangedReportTests(DemoReport report) : IClassFixture<DemoReport>
{
    private const string FirstRow = "Alden Brackwater <small>OT</small></th><td>420</td>";

    [Fact]
    public async Task Verify_UntouchedWithoutSeason_IsAsItWasMadeButNotRecomputed()
    {
        var heard = await report.VerifyAsync(report.Text);
        Assert.Equal(2, heard.ExitCode);
        Assert.Contains("File: as it was made.", heard.Out, StringComparison.Ordinal);
        Assert.Contains("not recomputed", heard.LastLine, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Verify_DigitInATable_NamesTableRowAndColumn()
        => await AssertFoundAsync(report.With(FirstRow, FirstRow.Replace("420", "430", StringComparison.Ordinal)),
            "table 'Strength', row 'Alden Brackwater OT', column 'Squat 1RM lb': report says '430', it was made with '420'", "changed after it was made: 'Results by player'");

    [Fact]
    public async Task Verify_DigitLeftOut_IsFoundAsWell()
        => await AssertFoundAsync(report.With(FirstRow, FirstRow.Replace("420", "42", StringComparison.Ordinal)),
            "report says '42', it was made with '420'", "'Results by player'");

    [Fact]
    public async Task Verify_DigitInASentence_ShowsBothSentences()
        => await AssertFoundAsync(report.With("Squad mean: squat +12", "Squad mean: squat +22"),
            "text under 'Testing day, 13 April 2026'", "Testing day, 13 April 2026", "squat +22", "squat +12");

    [Fact]
    public async Task Verify_DigitInTheDataOfTheCharts_IsFound()
    {
        var at = report.Text.IndexOf("id=\"chart-data\">", StringComparison.Ordinal) + 200;
        await AssertFoundAsync(report.Text[..at] + (report.Text[at] == 'A' ? 'B' : 'A') + report.Text[(at + 1)..], "changed after it was made: the data of the charts");
    }

    [Theory]
    [InlineData("2026-04-13&quot;; since", "2026-04-14&quot;; since")]
    [InlineData("<dt>Notebook</dt><dd>testing-day.ipynb, SHA-256 ", "<dt>Notebook</dt><dd>testing-day.ipynb, SHA-256 0")]
    [InlineData("<!--/varies-->", "<b>99</b><!--/varies-->")]
    public async Task Verify_Foot_IsFound(string old, string other)
        => await AssertFoundAsync(report.With(old, other), "changed after it was made: the foot of the page");

    [Theory]
    [InlineData("<title>Testing day, 13", "<title>Testing day, 14", "the head of the page")]
    [InlineData("report.WhoChanged()", "report.WhoChanged(1)", "the code appendix")]
    [InlineData("event.key === \"Escape\"", "event.key !== \"Escape\"", "the script of the page")]
    [InlineData("id=\"chart-library\">1", "id=\"chart-library\">2", "the data of the charts")]
    [InlineData("<circle", "<circle ", "'Where each group stands'")]
    public async Task Verify_AnythingElse_IsFound(string old, string other, string place)
        => await AssertFoundAsync(report.With(old, other), "the report was changed after it was made: " + place);

    [Fact]
    public async Task Verify_TwoPlaces_NamesBoth()
        => await AssertFoundAsync(report.With(FirstRow, FirstRow.Replace("420", "4200", StringComparison.Ordinal)).Replace("Squad mean: squat +12", "Squad mean: squat +1", StringComparison.Ordinal),
            "'Testing day, 13 April 2026', 'Results by player'", "report says '4200'", "squat +1\u202Flb");

    [Fact]
    public async Task Verify_OtherLineEndsAndAByteOrderMark_AreNoChange()
    {
        var heard = await report.VerifyAsync('\uFEFF' + report.Text.Replace("\n", "\r\n", StringComparison.Ordinal));
        Assert.Contains("File: as it was made.", heard.Out, StringComparison.Ordinal);
    }

    private async Task AssertFoundAsync(string page, params string[] words)
    {
        var heard = await report.VerifyAsync(page);
        Assert.Equal(2, heard.ExitCode);
        Assert.StartsWith("the report was changed after it was made: ", heard.LastLine, StringComparison.Ordinal);
        Assert.All(words, w => Assert.Contains(w, heard.Out, StringComparison.Ordinal));
    }
}
