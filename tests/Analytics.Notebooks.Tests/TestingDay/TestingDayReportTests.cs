using Analytics.Notebooks.TestingDay;
using Analytics.Season;

namespace Analytics.Notebooks.Tests.TestingDay;

public sealed class TestingDayReportTests
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
    public void Sprints_GatesAtMetres_NoPredictedYardsBeside()
    {
        // Gates at 5, 10 and 20 m: a time at 10 yd could be predicted, but nobody needs it beside the measured one.
        using var season = ThreeDays();
        var text = string.Concat(All(TestingDayReport.Open(season.Folder, since: "2026-01-15")).Select(b => b.ToText()));
        Assert.Contains("10 m", text, StringComparison.Ordinal);
        Assert.DoesNotContain("10 yd sprint", text, StringComparison.Ordinal);
        Assert.DoesNotContain("no gate at 10 yd", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Doubts_OldBodyMass_WritesTheDateInWords()
    {
        using var season = ThreeDays();
        season.Write("testing/2026-01-12/body.csv", "athlete_id;mass_kg\n" + string.Concat(Enumerable.Range(1, WrittenSeason.Players).Select(i => $"{WrittenSeason.Id(i)};{90 + i}\n")));
        var text = string.Concat(All(TestingDayReport.Open(season.Folder, since: "2026-01-15")).Select(b => b.ToText()));
        Assert.Contains("body mass from 12 January 2026", text, StringComparison.Ordinal);
        Assert.DoesNotContain("body mass from 2026", text, StringComparison.Ordinal);
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

    // Attempts minutes apart leave out the day, so their error is a lower bound and must read as one.
    [Fact]
    public void Methods_ErrorFromAttemptsOfOneDay_ReadsAsALowerBound()
    {
        using var season = new WrittenSeason().Squad(retests: "[]").Day("2026-01-12");
        season.Append("testing/2026-01-12/jumps.csv", string.Concat(Enumerable.Range(1, WrittenSeason.Players)
            .Select(i => $"{WrittenSeason.Id(i)};squat;mat;1;{30 + i}\n{WrittenSeason.Id(i)};squat;mat;2;{30 + i + i % 3}\n")));
        Assert.Contains("at least ", TestingDayReport.Open(season.Folder).Methods().ToText(), StringComparison.Ordinal);
    }

    // 2 Phi(-(0.2/sqrt(0.1))/sqrt 2) = 0.65472 of the unchanged (R); nothing is said about the share of flags that are wrong.
    [Fact]
    public void Methods_WorthwhileChangeAlone_SpeaksOfUnchangedPlayers()
    {
        using var season = ThreeDays();
        Assert.Contains("65\u2009% of the players who have not changed at all", TestingDayReport.Open(season.Folder).Methods().ToText().Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Results_HeavierBody_IsUpWithoutBeingAGain()
    {
        using var season = ThreeDays();
        foreach (var (day, more) in new[] { ("2026-01-12", 0.0), ("2026-01-15", 0.3), ("2026-03-02", 9) })
        {
            // Without sprints the table holds body mass alone; momentum would truly gain.
            File.Delete(Path.Combine(season.Folder, "testing", day, "sprints.csv"));
            season.Write($"testing/{day}/body.csv", "athlete_id;mass_kg\n" + string.Concat(Enumerable.Range(1, WrittenSeason.Players)
                .Select(i => FormattableString.Invariant($"{WrittenSeason.Id(i)};{90 + i + more * (i % 2 + 1)}\n"))));
        }

        var table = TestingDayReport.Open(season.Folder).SprintTable().ToHtml();
        Assert.Contains("clearly up", table, StringComparison.Ordinal);
        Assert.DoesNotContain("gain-t\"", table, StringComparison.Ordinal);
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

    // Gates at 5, 10 and 20 m: a time at 10 yd would be read off a curve, the one at 10 m was measured.
    [Fact]
    public void WhoChanged_TenYardsOnlyPredicted_ShowsTheGateThatWasThere()
    {
        using var season = ThreeDays();
        var text = TestingDayReport.Open(season.Folder, since: "2026-01-15").WhoChanged().ToText();
        Assert.Contains("10 m sprint", text, StringComparison.Ordinal);
        Assert.DoesNotContain("10 yd sprint", text, StringComparison.Ordinal);
    }

    [Fact]
    public void WhoChanged_NobodyCanBeJudgedForOneReason_SaysItOnce()
    {
        using var season = new WrittenSeason().Squad(retests: "[]").Day("2026-01-12").Day("2026-03-02");
        foreach (var day in new[] { "2026-01-12", "2026-03-02" })
        {
            season.Append($"testing/{day}/jumps.csv", string.Concat(Enumerable.Range(1, WrittenSeason.Players)
                .Select(i => $"{WrittenSeason.Id(i)};squat;mat;1;{30 + i}\n{WrittenSeason.Id(i)};squat;mat;2;{30 + i + i % 3}\n")));
        }

        var text = TestingDayReport.Open(season.Folder).WhoChanged("sj_height").ToText();
        Assert.Equal(2, text.Split("only same-day attempts tell of error here").Length);
        Assert.Contains("Nobody can be judged: only same-day attempts", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Answers_FirstDay_IsAStartingPoint()
    {
        using var season = new WrittenSeason().Squad().Day("2026-01-12");
        var report = TestingDayReport.Open(season.Folder);
        Assert.Contains("starting point", report.Answers().ToText(), StringComparison.Ordinal);
        Assert.Contains("nothing to compare with", report.WhoChanged().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void WhoChanged_NoRetest_JudgesByThePublishedErrorAndNamesIt()
    {
        using var season = new WrittenSeason().Squad(retests: "[]").Day("2026-01-12").Day("2026-03-02", squatGain: 60);
        var squat = TestingDayReport.Open(season.Folder).WhoChanged("back_squat_1rm").ToText();
        Assert.Contains("published error", squat, StringComparison.Ordinal);
        Assert.Contains("[grgic2020]", squat, StringComparison.Ordinal);
        Assert.Contains("if the error of that study holds here", squat, StringComparison.Ordinal);
    }

    [Fact]
    public void Open_UnknownDay_ListsTheDaysThereAre()
    {
        using var season = ThreeDays();
        var error = Assert.Throws<SeasonException>(() => TestingDayReport.Open(season.Folder, "2026-02-30"));
        Assert.Contains("'2026-02-30'", error.Message, StringComparison.Ordinal);
        Assert.Contains("2026-01-12, 2026-01-15, 2026-03-02", error.Message, StringComparison.Ordinal);
        var since = Assert.Throws<SeasonException>(() => TestingDayReport.Open(season.Folder, "2026-01-15", "2026-03-02"));
        Assert.Contains("since is '2026-03-02'", since.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Open_NoTestingDay_SaysWhatToAdd()
    {
        using var season = new WrittenSeason().Squad();
        Assert.Contains("lifts.csv", Assert.Throws<SeasonException>(() => TestingDayReport.Open(season.Folder)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void WhoChanged_UnknownMetric_ListsTheKnownOnes()
    {
        using var season = ThreeDays();
        var error = Assert.Throws<KeyNotFoundException>(() => TestingDayReport.Open(season.Folder).WhoChanged("squatt"));
        Assert.Contains("back_squat_1rm", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Blocks_SeasonInKilograms_ShowNoPounds()
    {
        using var season = ThreeDays(squatGain: 25);
        var report = TestingDayReport.Open(season.Folder);
        var text = report.Answers().ToText() + report.WhoChanged().ToText() + report.Results().ToText();
        Assert.Contains("\u2009kg", text, StringComparison.Ordinal);
        Assert.DoesNotContain("\u2009lb", text, StringComparison.Ordinal);
        Assert.DoesNotContain(", in\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Needs_TwoQualitiesOnly_LeavesTheNeedBlankWithTheReason()
    {
        using var season = new WrittenSeason().Squad().Day("2026-01-12").Day("2026-01-15", wobble: 1);
        foreach (var day in new[] { "2026-01-12", "2026-01-15" }) File.Delete(Path.Combine(season.Folder, "testing", day, "sprints.csv"));
        var text = TestingDayReport.Open(season.Folder).Needs().ToText();
        Assert.Contains("Only 2 qualities can be compared, 3 are needed", text, StringComparison.Ordinal);
        Assert.DoesNotContain("How sure", text, StringComparison.Ordinal);
    }

    // Here the squad's top speeds lie within hundredths of a metre per second, shown with one decimal.
    [Fact]
    public void Needs_GapSmallerThanTheDecimalsShown_IsNotZero()
    {
        using var season = ThreeDays();
        var text = TestingDayReport.Open(season.Folder).Needs().ToText();
        Assert.Contains("Top speed", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" 0.0\u2009m/", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Results_MoreThanTenRepetitions_AreMarkedDoubtful()
    {
        using var season = ThreeDays();
        season.Write("testing/2026-03-02/lifts.csv", "athlete_id;lift;set;load_kg;reps\nP01;back_squat;1;120;12\nP02;back_squat;1;150;1\nP03;back_squat;1;160;1\n");
        var text = TestingDayReport.Open(season.Folder).StrengthTable().ToText();
        Assert.Contains("~", text, StringComparison.Ordinal);
        Assert.Contains("Squat 1RM, one player:", text, StringComparison.Ordinal);
    }

    [Fact]
    public void WhoChanged_MaximumEstimatedOnOneDay_SaysThatTheEquationCounts()
    {
        using var season = ThreeDays();
        season.Write("testing/2026-03-02/lifts.csv", "athlete_id;lift;set;load_kg;reps\nP01;back_squat;1;140;5\nP02;back_squat;1;150;1\n");
        var text = TestingDayReport.Open(season.Folder, since: "2026-01-15").WhoChanged("back_squat_1rm").ToText();
        Assert.Contains("For one player a maximum was estimated from repetitions", text, StringComparison.Ordinal);
    }

    [Fact]
    public void HeldBack_BrokenRow_IsListedWithPlaceAndCountsAddUp()
    {
        using var season = ThreeDays();
        season.Append("testing/2026-03-02/jumps.csv", "P01;countermovement;mat;2;-4\nP99;countermovement;mat;1;40\n");
        var report = TestingDayReport.Open(season.Folder);
        var text = report.HeldBack().ToText();
        Assert.Equal(report.Season.RowsRead, report.Season.RowsKept + report.Season.RowsHeldBack);
        Assert.Contains("2 held back", text, StringComparison.Ordinal);
        Assert.Contains("testing/2026-03-02/jumps.csv, line 14", text, StringComparison.Ordinal);
        Assert.Contains("P99", text, StringComparison.Ordinal);
    }

    [Fact]
    public void WhoChanged_HandTimedPlayer_IsSetApartNotMerged()
    {
        using var season = ThreeDays();
        var path = Path.Combine(season.Folder, "testing", "2026-03-02", "sprints.csv");
        File.WriteAllText(path, File.ReadAllText(path).Replace("P04;1;electronic", "P04;1;hand", StringComparison.Ordinal));
        var text = TestingDayReport.Open(season.Folder).WhoChanged("sprint_10m").ToText();
        Assert.Contains("Not compared: Player P04", text, StringComparison.Ordinal);
        Assert.Contains("hand", text, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatPlayersCarry_MassAndSprint_MultiplyToTheMomentumOfTheTable()
    {
        using var season = ThreeDays();
        var mass = string.Concat(Enumerable.Range(1, WrittenSeason.Players).Select(i => $"{WrittenSeason.Id(i)};{90 + i}\n"));
        season.Write("testing/2026-03-02/body.csv", "athlete_id;mass_kg\n" + mass);
        var report = TestingDayReport.Open(season.Folder);
        var text = report.WhatPlayersCarry().ToText();
        var row = text.Split('\n').Single(l => l.StartsWith("Player P01", StringComparison.Ordinal)).Split("  ", StringSplitOptions.RemoveEmptyEntries);
        var momentum = double.Parse(row[^2], System.Globalization.CultureInfo.InvariantCulture) * double.Parse(row[^1], System.Globalization.CultureInfo.InvariantCulture);
        var table = report.SprintTable().ToText().Split('\n');
        var head = table.First(l => l.StartsWith("Player", StringComparison.Ordinal));
        var cell = table.First(l => l.StartsWith("Player P01", StringComparison.Ordinal));
        Assert.Contains("Momentum, 10 yd", head, StringComparison.Ordinal);
        // The speed is shown with one decimal, so the product agrees to half a tenth of a metre per second times the mass.
        Assert.Contains(cell.Split("  ", StringSplitOptions.RemoveEmptyEntries).Select(c => double.TryParse(c.TrimStart('~', ' ').Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture, out var v) ? v : 0),
            v => Math.Abs(v - momentum) < 0.05 * 91 + 1);
        Assert.Contains("head up", text, StringComparison.Ordinal);
    }

    [Fact]
    public void EveryBlock_HostileNamesAndClub_AreTextNotMarkup()
    {
        const string player = "<img src=x onerror=alert(1)>";
        const string club = "\"><script>alert(2)</script>";
        using var season = new WrittenSeason().Squad(club, i => i == 3 ? player : $"Player {i}").Day("2026-01-12").Day("2026-01-15", wobble: 1).Day("2026-03-02", squatGain: 25, wobble: 2);
        var report = TestingDayReport.Open(season.Folder);
        var html = string.Concat(All(report).Select(b => b.ToHtml()));
        Assert.DoesNotContain("<img", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<script>alert", html, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("&lt;img src=x onerror=alert(1)&gt;", html, StringComparison.Ordinal);
    }

    [Fact]
    public void EveryBlock_SameSeasonTwice_SameHtml()
    {
        using var season = ThreeDays(squatGain: 5);
        string Once() => string.Concat(All(TestingDayReport.Open(season.Folder)).Select(b => b.ToHtml()));
        Assert.Equal(Once(), Once());
    }

    [Fact]
    public void Provenance_NeverShowsWhereTheFolderLies()
    {
        using var season = ThreeDays();
        Assert.DoesNotContain(Path.GetTempPath(), string.Concat(All(TestingDayReport.Open(season.Folder)).Select(b => b.ToHtml() + b.ToText())), StringComparison.Ordinal);
    }

    /// <summary>Puts another value behind the start of a line of the last day.</summary>
    private static void Replace(WrittenSeason season, string file, string start, string value)
    {
        var path = Path.Combine(season.Folder, "testing", "2026-03-02", file);
        var lines = File.ReadAllLines(path);
        var at = Array.FindIndex(lines, l => l.StartsWith(start, StringComparison.Ordinal));
        lines[at] = start + value;
        File.WriteAllLines(path, lines);
    }

    private static void OnlyTenMetres(WrittenSeason season, string day)
    {
        var path = Path.Combine(season.Folder, "testing", day, "sprints.csv");
        File.WriteAllLines(path, File.ReadAllLines(path).Select(l => l.Split(';')).Select(c => string.Join(';', [.. c[..4], c[5]])));
    }

    private static void OnlyOnePlayer(WrittenSeason season)
    {
        foreach (var file in Directory.EnumerateFiles(season.Folder, "*.csv", SearchOption.AllDirectories))
            File.WriteAllLines(file, File.ReadAllLines(file).Where((line, i) => i == 0 || line.StartsWith("P01", StringComparison.Ordinal)));
    }

    private static WrittenSeason ThreeDays(double squatGain = 0)
        => new WrittenSeason().Squad().Day("2026-01-12").Day("2026-01-15", wobble: 1).Day("2026-03-02", squatGain, wobble: 2);

    private static IEnumerable<Analytics.Notebooks.Blocks.Block> All(TestingDayReport report) =>
    [
        report.Head(), report.Answers(), report.WhoWasTested(), report.WhereGroupsStand(), report.WhoChanged(), report.WhatPlayersCarry(), report.Needs(),
        report.Results(), report.HeldBack(), report.Methods(), report.Cautions(), report.Provenance(),
    ];
}
