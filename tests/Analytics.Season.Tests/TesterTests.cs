using Analytics.Metrics.Trials;
using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests;

/// <summary>Who took a test: a column of the testing sheets that no row needs.</summary>
public sealed class TesterTests
{
    private const string Day = "testing/2026-03-02/";

    [Fact]
    public void Read_EveryTableButContact_TakesTheTester()
    {
        using var season = new TemporarySeason()
            .With(Day + "body.csv", "athlete_id,mass_lb,tester\nP001,225,a\n")
            .With(Day + "lifts.csv", "athlete_id,lift,load_lb,reps,tester\nP001,back_squat,405,3,b\n")
            .With(Day + "jumps.csv", "athlete_id,jump,height_in,tester\nP001,squat,25,c\n")
            .With(Day + "sprints.csv", "athlete_id,t_10yd_s,Tester\nP001,1.62,d\n")
            .With(Day + "agility.csv", "athlete_id,test,time_s,tester\nP001,505,2.3,e\n")
            .With(Day + "throws.csv", "tester,athlete_id,throw,ball_kg,distance_m\nf,P001,rotational,4,9.6\n")
            .With(Day + "stairs.csv", "athlete_id,rise_cm,time_s,tester\nP001,104.4,0.55,g\n")
            .With(Day + "contact.csv", "athlete_id,clip,rate_hz,first_movement_frame,contact_frame,tester\nP001,x,240,12,115,h\n");

        var data = season.Read();

        Assert.Empty(data.HeldBack);
        Assert.Equal(["a", "b", "c", "d", "e", "f", "g"], data.Days[0].Athletes[0].Trials.Select(t => t.Tester).OfType<string>().Order(StringComparer.Ordinal));
        Assert.Null(Assert.Single(data.Days[0].Athletes[0].Of<ContactTrial>()).Tester);
        Assert.Contains(data.Notes, n => n.File == Day + "contact.csv" && n.Text == "The column 'tester' is not known and was not read.");
    }

    [Theory]
    [InlineData("KB", "KB")]
    [InlineData("  Kay   Bee\u00a0", "Kay Bee")]
    [InlineData("\"Kay\nBee\"", "Kay Bee")]
    [InlineData("7", "7")]
    [InlineData("Øyvin", "Øyvin")]
    [InlineData("=HYPERLINK(1)", "=HYPERLINK(1)")]
    [InlineData("abcdefghij abcdefghij abcdefghij abcdefg", "abcdefghij abcdefghij abcdefghij abcdefg")]
    [InlineData("", null)]
    [InlineData("   ", null)]
    public void Read_Cell_IsTidiedAndEmptyIsNotNoted(string cell, string? tester)
    {
        var data = Body(cell);

        Assert.Equal(tester, data.Days[0].Athletes[0].Trials[0].Tester);
        Assert.Empty(data.Notes);
    }

    [Theory]
    [InlineData("abcdefghij abcdefghij abcdefghij abcdefgh", "it has 41 characters, and at most 40 are allowed")]
    [InlineData("-", "it holds no letter or figure")]
    [InlineData("?!", "it holds no letter or figure")]
    [InlineData("K\u0002B", "it holds control characters")]
    [InlineData("K\u001bB", "it holds control characters")]
    public void Read_CellThatIsNoTester_KeepsTheRowWithRemark(string cell, string why)
    {
        var data = Body(cell);

        // Four rows of athletes.csv, and this one.
        Assert.Equal(5, data.RowsKept);
        Assert.Empty(data.HeldBack);
        Assert.Null(data.Days[0].Athletes[0].Trials[0].Tester);
        var note = Assert.Single(data.Notes);
        Assert.Equal(Day + "body.csv", note.File);
        Assert.StartsWith("Line 2 has the tester '", note.Text, StringComparison.Ordinal);
        Assert.EndsWith($"', which was not taken: {why}. The rest of the row was read as usual. Write initials, a number or a short word, or leave the cell empty.", note.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(note.Text, char.IsControl);
        Assert.Equal(0, SeasonCheckText.ExitCode(data));
    }

    [Fact]
    public void Read_LongCellInManyRows_IsRemarkedOnceAndShortened()
    {
        var cell = new string('x', 10_000_000);
        using var season = new TemporarySeason().With(Day + "body.csv", $"athlete_id,mass_lb,tester\nP001,225,KB\nP002,231,{cell}\nP003,305,{cell}\n");

        var note = Assert.Single(season.Read().Notes);

        Assert.StartsWith("Line 3 has the tester 'xxx", note.Text, StringComparison.Ordinal);
        Assert.InRange(note.Text.Length, 100, 400);
    }

    [Fact]
    public void Read_Workbook_TakesWordsAndNumbers()
    {
        using var season = new TemporarySeason().With("testing/2026-03-02.xlsx", TestWorkbook.Of(("body", [["athlete_id", "mass_lb", "tester"], ["P001", 225.0, " K  B"], ["P002", 231.0, 7.0], ["P003", 305.0, null]])));

        Assert.Equal(["K B", "7", null], season.Read().Days[0].Athletes.Select(a => a.Trials[0].Tester));
    }

    [Fact]
    public void Read_SameResultTwiceByTwoTesters_IsTheSameResult()
    {
        using var season = new TemporarySeason().With(Day + "throws.csv", "athlete_id,throw,attempt,ball_kg,distance_m,tester\nP001,rotational,1,4,9.6,KB\nP001,rotational,1,4,9.6,RM\n");

        Assert.Equal("The same result already stands in line 2.", Assert.Single(season.Read().HeldBack).Reason);
    }

    private static SeasonData Body(string cell)
    {
        using var season = new TemporarySeason().With(Day + "body.csv", $"athlete_id,mass_lb,tester\nP001,225,{cell}\n");
        return season.Read();
    }
}
