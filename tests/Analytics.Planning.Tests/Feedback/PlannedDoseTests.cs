using Analytics.Planning.Exercises;
using Analytics.Planning.Feedback;
using Analytics.Quantities;
using static Analytics.Planning.Tests.Feedback.Log;

namespace Analytics.Planning.Tests.Feedback;

/// <summary>Planned sets by quality, and those logged.</summary>
public class PlannedDoseTests
{
    private static readonly ExerciseCatalogue s_exercises = new(
    [
        Exercise("back_squat", TrainedQuality.MaximalStrength),
        Exercise("bench_press", TrainedQuality.MaximalStrength),
        Exercise("power_clean", TrainedQuality.ExplosivePower),
    ]);

    private static Exercise Exercise(string id, TrainedQuality quality)
        => new() { Id = id, Name = id, Pattern = MovementPattern.Squat, Quality = quality, RepetitionTime = Duration.FromSeconds(3) };

    private static PlannedDoses Doses(IEnumerable<Analytics.Planning.Plans.EarlierChoice> plan, params LoggedSession[] log)
        => PlannedDoses.Between(PlanReadings.Of(plan, log, Groups), s_exercises, Day(10), Day(24));

    // Strength: 5 squat sets on the 16th (3 logged) and 4 bench sets on the 23rd (6 logged, so 4 of them and 2 others): 7 of 9. Power: 5 planned, none logged.
    [Fact]
    public void Between_ByHand()
    {
        var doses = Doses([Plan(16), Plan(23, 4, exercise: "bench_press"), Plan(18, exercise: "power_clean")],
            Did(16, 7, "a", (3, 5, 100)), Did(23, 7, "a", "bench_press", (2, 5, 40), (4, 5, 80)));
        Assert.Equal([new("a", TrainedQuality.ExplosivePower, 5, 0, 0), new("a", TrainedQuality.MaximalStrength, 9, 7, 2)], doses.Doses);
        Assert.Equal(7.0 / 9, doses.Doses[1].LoggedShare!.Value, 12);
    }

    // The 9th is before the stretch and the 24th is the day after it.
    [Fact]
    public void Between_OutsideTheStretch_IsNotCounted()
    {
        Assert.Empty(Doses([Plan(9), Plan(24)], All(9), All(24)).Doses);
        Assert.Equal(5, Assert.Single(Doses([Plan(10)], All(9)).Doses).LoggedSets);
        // The log of the 10th belongs to the row of the 9th, which lies outside.
        Assert.Empty(Doses([Plan(9)], All(10)).Doses);
    }

    [Fact]
    public void Between_NothingPlanned_HasNoShare()
    {
        var dose = Assert.Single(Doses([], All(16)).Doses);
        Assert.Equal((0, 0, 5), (dose.PlannedSets, dose.LoggedSets, dose.OtherSets));
        Assert.Null(dose.LoggedShare);
    }

    [Fact]
    public void Between_WhatCannotBeCounted_IsTold()
    {
        var doses = Doses([Plan(16, sets: null), Plan(18, exercise: "mystery")], Did(16, 7, "a", "other", (1, 1, 1)));
        Assert.Equal(["mystery", "other"], doses.UnknownExercises);
        Assert.Equal(1, doses.WithoutSets);
        Assert.Empty(doses.Doses);
    }

    [Fact]
    public void Between_DaysTheWrongWayRound_AreRefused()
        => Assert.Throws<ArgumentException>(() => PlannedDoses.Between(PlanReadings.Of([], [], Groups), s_exercises, Day(10), Day(10)));
}
