using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tests.TestingDay;
using Analytics.Notebooks.WholeSeason;
using Analytics.Season;

namespace Analytics.Notebooks.Tests.WholeSeason;

/// <summary>The season report on a squad of twelve: what it claims, and what it does not.</summary>
public sealed class SeasonReportTests
{
    private static WrittenSeason ThreeDays(double squatGain = 0) => ReportSeasons.ThreeDays(squatGain);

    private static IEnumerable<Block> All(SeasonReport report) =>
    [
        report.Head(), report.Answers(), report.SquadChange(), report.Trends(), report.WhoChanged(), report.HowGainsDiffer(), report.Transfer(), report.Load(),
        report.Tests(), report.WhoTookPart(), report.HeldBack(), report.Methods(), report.Cautions(), report.Provenance(),
    ];

    [Fact]
    public void Answers_EveryoneMuchStronger_SaysSquatImprovedForSquadAndPlayers()
    {
        using var season = ThreeDays(squatGain: 25);
        var report = SeasonReport.Open(season.Folder);
        var text = report.Answers().ToText();
        Assert.Contains("Squat improved", text, StringComparison.Ordinal);
        Assert.Contains("12 players clearly gained in something, none clearly lost.", text, StringComparison.Ordinal);
        Assert.Contains("squat +25.4\u2009kg", text, StringComparison.Ordinal);
        Assert.Matches(@"Back squat 1RM\s+.*clear gain", report.SquadChange().ToText());
    }

    [Fact]
    public void Answers_OneLossAmongManyGains_SaysChanceCouldGiveIt()
    {
        using var season = ThreeDays(squatGain: 25);
        ReportSeasons.Replace(season, "lifts.csv", "P01;back_squat;1;", "60,0;1");
        var text = SeasonReport.Open(season.Folder).Answers().ToText();
        // 5 % of 48 comparisons are 2.4, half of them losses: 1.2, and there is one.
        Assert.Contains("11 players clearly gained in something, one clearly lost; chance alone could give as many losses.", text, StringComparison.Ordinal);
        Assert.Contains("12 clear changes in 48 comparisons (11 better, 1 worse; most gains in squat 11). Had nobody changed, chance alone would give at most 2.4 on average, half of them losses", text, StringComparison.Ordinal);
        Assert.Contains("Of 4 measures: keep\u00a01, cannot tell yet for\u00a03.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void SquadChange_NoRetestDays_ClaimsNothingAboutThem()
    {
        using var season = new WrittenSeason().Squad(retests: "[]").Day("2026-01-12").Day("2026-03-02", wobble: 2);
        var text = SeasonReport.Open(season.Folder).SquadChange().ToText();
        Assert.Contains("No retest days are set, so how far a day alone moves a mean is not known.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Between the retest days", text, StringComparison.Ordinal);
        using var retested = ThreeDays();
        Assert.Contains("Between the retest days", SeasonReport.Open(retested.Folder).SquadChange().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Answers_NothingMoved_ClaimsNothing()
    {
        using var season = ThreeDays();
        var text = SeasonReport.Open(season.Folder).Answers().ToText();
        Assert.DoesNotContain("improved", text, StringComparison.Ordinal);
        Assert.DoesNotContain("got worse", text, StringComparison.Ordinal);
        Assert.Contains("No player clearly gained or lost.", text, StringComparison.Ordinal);
        Assert.Contains("Did weight-room gains reach the field: no evidence either way.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Answers_OneDay_SaysItIsAStart()
    {
        using var season = new WrittenSeason().Squad(retests: "[]").Day("2026-01-12");
        var report = SeasonReport.Open(season.Folder);
        Assert.Contains("One testing day is a starting point, not yet a change.", report.Answers().ToText(), StringComparison.Ordinal);
        foreach (var block in All(report)) Assert.False(string.IsNullOrWhiteSpace(block.ToHtml()));
    }

    [Fact]
    public void Transfer_NoFieldTest_SaysWhatItTakes()
    {
        using var season = ThreeDays(25);
        foreach (var file in Directory.EnumerateFiles(season.Folder, "sprints.csv", SearchOption.AllDirectories)) File.Delete(file);
        Assert.Contains("it takes a weight-room measure and a field measure", SeasonReport.Open(season.Folder).Transfer().ToText(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-01-13", "latest", "from is '2026-01-13'; use \"first\" or one of these testing days: 2026-01-12, 2026-01-15, 2026-03-02.")]
    [InlineData("first", "June", "to is 'June'; use \"latest\" or one of these testing days: 2026-01-12, 2026-01-15, 2026-03-02.")]
    [InlineData("2026-03-02", "2026-01-12", "'from' is 2026-03-02 and 'to' is 2026-01-12; the first day cannot come after the last. Swap them.")]
    public void Open_DaysThatCannotBe_AreRefusedInWords(string from, string to, string message)
    {
        using var season = ThreeDays();
        Assert.Equal(message, Assert.Throws<SeasonException>(() => SeasonReport.Open(season.Folder, from: from, to: to)).Message);
    }

    [Fact]
    public void Open_AShorterSpan_CountsOnlyItsDays()
    {
        using var season = ThreeDays(25);
        var report = SeasonReport.Open(season.Folder, to: "2026-01-15");
        Assert.Contains("12 of 12 players tested on 2 days, 12 January to 15 January 2026", report.Head().ToText(), StringComparison.Ordinal);
        Assert.DoesNotContain("improved", report.Answers().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Head_TwoSeasons_NamesBothAndTheLabelsOfDaysTheirYears()
    {
        using var earlier = new WrittenSeason().Squad();
        earlier.Write("season.json", File.ReadAllText(Path.Combine(earlier.Folder, "season.json")).Replace("2026", "2025", StringComparison.Ordinal)).Day("2025-01-12").Day("2025-03-02", wobble: 1);
        using var season = ThreeDays(25);
        var joined = SeasonReport.Open(season.Folder, earlier.Folder);
        Assert.Contains("Season report, 2025 to 2026", joined.Head().ToText(), StringComparison.Ordinal);
        Assert.Contains(">12 Jan \u201925<", joined.Trends().ToHtml(), StringComparison.Ordinal);
        // The earlier season is left out, so it is not named.
        Assert.Contains("Season report, 2026", SeasonReport.Open(season.Folder, earlier.Folder, from: "2026-01-12").Head().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void WhoTookPart_OutAndMissing_AreCountedApart()
    {
        using var season = ThreeDays();
        season.Write("availability.csv", "athlete_id;from;to;status\nP03;2026-02-20;2026-03-10;injured\n");
        season.Keep("testing/2026-03-02", l => !l.StartsWith("P03", StringComparison.Ordinal) && !l.StartsWith("P07", StringComparison.Ordinal));

        var text = SeasonReport.Open(season.Folder).WhoTookPart().ToText();
        Assert.Matches(@"2 March 2026\s+10\s+12\s+1 injured\s+1", text);
        Assert.Matches(@"12 January 2026\s+12\s+12\s+\u2013\s+0", text);
    }

    [Fact]
    public void Load_SessionsWrittenDown_GivesWeekFiguresOfTheWorkedExample()
    {
        using var season = ThreeDays(25);
        // The week of strength-and-conditioning texts in AU, Monday to Sunday: 300, 450, rest, 600, 250, 700, rest.
        (string Date, int Minutes, int Rating)[] week = [("2026-02-02", 60, 5), ("2026-02-03", 90, 5), ("2026-02-05", 100, 6), ("2026-02-06", 50, 5), ("2026-02-07", 100, 7)];
        season.Write("sessions.csv", "date;athlete_id;focus;minutes;session_rpe;jump_contacts\n" + string.Concat(Enumerable.Range(1, 12).SelectMany(i => week.Select(w => $"{w.Date};{WrittenSeason.Id(i)};power;{w.Minutes};{w.Rating};20\n"))));
        var text = SeasonReport.Open(season.Folder).Load().ToText();
        // 2300 AU, monotony 1.20, strain 2762 with divisor n - 1: computed from the published definition [foster1998].
        Assert.Matches(@"Squad \(12 players\)\s+5\.0\s+100\s+2300\s+1\.20\s+2762\s+100", text);
        Assert.Contains("predict no injury", text, StringComparison.Ordinal);
        Assert.Contains("counts as the player's mean one where at least 80", text, StringComparison.Ordinal);
    }

    // What is in no mean is said: a session without a rating, and those of before the first testing day.
    [Fact]
    public void Load_SessionsUnratedOrOutsideTheDays_AreCounted()
    {
        using var season = ThreeDays(25);
        season.Write("sessions.csv", "date;athlete_id;focus;minutes;session_rpe;jump_contacts\n"
            + WrittenSeason.Rows(i => $"2026-01-05;{WrittenSeason.Id(i)};power;60;5;20") + WrittenSeason.Rows(i => $"2026-02-02;{WrittenSeason.Id(i)};power;60;{(i == 1 ? "" : "5")};20"));
        var load = SeasonReport.Open(season.Folder).Load();
        Assert.Contains("12 of the season's 24 sessions; the others lie outside these days", load.ToText(), StringComparison.Ordinal);
        Assert.Contains("mean of the players, 11 of 12 weeks of players", load.ToHtml(), StringComparison.Ordinal);
        Assert.Contains("no error of a rating, a count or a sheet is known", load.ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void HeldBack_ManyRemarks_SaysHowManyMoreThereAre()
    {
        using var season = ThreeDays();
        for (var i = 0; i < 203; i++) season.Write($"note-{i:000}.md", "x");
        Assert.Contains("And 3 more; the command check lists all.", SeasonReport.Open(season.Folder).HeldBack().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Load_NoSessions_SaysWhatToAdd()
    {
        using var season = ThreeDays();
        Assert.Contains("Add sessions.csv", SeasonReport.Open(season.Folder).Load().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Tests_WithOwnRetest_StateErrorAndAdvice()
    {
        using var season = ThreeDays();
        var text = SeasonReport.Open(season.Folder).Tests().ToText();
        Assert.Matches(@"Back squat 1RM\s+keep\b", text);
        // The change that matters is a share of a spread, the change a test day sees a multiple of the typical error: both stand with their doubt.
        Assert.Contains("1.5\u2009kg ((0.3 to 2.1))", text, StringComparison.Ordinal);
        Assert.Contains("6.8\u2009kg ((4.8 to 11.5))", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" 0.00\u2009s", text, StringComparison.Ordinal);
        Assert.Contains("12 athletes of this squad tested on retest days", SeasonReport.Open(season.Folder).Tests().ToHtml(), StringComparison.Ordinal);
    }

    // A retest alone shows what a test is worth, before anybody has changed.
    [Fact]
    public void Tests_OfARetestOnly_AreJudged()
    {
        using var season = new WrittenSeason().Squad().Day("2026-01-12").Day("2026-01-15", wobble: 1);
        var report = SeasonReport.Open(season.Folder);
        Assert.Matches(@"Back squat 1RM\s+keep\b", report.Tests().ToText());
        Assert.Contains("measures", report.Answers().ToText(), StringComparison.Ordinal);
    }

    // Who joined later was not missing before, and who left is not missing after.
    [Fact]
    public void WhoTookPart_JoinedSeasons_CountThoseWhoWereThere()
    {
        using var now = ReportSeasons.ThreeDays();
        using var before = new WrittenSeason().Squad(retests: "[]").Day("2025-01-13").Day("2025-02-10", wobble: 1);
        var settings = Path.Combine(before.Folder, "season.json");
        File.WriteAllText(settings, File.ReadAllText(settings).Replace("2026", "2025", StringComparison.Ordinal));
        before.Keep("", l => !l.StartsWith("P12", StringComparison.Ordinal));
        now.Keep("", l => !l.StartsWith("P01", StringComparison.Ordinal));
        var text = SeasonReport.Open(now.Folder, before.Folder).WhoTookPart().ToText();
        // P12 comes in 2026, P01 left after 2025.
        Assert.Matches(@"13 January 2025\s+11\s+11\s+\u2013\s+0", text);
        Assert.Matches(@"2 March 2026\s+11\s+11\s+\u2013\s+0", text);
    }

    [Fact]
    public void Blocks_SharedByCodes_NameNobody()
    {
        using var season = ThreeDays(25);
        var html = string.Concat(All(SeasonReport.Open(season.Folder, share: "codes")).Select(b => b.ToHtml() + b.ToText()));
        Assert.DoesNotMatch(@"\bP(0\d|1[0-2])\b", html);
        Assert.DoesNotContain("Player P", html, StringComparison.Ordinal);
        Assert.Contains("Player P05", string.Concat(All(SeasonReport.Open(season.Folder)).Select(b => b.ToHtml())), StringComparison.Ordinal);
    }

    [Fact]
    public void Blocks_OfManyDays_StaySmallAndSayHowDaysWereTakenTogether()
    {
        using var season = new WrittenSeason().Squad();
        season.Day("2026-01-12").Day("2026-01-15", wobble: 1);
        for (var i = 0; i < 16; i++) season.Day(new DateOnly(2026, 1, 26).AddDays(7 * i).ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), squatGain: i, wobble: i + 2);
        var trends = SeasonReport.Open(season.Folder).Trends();
        Assert.Contains("too many for a mean each; they are taken together by month", trends.ToText(), StringComparison.Ordinal);
        Assert.InRange(trends.ToHtml().Length, 1, 120_000);
    }
}
