using Analytics.Notebooks.Tests.TestingDay;
using Analytics.Notebooks.TrainingWeek;
using Analytics.Season;

namespace Analytics.Notebooks.Tests.TrainingWeek;

/// <summary>The week's report on small written seasons.</summary>
public sealed class TrainingWeekReportTests
{
    [Fact]
    public void Next_AfterTheLatestTestingDay_IsTheFirstWeekWithASession()
    {
        using var season = TrainingSeasons.Written();
        Assert.StartsWith("Training week, 9 March 2026", TrainingSeasons.Open(season).Head().ToText(), StringComparison.Ordinal);
        season.Write("training/calendar.csv", TrainingSeasons.Calendar.Replace("2026-03-", "2026-04-", StringComparison.Ordinal));
        // 9 April 2026 is a Thursday.
        Assert.StartsWith("Training week, 6 April 2026", TrainingSeasons.Open(season).Head().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Week_AnyDayOfIt_IsTheSameWeek()
    {
        using var season = TrainingSeasons.Written();
        Assert.Equal(TrainingSeasons.Open(season).Sheets().ToText(), TrainingSeasons.Open(season, "2026-03-15").Sheets().ToText());
    }

    [Theory]
    [InlineData("soon", "auto", "all", "week is 'soon'; use \"next\" or any day of the week as yyyy-mm-dd.")]
    [InlineData("2026-13-01", "auto", "all", "week is '2026-13-01'")]
    [InlineData("next", "summer", "all", "phase is 'summer'; use \"auto\" or one of: off_season, pre_season, in_season.")]
    [InlineData("next", "auto", "P99", "athlete is 'P99', and athletes.csv has no such athlete_id.")]
    public void Settings_ThatCannotBeUsed_SayWhatToUse(string week, string phase, string athlete, string message)
    {
        using var season = TrainingSeasons.Written();
        Assert.Contains(message, Assert.Throws<SeasonException>(() => TrainingSeasons.Open(season, week, phase, athlete)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Week_WithoutSessionsInTheCalendar_TakesTheUsualWeekAndSaysSo()
    {
        using var season = TrainingSeasons.Written();
        var text = TrainingSeasons.Open(season, "2026-05-04").Head().ToText();
        Assert.Contains("Sessions: the usual week, off season (common practice, no source), since the calendar has no session in this week; room: gym.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Week_CountedFromAGameThatIsNotThere_SaysWhatToAdd()
    {
        using var season = TrainingSeasons.Written();
        Assert.Contains("training/calendar.csv", Assert.Throws<SeasonException>(() => TrainingSeasons.Open(season, "2026-05-04", "in_season")).Message, StringComparison.Ordinal);
    }

    // P01 squats 154 kg on 2 March (150 + 4, no wobble worth a plate or one of 2.5): 75 to 85 % rounded down to plates is on his row.
    [Fact]
    public void Sheets_EveryPlayer_StandsOnASheetOfHisGroupAndSession()
    {
        using var season = TrainingSeasons.Written();
        var text = TrainingSeasons.Open(season).Sheets().ToText();
        Assert.StartsWith("4 session sheets", text, StringComparison.Ordinal);
        foreach (var player in Enumerable.Range(1, WrittenSeason.Players).Select(WrittenSeason.Id))
            Assert.Equal(2, text.Split('\n').Count(l => l.StartsWith($"- Player {player}:", StringComparison.Ordinal)));
        Assert.Contains("Front row, Monday 9 March, 16:00", text, StringComparison.Ordinal);
        Assert.Contains("Stop on pain, dizziness or lost technique", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Sheets_RestrictedPlayer_TrainsApartAndWithoutWhatIsOut()
    {
        using var season = TrainingSeasons.Written().Write("training/restrictions.csv", "athlete_id;from;to;out;note\nP03;2026-03-01;;jump+squat+single_leg;knee of P03\n");
        var text = TrainingSeasons.Open(season).Sheets().ToText();
        var lines = text.Split('\n').Where(l => l.StartsWith("- Player P03", StringComparison.Ordinal)).ToList();
        Assert.Equal(2, lines.Count);
        Assert.All(lines, l => Assert.StartsWith("- Player P03, apart: ", l, StringComparison.Ordinal));
        Assert.All(lines, l => Assert.DoesNotContain("squat", l, StringComparison.Ordinal));
        Assert.All(lines, l => Assert.DoesNotContain("jump", l, StringComparison.Ordinal));
        // A note of medical staff does not hang on the wall.
        Assert.DoesNotContain("knee", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Clash_NoTimeForADay_IsToldAtTheTopWithTheMinutesItWouldTake()
    {
        using var season = TrainingSeasons.Written().Write("training/calendar.csv", "date;kind;minutes;room\n2026-03-09;max_strength;20;gym\n");
        var report = TrainingSeasons.Open(season);
        var head = report.Head().ToText();
        Assert.Contains("There is no plan for this week that keeps every rule.", head, StringComparison.Ordinal);
        Assert.Contains("These cannot all be kept:", head, StringComparison.Ordinal);
        Assert.Contains("minutes instead of 20 there is a plan", report.Clashes().ToText(), StringComparison.Ordinal);
        // The rest still helps.
        Assert.Contains("Player P01", report.Sheets().ToText(), StringComparison.Ordinal);
        Assert.Contains("no plan yet", report.Why().ToText(), StringComparison.Ordinal);
        Assert.Equal("", report.PlanFile().ToText());
        Assert.Equal("", report.Doses().ToText());
        Assert.Single(report.Spreadsheet().TrimEnd('\n').Split('\n'));
    }

    [Fact]
    public void Athlete_OwnPage_HoldsNoNameOfAnybodyElse()
    {
        using var season = TrainingSeasons.Written().Write("training/restrictions.csv", "athlete_id;from;to;out;note\nP03;2026-03-01;;jump;knee\n");
        foreach (var id in new[] { "P03", "P07" })
        {
            var report = TrainingSeasons.Open(season, athlete: id);
            var page = string.Concat(new[] { report.Head(), report.Answers(), report.Clashes(), report.WeekAtAGlance(), report.Sheets(), report.Why(), report.Feedback(), report.Doses(), report.Rules(), report.Cautions(), report.Methods(), report.HeldBack(), report.PlanFile(), report.Provenance() }.Select(b => b.ToHtml() + b.ToText()));
            Assert.Contains($"Player {id}", page, StringComparison.Ordinal);
            foreach (var other in Enumerable.Range(1, WrittenSeason.Players).Select(WrittenSeason.Id).Where(o => o != id)) Assert.DoesNotContain(other, page, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Names_ThatAreMarkup_AreText()
    {
        using var season = TrainingSeasons.Written(i => $"<img src=x onerror=alert({i})>");
        var report = TrainingSeasons.Open(season);
        var page = string.Concat(new[] { report.Head(), report.Answers(), report.WeekAtAGlance(), report.Sheets(), report.Why(), report.Doses(), report.Rules(), report.Cautions(), report.PlanFile(), report.Provenance() }.Select(b => b.ToHtml()));
        Assert.DoesNotContain("<img", page, StringComparison.Ordinal);
        Assert.Contains("&lt;img src=x onerror=alert(1)&gt;", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Open_Twice_GivesTheSameBytes()
    {
        using var season = TrainingSeasons.Written();
        var (first, second) = (TrainingSeasons.Open(season), TrainingSeasons.Open(season));
        Assert.Equal(first.Sheets().ToHtml(), second.Sheets().ToHtml());
        Assert.Equal(first.Why().ToHtml(), second.Why().ToHtml());
        Assert.Equal(first.Spreadsheet(), second.Spreadsheet());
    }

    // Two sessions planned and logged as planned after the last test, both rated 6. With plates for every 2.5 kg the step is the
    // next weight, which the sheet, the plan file and the table of the log all name; nobody else's load moves.
    [Fact]
    public void Feedback_PlannedAndDoneTwice_MovesTheLoadOnTheSheet()
    {
        using var season = TrainingSeasons.Written().Write("training/weights.csv", "item;weight_kg;pairs\nbar;20;\nplate;20;6\nplate;10;1\nplate;5;1\nplate;2.5;1\nplate;1.25;1\nmedicine_ball;4;\n");
        const string Head = "date;group;athlete_id;exercise;scheme;part;keep;sets;repetitions;load_kg\n", Kept = "2026-03-09;Front row;;back_squat;;shared;keep;;;\n";
        season.Write("training/plan.csv", Head + Kept);
        var before = Squats(TrainingSeasons.Open(season).Spreadsheet());
        var (scheme, sets, repetitions, load) = before["P01"];
        string Row(string day) => $"{day};;P01;back_squat;{scheme};shared;planned;{sets};{repetitions};{load}\n";
        string Done(string day) => $"{day};P01;60;6;back_squat;{sets};{repetitions};{load}\n";
        season.Write("training/plan.csv", Head + Kept + Row("2026-03-05") + Row("2026-03-07"))
            .Write("sessions.csv", "date;athlete_id;minutes;session_rpe;lift;sets;reps;load_kg\n" + Done("2026-03-05") + Done("2026-03-07"));
        var report = TrainingSeasons.Open(season);
        var after = Squats(report.Spreadsheet());
        var next = double.Parse(load, System.Globalization.CultureInfo.InvariantCulture) + 2.5;
        Assert.Equal(before["P01"] with { Load = FormattableString.Invariant($"{next:0.##}") }, after["P01"]);
        Assert.Equal(before.Where(b => b.Key != "P01"), after.Where(a => a.Key != "P01"));
        var log = report.Feedback();
        Assert.Contains("One load of one player up a step.", log.ToText(), StringComparison.Ordinal);
        Assert.Matches(FormattableString.Invariant($@"with {next:0.##}\skg, Mon 9 March"), System.Net.WebUtility.HtmlDecode(log.ToHtml()));
        Assert.Contains("all done each time", log.ToHtml(), StringComparison.Ordinal);
        Assert.Contains("a step up by the log", report.Sheets().ToText(), StringComparison.Ordinal);
    }

    // A test after the log speaks instead of it: the squad was tested on 2 March.
    [Fact]
    public void Feedback_TestedSince_LeavesTheLoad()
    {
        using var season = TrainingSeasons.Written()
            .Write("training/plan.csv", "date;athlete_id;exercise;scheme;part;keep;sets;repetitions;load_kg\n2026-02-19;P01;back_squat;;own;planned;3;5;100\n2026-02-24;P01;back_squat;;own;planned;3;5;100\n")
            .Write("sessions.csv", "date;athlete_id;minutes;session_rpe;lift;sets;reps;load_kg\n2026-02-19;P01;60;6;back_squat;3;5;100\n2026-02-24;P01;60;6;back_squat;3;5;100\n");
        var report = TrainingSeasons.Open(season);
        Assert.Contains("tested since, on 2 March: the test speaks", report.Feedback().ToHtml(), StringComparison.Ordinal);
        Assert.DoesNotContain("by the log", report.Sheets().ToText(), StringComparison.Ordinal);
    }

    // Scheme, sets, repetitions and load of the shared back squat on Monday 9 March, by player.
    private static Dictionary<string, (string Scheme, string Sets, string Repetitions, string Load)> Squats(string csv)
        => csv.Split('\n').Select(l => l.Split(',')).Where(c => c.Length > 12 && c[0] == "2026-03-09" && c[4].Length > 0 && c[6] == "back_squat").ToDictionary(c => c[4], c => (c[7], c[10], c[11], c[12]));

    [Fact]
    public void Feedback_NoEarlierPlan_IsEmpty()
    {
        using var season = TrainingSeasons.Written();
        Assert.Equal("", TrainingSeasons.Open(season).Feedback().ToText());
    }

    [Fact]
    public void HeldBack_RowOfTheFolderTraining_IsListedWithItsRemedy()
    {
        using var season = TrainingSeasons.Written().Write("training/restrictions.csv", "athlete_id;from;to;out;note\nP03;2026-03-01;;dancing;\n");
        var text = TrainingSeasons.Open(season).HeldBack().ToText();
        Assert.Contains("training/restrictions.csv, line 2", text, StringComparison.Ordinal);
        Assert.Contains("1 held back", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Answers_RestrictionThatCouldNotBeRead_IsSaidFirst()
    {
        using var season = TrainingSeasons.Written().Write("training/restrictions.csv", "athlete_id;from;to;out;note\nP03;2026-03-01;;dancing;\n");
        var text = TrainingSeasons.Open(season).Answers().ToText();
        Assert.Contains("One row of training/restrictions.csv could not be read and restricts nobody: mend it before anybody trains by this plan", text, StringComparison.Ordinal);
        using var whole = TrainingSeasons.Written().Write("training/restrictions.csv", "athlete_id;from;to;out;note\nP03;2026-03-01;;jump;\n");
        Assert.DoesNotContain("restrictions.csv", TrainingSeasons.Open(whole).Answers().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Doses_EveryRuleThatRefuses_IsKept()
    {
        using var season = TrainingSeasons.Written();
        Assert.Contains("Every limit is kept.", TrainingSeasons.Open(season).Doses().ToText(), StringComparison.Ordinal);
    }
}
