using Analytics.Notebooks.Tests.TestingDay;
using Analytics.Notebooks.WholeSeason;
using Analytics.Planning.Exercises;
using Analytics.Planning.Plans;
using Analytics.Quantities;
using Analytics.Season;

namespace Analytics.Notebooks.Tests.WholeSeason;

/// <summary>Planned and done beside change, in a season of twelve with a gain of 25 kg in the squat.</summary>
public sealed class PlanBlockTests
{
    private static readonly ExerciseCatalogue s_exercises = new(
    [
        Exercise("back_squat", TrainedQuality.MaximalStrength),
        Exercise("sled_sprint", TrainedQuality.Acceleration),
        Exercise("roll_out", TrainedQuality.TrunkControl),
    ]);

    private static Exercise Exercise(string id, TrainedQuality quality)
        => new() { Id = id, Name = id, Pattern = MovementPattern.Squat, Quality = quality, RepetitionTime = Duration.FromSeconds(3) };

    private static EarlierChoice Row(string group, string exercise, int sets, int day = 2) => new() { Date = new(2026, 2, day), Group = group, ExerciseId = exercise, Sets = sets, Repetitions = 5 };

    private static SeasonContext Season(WrittenSeason season, Action<WrittenSeason>? more = null)
    {
        season.Write("sessions.csv", "date;athlete_id;minutes;session_rpe;lift;sets;repetitions;load_kg\n2026-02-02;P01;60;7;back_squat;4;5;100\n2026-02-03;P02;60;7;back_squat;6;5;100\n");
        more?.Invoke(season);
        var data = SeasonReader.Read(season.Folder);
        return new SeasonContext(data, ReportDays.Of(data, "first", "latest"));
    }

    private static string Text(IReadOnlyList<EarlierChoice> rows, Action<WrittenSeason>? more = null)
    {
        using var season = ReportSeasons.ThreeDays(squatGain: 25);
        return PlanBlock.Of(Season(season, more), rows, s_exercises)!.ToText();
    }

    [Fact]
    public void Of_NoPlan_IsNoBlock()
    {
        using var season = ReportSeasons.ThreeDays();
        var context = Season(season);
        Assert.Null(PlanBlock.Of(context, [], s_exercises));
        Assert.Null(PlanBlock.Of(context, [Row("Front row", "back_squat", 5) with { Force = ChoiceForce.Never }], s_exercises));
    }

    [Fact]
    public void Report_SeasonWithAPlan_ShowsItUnderTheTrainingDone()
    {
        using var season = ReportSeasons.ThreeDays(squatGain: 25);
        var without = SeasonReport.Open(season.Folder).Load().ToText();
        Assert.DoesNotContain("Planned and done", without, StringComparison.Ordinal);
        season.Write("training/plan.csv", "date;group;athlete_id;exercise;scheme;part;keep;sets;repetitions\n2026-02-02;Front row;;back_squat;;shared;planned;5;5\n");
        var with = SeasonReport.Open(season.Folder).Load().ToText();
        Assert.StartsWith(without.TrimEnd(), with, StringComparison.Ordinal);
        Assert.Matches(@"Front row \(6 players\)\s+Maximal strength\s+5\.0", with);
    }

    // Front row, six players with 5 planned sets each: 4 of P01 and 5 of P02 (who logged 6, a day later) are 9 of 30, 30 %.
    [Fact]
    public void Of_APlan_ShowsDoseLogAndChangeOfTheGroup()
    {
        var text = Text([Row("Front row", "back_squat", 5)]);
        Assert.Contains("From 15 January to 2 March", text, StringComparison.Ordinal);
        Assert.Matches(@"Front row \(6 players\)\s+Maximal strength\s+5\.0\s+30\s+\+2\d\.\d\u2009kg \(\+\d+\.\d to \+\d+\.\d\) \(squat, six players\)", text);
        Assert.DoesNotContain("Back row", text, StringComparison.Ordinal);
        Assert.Matches(@"Player P02 \(Maximal strength\)\s+5\s+5\s+1\s+\+2", text);
        Assert.Matches(@"Player P03 \(Maximal strength\)\s+5\s+0\s+0\s+\+2", text);
        Assert.Contains("may have been done all the same", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_QualityWithoutATest_SaysSo()
        => Assert.Matches(@"Back row \(6 players\)\s+Trunk control\s+3\.0\s+0\s+.*no test of it on both days", Text([Row("Back row", "roll_out", 3)]));

    [Fact]
    public void Of_TwoOfTheGroupTested_ShowsNoMean()
    {
        var text = Text([Row("Front row", "back_squat", 5)], s => s.Keep("testing/2026-03-02", l => !l.StartsWith("P03", StringComparison.Ordinal) && !l.StartsWith("P04", StringComparison.Ordinal) && !l.StartsWith("P05", StringComparison.Ordinal) && !l.StartsWith("P06", StringComparison.Ordinal)));
        Assert.Contains("squat: 2 tested on both days, 3 are needed", text, StringComparison.Ordinal);
        Assert.Contains("squat not tested on both days", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_WhatIsInNoCount_IsTold()
    {
        var text = Text([Row("Front row", "back_squat", 5), Row("Front row", "mystery", 5), Row("Front row", "sled_sprint", 5) with { Sets = null }]);
        Assert.Contains("Not in the list of exercises, so in no count: mystery.", text, StringComparison.Ordinal);
        Assert.Contains("6 planned exercises name no number of sets and are in no count.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_PlanOutsideTheTestingDays_SaysSo()
        => Assert.Contains("lie outside the testing days", Text([Row("Front row", "back_squat", 5) with { Date = new(2026, 4, 6) }]), StringComparison.Ordinal);
}
