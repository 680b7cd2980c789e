using Analytics.Notebooks.TestingDay;
using Analytics.Season;
using static Analytics.Notebooks.Tests.TestingDay.ReportSeasons;

namespace Analytics.Notebooks.Tests.TestingDay;

public sealed class TestingDayReportTests
{
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
        season.Write("testing/2026-01-12/body.csv", "athlete_id;mass_kg\n" + WrittenSeason.Rows(i => $"{WrittenSeason.Id(i)};{90 + i}"));
        var text = string.Concat(All(TestingDayReport.Open(season.Folder, since: "2026-01-15")).Select(b => b.ToText()));
        Assert.Contains("body mass from 12 January 2026", text, StringComparison.Ordinal);
        Assert.DoesNotContain("body mass from 2026", text, StringComparison.Ordinal);
    }

    // Attempts minutes apart leave out the day, so their error is a lower bound and must read as one.
    [Fact]
    public void Methods_ErrorFromAttemptsOfOneDay_ReadsAsALowerBound()
    {
        using var season = new WrittenSeason().Squad(retests: "[]").Day("2026-01-12");
        season.Append("testing/2026-01-12/jumps.csv", WrittenSeason.Rows(i => $"{WrittenSeason.Id(i)};squat;mat;1;{30 + i}\n{WrittenSeason.Id(i)};squat;mat;2;{30 + i + i % 3}"));
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
            season.Write($"testing/{day}/body.csv", "athlete_id;mass_kg\n" + WrittenSeason.Rows(i => $"{WrittenSeason.Id(i)};{90 + i + more * (i % 2 + 1)}"));
        }

        var table = TestingDayReport.Open(season.Folder).SprintTable().ToHtml();
        Assert.Contains("clearly up", table, StringComparison.Ordinal);
        Assert.DoesNotContain("gain-t\"", table, StringComparison.Ordinal);
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
            season.Append($"testing/{day}/jumps.csv", WrittenSeason.Rows(i => $"{WrittenSeason.Id(i)};squat;mat;1;{30 + i}\n{WrittenSeason.Id(i)};squat;mat;2;{30 + i + i % 3}"));
        }

        var text = TestingDayReport.Open(season.Folder).WhoChanged("sj_height").ToText();
        Assert.Equal(2, text.Split("only same-day attempts tell of error here").Length);
        Assert.Contains("Nobody can be judged: only same-day attempts", text, StringComparison.Ordinal);
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
        var mass = WrittenSeason.Rows(i => $"{WrittenSeason.Id(i)};{90 + i}");
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
}
