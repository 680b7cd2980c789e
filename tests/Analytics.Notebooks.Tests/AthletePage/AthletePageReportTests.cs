using Analytics.Notebooks.AthletePage;
using Analytics.Notebooks.Tests.TestingDay;
using Analytics.Season;
using static Analytics.Notebooks.Tests.TestingDay.ReportSeasons;

namespace Analytics.Notebooks.Tests.AthletePage;

public sealed class AthletePageReportTests
{
    [Fact]
    public void Head_NamesPlayerGroupAndDays()
    {
        using var season = ThreeDays();
        var text = Open(season, "P03").Head().ToText();
        Assert.StartsWith("Player P03\nAshby Moor Rams", text, StringComparison.Ordinal);
        Assert.Contains("PR, Front row", text, StringComparison.Ordinal);
        Assert.Contains("tested 2 March 2026, compared with 12 January", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Since_Previous_ComparesWithTheDayBefore()
    {
        using var season = ThreeDays();
        Assert.Contains("compared with 15 January", Open(season, "P03", since: "previous").Head().ToText(), StringComparison.Ordinal);
        Assert.DoesNotContain("compared", Open(season, "P03", since: "none").Head().ToText(), StringComparison.Ordinal);
    }

    // 30 kg at a retest error of a few kilograms.
    [Fact]
    public void Gain_BeyondTestError_IsCalledBetterForReal()
    {
        using var season = ThreeDays(squatGain: 30);
        var text = Open(season, "P03").Answers().ToText();
        Assert.Contains("Better for real: squat", text, StringComparison.Ordinal);
        Assert.Contains("chance alone would still call at most", text, StringComparison.Ordinal);
        Assert.Contains("clear gain", Open(season, "P03").YourChange().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Loss_BeyondTestError_IsSaidKindlyAndAsksAboutHealth()
    {
        using var season = ThreeDays(squatGain: -30);
        var page = Open(season, "P03");
        Assert.Contains("You are lower by more than test error: squat.", page.Answers().ToText(), StringComparison.Ordinal);
        Assert.Contains("Check health, sleep and the testing day first.", page.Answers().ToText(), StringComparison.Ordinal);
        Assert.Contains("check health, sleep and the testing day first", page.YourChange().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void NoChange_CannotTell()
    {
        using var season = ThreeDays();
        Assert.Contains("What changed: the tests cannot tell yet.", Open(season, "P05").Answers().ToText(), StringComparison.Ordinal);
    }

    // P01's squat is 154 to 156.5 kg on 2 March (singles): 75 % down to 2.5 kg.
    [Fact]
    public void Loads_OfAMeasuredSquat_StandInTableAndAnswer()
    {
        using var season = ThreeDays();
        Replace(season, "lifts.csv", "P01;back_squat;1;", "160;1");
        var page = Open(season, "P01");
        Assert.Contains("5\u00A0\u00D7\u00A05 at 120.0\u2009kg", page.NextLoads().ToText(), StringComparison.Ordinal);
        Assert.Contains("Squat 5\u00A0\u00D7\u00A05 at 120.0\u2009kg.", page.Answers().ToText(), StringComparison.Ordinal);
        Assert.Contains("Test again by 13 April.", page.Answers().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Loads_OfTwentyRepetitions_ComeFromTheLowerSideAndAreMarked()
    {
        using var season = ThreeDays();
        season.Append("testing/2026-03-02/lifts.csv", "P01;bench_press;1;100;20\n");
        var page = Open(season, "P01");
        var text = page.NextLoads().ToHtml().Replace('\u202F', '\u2009');
        Assert.Contains("~", text, StringComparison.Ordinal);
        Assert.Contains("lower side<small>estimated from 20 repetitions, more than 10", text, StringComparison.Ordinal);
        Assert.Contains("more than 10", page.HowToRead().ToText(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("injured")]
    [InlineData("ill")]
    [InlineData("absent")]
    public void Out_GivesNoLoads(string status)
    {
        using var season = ThreeDays();
        season.Write("availability.csv", $"athlete_id;from;to;status\nP01;2026-03-01;;{status}\n");
        var page = Open(season, "P01");
        Assert.DoesNotContain("at 1", page.NextLoads().ToText(), StringComparison.Ordinal);
        Assert.Contains("see medical staff first", page.NextLoads().ToText(), StringComparison.Ordinal);
        Assert.Contains("What to lift: see medical staff first.", page.Answers().ToText(), StringComparison.Ordinal);
        Assert.Contains("What to work on: getting well.", page.Answers().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Limited_GivesLoadsAndSaysWhoDecides()
    {
        using var season = ThreeDays();
        season.Write("availability.csv", "athlete_id;from;to;status\nP01;2026-03-01;;limited\n");
        var page = Open(season, "P01");
        Assert.Contains("medical staff say first which of these you may do", page.NextLoads().ToText(), StringComparison.Ordinal);
        Assert.Contains("5\u00A0\u00D7\u00A05 at", page.NextLoads().ToText(), StringComparison.Ordinal);
        Assert.Contains("You are listed as limited since 1 March", page.Answers().ToText(), StringComparison.Ordinal);
    }

    // Injured between the test and the day of the page: the test speaks of another body.
    [Fact]
    public void InjuredSinceTheTest_TestFirst()
    {
        using var season = ThreeDays();
        season.Write("availability.csv", "athlete_id;from;to;status\nP01;2026-01-20;2026-02-10;injured\n");
        season.Keep("testing/2026-03-02", l => !l.StartsWith("P01;back_squat", StringComparison.Ordinal));
        Assert.Contains("you were injured since this test", Open(season, "P01").NextLoads().ToText(), StringComparison.Ordinal);
    }

    // TC36 did squat, jump and sprint that day, in a group of four.
    [Fact]
    public void Need_GroupTooSmall_DoesNotAskForTestsThatWereDone()
    {
        var page = AthletePageReport.Open(Pages.Demo, "TC36");
        var text = page.Answers().ToText();
        Assert.Contains("can be compared, 3 are needed. The others are too few in your group, or too alike, to say more.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("What would help", text, StringComparison.Ordinal);
        Assert.Contains("Too few in your group did some tests; the whole squad stands there instead.", page.WhereYouStand().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void NeverTested_SaysTestFirstEverywhere()
    {
        using var season = ThreeDays();
        season.Append("athletes.csv", "P99;New Man;FL;Back row;185\n");
        var page = Open(season, "P99");
        var text = Pages.Text(page);
        Assert.Contains("not tested yet", text, StringComparison.Ordinal);
        Assert.Contains("What changed: no test yet.", text, StringComparison.Ordinal);
        Assert.Contains("What to work on: test first.", text, StringComparison.Ordinal);
        Assert.Contains("What to lift: test first.", text, StringComparison.Ordinal);
        Assert.All(Pages.Blocks(page), b => Assert.NotNull(b.ToHtml()));
    }

    [Fact]
    public void MissedToday_ShowsTheLatestTestsWithTheirDay()
    {
        using var season = ThreeDays().Keep("testing/2026-03-02", l => !l.StartsWith("P01", StringComparison.Ordinal));
        var page = Open(season, "P01");
        Assert.Contains("2 March 2026, last tested 15 January", page.Head().ToText(), StringComparison.Ordinal);
        Assert.Contains("Squat 1RM (15 January)", page.WhereYouStand().ToText(), StringComparison.Ordinal);
        Assert.Contains("6 weeks old", page.NextLoads().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Words_OfThePage_AreThoseOfTheLook()
    {
        foreach (var player in Pages.Demo.Athletes.Take(12))
        {
            var text = Pages.Text(AthletePageReport.Open(Pages.Demo, player.Id));
            foreach (var word in new[] { "significant", "likely beneficial", "elite", "at risk", "rank ", "percentile", "worst", "weakest" })
                Assert.DoesNotContain(word, text, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public void Names_ThatAreMarkup_AreEscaped()
    {
        using var season = new WrittenSeason().Squad(club: "<b>club", name: i => $"<img src=x onerror=alert({i})>").Day("2026-01-12").Day("2026-01-15", wobble: 1).Day("2026-03-02", wobble: 2);
        var html = Pages.Html(Open(season, "P02"));
        Assert.DoesNotContain("<img", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<b>club", html, StringComparison.Ordinal);
        Assert.Contains("&lt;img src=x onerror=alert(2)&gt;", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Figures_HaveNameNumbersAndNoScript()
    {
        var page = AthletePageReport.Open(Pages.Demo, "TC05");
        foreach (var html in new[] { page.WhereYouStand().ToHtml(), page.YourChange().ToHtml() })
        {
            Assert.Contains("<figure class=\"fig\" aria-labelledby=\"fig-", html, StringComparison.Ordinal);
            Assert.Contains("role=\"img\" aria-label=\"", html, StringComparison.Ordinal);
            Assert.DoesNotContain("<script", html, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Page_MadeTwice_IsTheSame() => Assert.Equal(Pages.Html(AthletePageReport.Open(Pages.Demo, "TC05")), Pages.Html(AthletePageReport.Open(Pages.Demo, "TC05")));

    [Theory]
    [InlineData("TC99", "latest", "first", 5, "none with this athlete_id")]
    [InlineData("TC01", "2026-05-05", "first", 5, "2026-04-13")]
    [InlineData("TC01", "latest", "soon", 5, "\"previous\"")]
    [InlineData("TC01", "latest", "2026-06-08", 5, "since is '2026-06-08'")]
    [InlineData("TC01", "latest", "first", 0, "above 0 and at most 50 lb")]
    [InlineData("TC01", "latest", "first", double.NaN, "above 0 and at most 50 lb")]
    public void Settings_ThatMakeNoSense_SayWhatToDoAndNameNobodyElse(string athlete, string day, string since, double step, string said)
    {
        var error = Assert.Throws<SeasonException>(() => AthletePageReport.Open(Pages.Demo, athlete, day, since, step));
        Assert.Contains(said, error.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(Pages.Demo.Athletes.Where(a => a.Id != athlete), a => Pages.Holds(error.Message, a.Id) || error.Message.Contains(a.Name, StringComparison.Ordinal));
    }

    [Fact]
    public void First_IsTheFirstOfTheListWithAResult()
    {
        using var season = ThreeDays().Keep("testing", l => !l.StartsWith("P01", StringComparison.Ordinal));
        Assert.StartsWith("Player P02", AthletePageReport.Open(SeasonReader.Read(season.Folder), barStep: 2.5).Head().ToText(), StringComparison.Ordinal);
    }

    private static AthletePageReport Open(WrittenSeason season, string athlete, string since = "first") => AthletePageReport.Open(SeasonReader.Read(season.Folder), athlete, since: since, barStep: 2.5);
}
