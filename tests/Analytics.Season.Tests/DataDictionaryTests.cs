using Analytics.Planning.Rules;
using Analytics.Season.Columns;
using Analytics.Season.Squad;
using Analytics.Season.Tests.Support;
using Analytics.Season.Training;
using Analytics.Season.Trials;

namespace Analytics.Season.Tests;

/// <summary>The data dictionary names every column the reader accepts.</summary>
public sealed class DataDictionaryTests
{
    private static readonly string Text = File.ReadAllText(Path.Combine(Repository.Root, "docs", "data-dictionary.md"));

    [Fact]
    public void Dictionary_EveryColumnOfEveryTable_IsNamedInItsSection()
    {
        foreach (var table in TrialTable.All)
        {
            var start = Text.IndexOf($"### {table.Name}\n", StringComparison.Ordinal);
            Assert.True(start >= 0, table.Name);
            var end = Text.IndexOf("\n### ", start + 4, StringComparison.Ordinal) is var next and > 0 ? next : Text.IndexOf("\n## ", start + 4, StringComparison.Ordinal);
            var section = Text[start..end];
            foreach (var head in table.Columns.Where(c => c != TrialTable.AthleteId).SelectMany(c => c.Heads))
                Assert.True(section.Contains($"`{head}`", StringComparison.Ordinal), $"{table.Name}: {head}");
        }
    }

    [Fact]
    public void Dictionary_ColumnsThatTablesShare_AreNamedBeforeTheTables()
    {
        var start = Text.IndexOf("## Tables of a testing day\n", StringComparison.Ordinal);
        var section = Text[start..Text.IndexOf("\n### ", start, StringComparison.Ordinal)];
        foreach (var column in (Column[])[TrialTable.AthleteId, TrialTable.Checked, TrialTable.Tester]) Assert.Contains($"`{column.Name}`", section, StringComparison.Ordinal);
        Assert.Contains($"at most {TrialTable.LongestTester} characters", section, StringComparison.Ordinal);
    }

    [Fact]
    public void Dictionary_EveryColumnOfTheSessions_IsNamedInItsSection()
    {
        var start = Text.IndexOf("## sessions.csv\n", StringComparison.Ordinal);
        var section = Text[start..Text.IndexOf("\n## ", start + 4, StringComparison.Ordinal)];
        foreach (var head in SessionColumns.All.SelectMany(c => c.Heads)) Assert.True(section.Contains($"`{head}`", StringComparison.Ordinal), head);
    }

    [Fact]
    public void Dictionary_EveryColumnOfTraining_IsNamedInItsSection()
    {
        Assert.Equal(TrainingFolder.Files.Order(StringComparer.Ordinal), Training.Keys.Order(StringComparer.Ordinal));
        foreach (var (file, columns) in Training)
        {
            var start = Text.IndexOf($"### training/{file}.csv\n", StringComparison.Ordinal);
            Assert.True(start >= 0, file);
            var section = Text[start..Text.IndexOf("\n##", start + 4, StringComparison.Ordinal)];
            foreach (var head in columns.SelectMany(c => c.Heads)) Assert.True(section.Contains($"`{head}`", StringComparison.Ordinal), $"{file}: {head}");
        }
    }

    [Fact]
    public void Dictionary_EveryRule_IsNamed() => Assert.All(PlanRules.Standard.All, r => Assert.Contains($"`{r.Id}`", Text, StringComparison.Ordinal));

    private static readonly IReadOnlyDictionary<string, IReadOnlyList<Column>> Training = new Dictionary<string, IReadOnlyList<Column>>
    {
        ["exercises"] = ExerciseColumns.All, ["schemes"] = SchemeColumns.All, ["day-kinds"] = DayKindsReader.Columns, ["week-shapes"] = WeekShapesReader.Columns, ["rules"] = RulesReader.Columns,
        ["rooms"] = RoomsReader.Columns, ["weights"] = WeightsReader.Columns, ["calendar"] = CalendarColumns.All, ["restrictions"] = RestrictionsReader.Columns, ["targets"] = TargetColumns.All, ["plan"] = PlanColumns.All,
    };

    [Fact]
    public void Dictionary_EveryKnownLiftAndThrow_IsNamed()
        => Assert.All(KnownLift.Ids.Concat(ThrowsTable.Known), id => Assert.Contains($"`{id}`", Text, StringComparison.Ordinal));
}
