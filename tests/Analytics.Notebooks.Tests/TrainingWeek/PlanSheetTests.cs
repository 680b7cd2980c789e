using Analytics.Notebooks.Tests.TestingDay;
using Analytics.Planning.Plans;
using Analytics.Season;

namespace Analytics.Notebooks.Tests.TrainingWeek;

/// <summary>The plan as a file, and the way back.</summary>
public sealed class PlanSheetTests
{
    private const string Head = "date,day,start,group,athlete_id,name,exercise,scheme,part,keep,sets,repetitions,load_kg,minutes,why";

    [Fact]
    public void Spreadsheet_PutIntoTheSeason_IsReadWholeAndGivesTheSamePlan()
    {
        using var season = TrainingSeasons.Written();
        season.Write("training/weights.csv", "item;weight_kg;pairs\nbar;20;\nplate;20;6\nplate;10;1\nplate;5;1\nplate;2.5;1\nplate;1.25;1\ndumbbell;10;\ndumbbell;20;\nmedicine_ball;4;\n");
        var first = TrainingSeasons.Open(season);
        var csv = first.Spreadsheet();
        Assert.StartsWith(Head + "\n2026-03-09,Monday,16:00,Front row,,,", csv, StringComparison.Ordinal);

        season.Write("training/plan.csv", csv);
        var data = SeasonReader.Read(season.Folder);
        Assert.DoesNotContain(data.HeldBack, r => r.File.Contains("plan", StringComparison.Ordinal));
        Assert.Equal(csv.Count(c => c == '\n') - 1, data.Training.Earlier.Count);
        var again = TrainingSeasons.Open(season);
        Assert.Equal(csv, again.Spreadsheet());
        Assert.Contains("Nothing changed since the earlier plan of this week.", again.Rules().ToText(), StringComparison.Ordinal);
    }

    // Two sessions of one group on one day, some exercises in both: each row says by its start which it is of.
    [Fact]
    public void Spreadsheet_TwoSessionsOfADay_IsReadWholeAndGivesTheSamePlan()
    {
        using var season = TrainingSeasons.Written();
        season.Write("training/calendar.csv", "date;start;kind;minutes;room;groups\n2026-03-09;07:00;power;70;gym;\n2026-03-09;16:00;max_strength;60;gym;\n2026-03-11;16:00;power;80;gym;\n");
        var csv = TrainingSeasons.Open(season).Spreadsheet();
        Assert.Contains("\n2026-03-09,Monday,07:00,Front row,,,", csv, StringComparison.Ordinal);
        Assert.Contains("\n2026-03-09,Monday,16:00,Front row,,,", csv, StringComparison.Ordinal);

        season.Write("training/plan.csv", csv);
        var data = SeasonReader.Read(season.Folder);
        Assert.DoesNotContain(data.HeldBack, r => r.File.Contains("plan", StringComparison.Ordinal));
        Assert.Equal(csv.Count(c => c == '\n') - 1, data.Training.Earlier.Count);
        var again = TrainingSeasons.Open(season);
        Assert.Equal(csv, again.Spreadsheet());
        Assert.Contains("Nothing changed since the earlier plan of this week.", again.Rules().ToText(), StringComparison.Ordinal);
    }

    // The file of a later week takes the place of the one before: what was planned then stays in it, in the unit of the weights, or the log would have nothing to stand beside.
    [Fact]
    public void Spreadsheet_OfALaterWeek_KeepsTheRowsOfOtherWeeks()
    {
        using var season = TrainingSeasons.Written();
        season.Write("training/plan.csv", "date;start;group;athlete_id;exercise;scheme;part;keep;sets;repetitions;load_lb\n"
            + "2026-02-24;;;P01;back_squat;;own;planned;3;5;225\n2026-03-02;7:00;Front row;;power_clean;;shared;never;;;\n2026-04-07;;Front row;;hurdle_jump;;shared;keep;4;;\n");
        var report = TrainingSeasons.Open(season);
        var rows = report.Spreadsheet().Split('\n');
        Assert.Equal("2026-02-24,Tuesday,,,P01,Player P01,back_squat,,own,planned,3,5,102.06,,planned before", rows[1]);
        Assert.Equal("2026-03-02,Monday,07:00,Front row,,,power_clean,,shared,never,,,,,planned before", rows[2]);
        Assert.StartsWith("2026-03-09,", rows[3], StringComparison.Ordinal);
        Assert.Equal("2026-04-07,Tuesday,,Front row,,,hurdle_jump,,shared,keep,4,,,,planned before", rows[^2]);
        Assert.Contains("3 of them kept from other weeks", report.PlanFile().ToText(), StringComparison.Ordinal);

        season.Write("training/plan.csv", report.Spreadsheet());
        Assert.Equal(report.Spreadsheet(), TrainingSeasons.Open(season).Spreadsheet());
    }

    // A row that keeps or forbids an exercise is obeyed.
    [Fact]
    public void Spreadsheet_RowFixedByTheCoach_ComesBackFixed()
    {
        using var season = TrainingSeasons.Written();
        var rows = TrainingSeasons.Open(season).Spreadsheet().Split('\n');
        var at = Array.FindIndex(rows, r => r.Contains(",Front row,", StringComparison.Ordinal));
        season.Write("training/plan.csv", rows[0] + "\n" + rows[at].Replace(",planned,", ",keep,", StringComparison.Ordinal) + "\n");
        Assert.Contains(rows[at].Replace(",planned,", ",keep,", StringComparison.Ordinal).Split(",keep,")[0] + ",keep,", TrainingSeasons.Open(season).Spreadsheet(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("=cmd|' /C calc'!A0")]
    [InlineData("+1")]
    [InlineData("-2, \"x\"")]
    [InlineData("@SUM(A1)")]
    public void Spreadsheet_NameOfAPlayerThatIsAFormula_IsText(string name)
    {
        using var season = TrainingSeasons.Written(i => i == 1 ? name : $"Player {WrittenSeason.Id(i)}");
        var cells = TrainingSeasons.Open(season).Spreadsheet().Split('\n').Where(l => l.Contains(",P01,", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(cells);
        Assert.All(cells, l => Assert.True(l.Contains(",P01,'" + name[0], StringComparison.Ordinal) || l.Contains(",P01,\"'" + name[0], StringComparison.Ordinal), l));
    }

    [Fact]
    public void Spreadsheet_GroupThatIsAFormula_IsReadBackAsWritten()
    {
        using var season = TrainingSeasons.Written();
        var file = Path.Combine(season.Folder, "athletes.csv");
        File.WriteAllText(file, File.ReadAllText(file).Replace("Front row", "=2+3", StringComparison.Ordinal).Replace("Back row", "'-row", StringComparison.Ordinal));
        var csv = TrainingSeasons.Open(season).Spreadsheet();
        Assert.Contains(",'=2+3,,", csv, StringComparison.Ordinal);
        season.Write("training/plan.csv", csv);
        var data = SeasonReader.Read(season.Folder);
        Assert.Equal(csv.Count(c => c == '\n') - 1, data.Training.Earlier.Count);
        Assert.Equal(["'-row", "=2+3"], data.Training.Earlier.Select(e => e.Group).OfType<string>().Distinct().Order(StringComparer.Ordinal));
        Assert.All(data.Training.Earlier, e => Assert.Equal(ChoiceForce.Planned, e.Force));
    }
}
