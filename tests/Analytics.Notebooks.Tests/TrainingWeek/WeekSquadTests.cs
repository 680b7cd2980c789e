using Analytics.Notebooks.Tests.TestingDay;
using Analytics.Notebooks.TrainingWeek;
using Analytics.Planning.Exercises;
using Analytics.Planning.Needs;
using Analytics.Planning.People;
using Analytics.Season;

namespace Analytics.Notebooks.Tests.TrainingWeek;

/// <summary>From small written seasons to the players of a week.</summary>
public sealed class WeekSquadTests
{
    private static readonly DateOnly s_monday = new(2026, 3, 9);

    private static WeekSquad Read(WrittenSeason season, WeekQuestion? week = null)
        => PlanPlayers.Of(SeasonReader.Read(season.Folder), week ?? new WeekQuestion { Monday = s_monday });

    private static QualityNeed Need(WeekSquad squad, string player, TrainedQuality quality) => squad.Players.Single(p => p.Id == player).Needs.Single(n => n.Quality == quality);

    // Squats rise by 4 kg from player to player, runs get slower by 0.01 s: the first of each six is weakest and fastest.
    private static WrittenSeason LiftsAndStopwatch()
    {
        var season = ReportSeasons.ThreeDays();
        foreach (var file in Directory.EnumerateFiles(season.Folder, "jumps.csv", SearchOption.AllDirectories)) File.Delete(file);
        foreach (var file in Directory.EnumerateFiles(season.Folder, "sprints.csv", SearchOption.AllDirectories)) File.WriteAllText(file, File.ReadAllText(file).Replace("electronic", "hand", StringComparison.Ordinal));
        return season;
    }

    [Fact]
    public void Of_LiftsAndAStopwatch_SaysWhatItCan()
    {
        using var season = LiftsAndStopwatch();
        var squad = Read(season);
        Assert.Equal(12, squad.Players.Count);
        var weak = Need(squad, "P01", TrainedQuality.MaximalStrength);
        Assert.True(weak.IsNeed);
        Assert.StartsWith("back squat 1RM 1", weak.Reason, StringComparison.Ordinal);
        Assert.Contains("on 2 March 2026", weak.Reason, StringComparison.Ordinal);
        Assert.False(Need(squad, "P06", TrainedQuality.MaximalStrength).IsNeed);
        Assert.NotNull(Need(squad, "P06", TrainedQuality.Acceleration).Probability);
        Assert.Equal("cannot say: no test of it", Need(squad, "P01", TrainedQuality.ExplosivePower).Reason);
        Assert.Equal("cannot say: no test of it", Need(squad, "P01", TrainedQuality.TrunkControl).Reason);
    }

    [Fact]
    public void Of_MissedTheLatestDay_UsesHisLatestValueAndSaysItsDay()
    {
        using var season = LiftsAndStopwatch();
        season.Keep("testing/2026-03-02", l => !l.StartsWith("P01", StringComparison.Ordinal));
        Assert.Contains("on 15 January 2026", Need(Read(season), "P01", TrainedQuality.MaximalStrength).Reason, StringComparison.Ordinal);
        Assert.Contains("on 2 March 2026", Need(Read(season), "P02", TrainedQuality.MaximalStrength).Reason, StringComparison.Ordinal);
    }

    // 15 January plus 182 days is 16 July.
    [Fact]
    public void Of_HalfAYearLater_TheOldTestIsDroppedWithItsReason()
    {
        using var season = LiftsAndStopwatch();
        season.Keep("testing/2026-03-02", l => !l.StartsWith("P01", StringComparison.Ordinal));
        var squad = Read(season, new WeekQuestion { Monday = new(2026, 7, 20) });
        Assert.Equal("cannot say: the last test of it, back squat 1RM on 15 January 2026, is 186 days old; after 182 it says nothing about today", Need(squad, "P01", TrainedQuality.MaximalStrength).Reason);
        Assert.EndsWith("old: 140 days", Need(squad, "P02", TrainedQuality.MaximalStrength).Reason.Replace("; a need takes 80 %", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    // A day on which two came to catch up compares nobody: the day before still tells where they stand.
    [Fact]
    public void Of_TwoCaughtUpLater_TheDayThatComparesSpeaks()
    {
        using var season = LiftsAndStopwatch();
        season.Day("2026-03-05").Keep("testing/2026-03-05", l => l.StartsWith("P01", StringComparison.Ordinal) || l.StartsWith("P02", StringComparison.Ordinal));
        File.Delete(Path.Combine(season.Folder, "testing", "2026-03-05", "jumps.csv"));
        var need = Need(Read(season), "P01", TrainedQuality.MaximalStrength);
        Assert.Contains("on 2 March 2026", need.Reason, StringComparison.Ordinal);
        Assert.True(need.IsNeed);
    }

    [Fact]
    public void Of_TestsAfterTheWeekBegan_AreNotLookedAt()
    {
        using var season = LiftsAndStopwatch();
        Assert.Contains("on 15 January 2026", Need(Read(season, new WeekQuestion { Monday = new(2026, 2, 23) }), "P01", TrainedQuality.MaximalStrength).Reason, StringComparison.Ordinal);
        Assert.Equal("cannot say: no test of it", Need(Read(season, new WeekQuestion { Monday = new(2026, 1, 5) }), "P01", TrainedQuality.MaximalStrength).Reason);
    }

    [Fact]
    public void Of_CoachsTarget_TakesThePlaceOfTheMiddle()
    {
        using var season = LiftsAndStopwatch();
        var need = Need(Read(season, new WeekQuestion { Monday = s_monday, Targets = new([new("Front row", "back_squat_1rm", 250)]) }), "P06", TrainedQuality.MaximalStrength);
        Assert.True(need.IsNeed);
        Assert.EndsWith("likely worse than the coach's target, 250.0\u2009kg", need.Reason, StringComparison.Ordinal);
    }

    // Bench presses the other way round: the weakest in the squat is the strongest there. That says nothing about his legs.
    [Fact]
    public void Of_WeakSquatAndStrongBench_IsANeedOfTheLegs()
    {
        using var season = LiftsAndStopwatch();
        foreach (var day in (string[])["2026-01-12", "2026-01-15", "2026-03-02"])
            season.Append($"testing/{day}/lifts.csv", WrittenSeason.Rows(i => $"P{i:00};bench_press;1;{160 - 5 * i};1"));
        var needs = Read(season).Players.Single(p => p.Id == "P01").Needs.Where(n => n.Quality == TrainedQuality.MaximalStrength).ToList();
        Assert.Equal([("maximal strength for the legs", true), ("maximal strength for the upper body", false)], needs.Select(n => (n.What, n.IsNeed)));
        Assert.StartsWith("back squat 1RM", needs[0].Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_TestedWhileHurt_DoesNotSpeak()
    {
        using var season = LiftsAndStopwatch();
        season.Write("availability.csv", "athlete_id;from;to;status\nP01;2026-03-01;2026-03-03;injured\nP02;2026-03-01;2026-03-03;limited\nP03;2026-01-01;2026-03-03;ill\n");
        var squad = Read(season);
        Assert.Contains("on 15 January 2026", Need(squad, "P01", TrainedQuality.MaximalStrength).Reason, StringComparison.Ordinal);
        Assert.Contains("; tested while listed as limited", Need(squad, "P02", TrainedQuality.MaximalStrength).Reason, StringComparison.Ordinal);
        Assert.Equal("cannot say: back squat 1RM on 2 March 2026 cannot be compared: tested while listed as ill", Need(squad, "P03", TrainedQuality.MaximalStrength).Reason);
    }
}
