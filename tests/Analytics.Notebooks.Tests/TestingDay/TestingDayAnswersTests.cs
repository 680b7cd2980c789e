using Analytics.Notebooks.TestingDay;
using Analytics.Season;
using static Analytics.Notebooks.Tests.TestingDay.ReportSeasons;

namespace Analytics.Notebooks.Tests.TestingDay;

/// <summary>The answers at the top of the report.</summary>
public sealed class TestingDayAnswersTests
{
    [Fact]
    public void Answers_EveryoneMuchStronger_SaysSquatImprovedAndNamesEveryGain()
    {
        using var season = ThreeDays(squatGain: 25);
        var report = TestingDayReport.Open(season.Folder, since: "2026-01-15");
        var text = report.Answers().ToText();
        Assert.Contains("Squat improved", text, StringComparison.Ordinal);
        Assert.Contains("12 players clearly gained", text, StringComparison.Ordinal);
        Assert.Contains("12 better, 0 worse", text, StringComparison.Ordinal);
        Assert.Equal(WrittenSeason.Players, report.WhoChanged("back_squat_1rm").ToText().Split("clear gain").Length - 1);
    }

    [Fact]
    public void Answers_OneFlagAmongMany_SaysThatChanceCouldGiveAsMany()
    {
        using var season = ThreeDays();
        var path = Path.Combine(season.Folder, "testing", "2026-03-02", "lifts.csv");
        File.WriteAllText(path, File.ReadAllText(path).Replace("P05;back_squat;1;17", "P05;back_squat;1;21", StringComparison.Ordinal));
        var text = TestingDayReport.Open(season.Folder, since: "2026-01-15").Answers().ToText();
        Assert.Contains("One player clearly gained, none clearly lost; chance alone could give as many.", text, StringComparison.Ordinal);
        using var all = ThreeDays(squatGain: 25);
        Assert.DoesNotContain("chance alone could", TestingDayReport.Open(all.Folder, since: "2026-01-15").Answers().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Answers_EveryoneMuchWeaker_SaysSquatGotWorse()
    {
        using var season = ThreeDays(squatGain: -25);
        var text = TestingDayReport.Open(season.Folder, since: "2026-01-15").Answers().ToText();
        Assert.Contains("quat got worse", text, StringComparison.Ordinal);
        Assert.Contains("12 clearly lost", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Answers_NothingMoved_ClaimsNothing()
    {
        using var season = ThreeDays(squatGain: 0);
        var text = TestingDayReport.Open(season.Folder, since: "2026-01-15").Answers().ToText();
        Assert.DoesNotContain("improved", text, StringComparison.Ordinal);
        Assert.DoesNotContain("got worse", text, StringComparison.Ordinal);
        Assert.Contains("No player clearly gained or lost", text, StringComparison.Ordinal);
    }

    // Four comparisons at 5 %: 0.2 expected, and 1 at most in 97.5 % of such days (R: qbinom(.975, 4, .05)). "About 0" would promise too much.
    [Fact]
    public void Answers_FewComparisons_ChanceIsNotRoundedToNothing()
    {
        using var season = new WrittenSeason().Squad(retests: "[]").Day("2026-01-12").Day("2026-03-02");
        season.Write("testing/2026-03-02/lifts.csv", "athlete_id;lift;set;load_kg;reps\nP01;back_squat;1;150;1\nP02;back_squat;1;160;1\nP03;back_squat;1;160;1\nP04;back_squat;1;160;1\n");
        foreach (var file in new[] { "jumps.csv", "sprints.csv" }) File.Delete(Path.Combine(season.Folder, "testing", "2026-03-02", file));
        var text = TestingDayReport.Open(season.Folder).Answers().ToText();
        Assert.Contains("in 4 comparisons (4 players × 1 measure); had nobody changed, chance alone would give at most 0.2 on average, seldom more than 1.", text, StringComparison.Ordinal);
    }

    // The mean interval leaves out 0 while 6 kg would matter: that the squat moved is known, that it matters is not.
    [Fact]
    public void Answers_MeanMovedButPerhapsTooLittle_DoesNotSayNoEvidence()
    {
        using var season = ThreeDays(squatGain: 5);
        var settings = File.ReadAllText(Path.Combine(season.Folder, "season.json"));
        season.Write("season.json", settings.Replace("\"retests\"", "\"worthwhile\":{\"back_squat_1rm\":6},\"retests\"", StringComparison.Ordinal));
        var text = TestingDayReport.Open(season.Folder, since: "2026-01-15").Answers().ToText();
        Assert.Contains("Squat is better, perhaps too little to matter", text, StringComparison.Ordinal);
        Assert.DoesNotContain("no evidence yet on squat", text, StringComparison.Ordinal);
    }

    // One player of twelve far behind in each of three qualities: all three lead, and none is rounded away.
    [Fact]
    public void Answers_ThreeNeedsTie_NamesAllThree()
    {
        using var season = ThreeDays();
        foreach (var day in new[] { "2026-01-12", "2026-01-15", "2026-03-02" }) OnlyTenMetres(season, day);
        Replace(season, "lifts.csv", "P04;back_squat;1;", "90;1");
        Replace(season, "jumps.csv", "P09;countermovement;mat;1;", "30");
        Replace(season, "sprints.csv", "P10;1;electronic;standing_beam;", "2,30");
        var text = TestingDayReport.Open(season.Folder, since: "2026-01-15").Answers().ToText();
        Assert.Contains("maximal strength, explosive power and early acceleration lead with one player each", text, StringComparison.Ordinal);
        Assert.DoesNotContain("about 0 of", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Answers_TooFewQualities_SaysWhyAndNotThatNobodyIsBehind()
    {
        using var season = new WrittenSeason().Squad().Day("2026-01-12").Day("2026-01-15", wobble: 1);
        foreach (var day in new[] { "2026-01-12", "2026-01-15" }) File.Delete(Path.Combine(season.Folder, "testing", day, "sprints.csv"));
        var text = TestingDayReport.Open(season.Folder).Answers().ToText();
        Assert.Contains("Only 2 qualities can be compared, 3 are needed (all 12 tested)", text, StringComparison.Ordinal);
        Assert.DoesNotContain("is behind his group", text, StringComparison.Ordinal);
    }

    // A published error is known for each of these tests, so "no known error" would be false for a squad of one.
    [Fact]
    public void Answers_OnePlayerOnly_JudgesHimAndClaimsNoSquadMean()
    {
        using var season = new WrittenSeason().Squad(retests: "[]").Day("2026-01-12").Day("2026-03-02");
        OnlyOnePlayer(season);
        var report = TestingDayReport.Open(season.Folder);
        var text = report.Answers().ToText();
        Assert.Contains("Only one player did the same test on 12 January and today; a squad mean needs two.", text, StringComparison.Ordinal);
        Assert.Contains("no clear change in ", text, StringComparison.Ordinal);
        Assert.DoesNotContain("known error", text, StringComparison.Ordinal);
        Assert.Contains("1 of 1 player tested", report.Head().ToText(), StringComparison.Ordinal);
        Assert.Contains("Strength: 1 player\n", report.StrengthTable().ToText(), StringComparison.Ordinal);
        Assert.DoesNotContain("(1)", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Answers_LaterDayComparedWithNone_IsNotCalledTheFirst()
    {
        using var season = ThreeDays();
        var report = TestingDayReport.Open(season.Folder, since: "none");
        Assert.DoesNotContain("first testing day", report.Answers().ToText() + report.WhoChanged().ToText(), StringComparison.Ordinal);
        Assert.Contains("no comparison was asked for", report.Answers().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Answers_MostMovedOneWay_AsksAboutTheDay()
    {
        using var season = ThreeDays(squatGain: -25);
        Assert.Contains("Most players moved the same way in squat: rule out the day itself", TestingDayReport.Open(season.Folder, since: "2026-01-15").Answers().ToText(), StringComparison.Ordinal);
        using var still = ThreeDays();
        Assert.DoesNotContain("rule out the day", TestingDayReport.Open(still.Folder, since: "2026-01-15").Answers().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Answers_FirstDay_IsAStartingPoint()
    {
        using var season = new WrittenSeason().Squad().Day("2026-01-12");
        var report = TestingDayReport.Open(season.Folder);
        Assert.Contains("starting point", report.Answers().ToText(), StringComparison.Ordinal);
        Assert.Contains("nothing to compare with", report.WhoChanged().ToText(), StringComparison.Ordinal);
    }
}
