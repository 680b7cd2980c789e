using Analytics.Planning.Dose;
using Analytics.Planning.Exercises;
using Analytics.Planning.Rules;
using Analytics.Planning.Schemes;
using Analytics.Quantities;

namespace Analytics.Planning.Tests.Dose;

/// <summary>Times by hand; a repetition takes 3 s where nothing else is said, and what has no bar needs no warm-up sets.</summary>
public sealed class ExerciseTimeTests
{
    private static readonly Exercise NoBar = Made.Squat with { Implement = "dumbbell" };

    // 4 sets of 8 × 3 s, three rests of 120 s: 96 + 360.
    [Fact]
    public void Straight_SetsAndTheRestsBetween() => Assert.Equal(456, Seconds(NoBar, Made.Sets(4, 8, 70)));

    // Each side: 4 × 48 + 360.
    [Fact]
    public void EachSide_TakesTwiceTheTimeOfASet() => Assert.Equal(552, Seconds(NoBar with { IsUnilateral = true }, Made.Sets(4, 8, 70)));

    // Warm-up of a heavy lift: 5, 3, 1 repetitions are 27 s, and three rests of 60 s; then 4 × 9 + 360.
    [Fact]
    public void Barbell_HasItsWarmUpSets() => Assert.Equal(207 + 396, Seconds(Made.Squat, Made.Sets(4, 3, 85)));

    // One warm-up set of 5: 15 + 60; then 5 × 9 + 4 × 120.
    [Fact]
    public void Ramp_WarmsUpByItself() => Assert.Equal(75 + 525, Seconds(Made.Squat, Made.Ramp(5, 3, 60, 85)));

    [Fact]
    public void OneSet_HasNoRest() => Assert.Equal(15, Seconds(NoBar, Made.Sets(1, 5, 70)));

    // Four singles with 20 s between: 12 + 60 = 72 a set; 3 sets and 2 rests of 120: 456.
    [Fact]
    public void Cluster_RestsInsideTheSet() => Assert.Equal(456, Seconds(NoBar, Cluster));

    // Each side rests for itself: 144 a set.
    [Fact]
    public void Cluster_OfEachSide_RestsTwice() => Assert.Equal(3 * 144 + 240, Seconds(NoBar with { IsUnilateral = true }, Cluster));

    // 2 × 3 s, 30 s, 4 jumps of 2 s: 44 s; 3 of them and 2 rests of 120.
    [Fact]
    public void Contrast_HasRestAndJumpInsideTheSet()
    {
        Assert.Equal(372, ExerciseTime.Of(NoBar, Contrast, Made.Jump).Seconds);
        // Jumps of each leg: 8 × 2 s.
        Assert.Equal(372 + 24, ExerciseTime.Of(NoBar, Contrast, Made.Jump with { IsUnilateral = true }).Seconds);
        Assert.Equal(44, ExerciseTime.OfSet(NoBar, Contrast, Made.Jump).Seconds);
    }

    // Nothing follows the lift, so nothing is waited for: 3 × 6 + 240.
    [Fact]
    public void Contrast_WithoutItsJump_IsStraight() => Assert.Equal(258, Seconds(NoBar, Contrast));

    // Eight doubles on the minute: seven full minutes and the last set of 6 s.
    [Fact]
    public void OnTheMinute_SevenMinutesAndTheLastSet() => Assert.Equal(7 * 60 + 6, Seconds(NoBar, EachMinute(8, 2)));

    [Fact]
    public void OnTheMinute_SetLongerThanTheInterval_IsTold()
    {
        // 25 × 3 s = 75 s in 60 s: no rest, and 15 s over.
        Assert.Equal(15, ExerciseTime.Overrun(NoBar, EachMinute(4, 25))!.Value.Seconds);
        Assert.Equal(300, Seconds(NoBar, EachMinute(4, 25)));
        Assert.Null(ExerciseTime.Overrun(NoBar, EachMinute(4, 20)));
        Assert.Null(ExerciseTime.Overrun(NoBar, Made.Sets(4, 25)));
    }

    // 10 min of warm-up, two exercises of 456 s, one change of 2 min: 600 + 912 + 120 s = 27.2 min.
    [Fact]
    public void Session_WarmUpExercisesAndTheChangesBetween()
    {
        var item = Made.Item(NoBar, Made.Sets(4, 8, 70));
        Assert.Equal(27.2, SessionTime.Of([item, item], PlanRules.Standard).Minutes, 9);
        Assert.Equal(10, SessionTime.Of([], PlanRules.Standard).Minutes, 9);
        Assert.Equal(17.2, SessionTime.Of([item, item], PlanRules.With([PlanRules.Standard[RuleIds.WarmUpMinutes] with { Handling = RuleHandling.Off }])).Minutes, 9);
    }

    private static SetScheme Cluster => Made.Sets(3, 4, 85) with { Kind = SchemeKind.Cluster, InnerRest = Duration.FromSeconds(20) };

    private static SetScheme Contrast => Made.Sets(3, 2, 85) with { Kind = SchemeKind.Contrast, InnerRest = Duration.FromSeconds(30), PartnerRepetitions = 4 };

    private static SetScheme EachMinute(int sets, int repetitions) => Made.Sets(sets, repetitions, 75) with { Kind = SchemeKind.OnTheMinute, Interval = Duration.FromMinutes(1) };

    private static double Seconds(Exercise exercise, SetScheme scheme) => Math.Round(ExerciseTime.Of(exercise, scheme).Seconds, 9);
}
