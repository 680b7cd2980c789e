using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Strength;
using Analytics.Metrics.Tests.Strength;
using Analytics.Metrics.Trials;
using static Analytics.Metrics.Tests.Profile.Invented;

namespace Analytics.Metrics.Tests.Profile;

/// <summary>Half-widths from R 4.2.2: qt(.975, df) √(TE² + equation²).</summary>
public class DayValueIntervalTests
{
    [Fact]
    public void Interval_Measured_IsTheTypicalErrorOnly()
    {
        var found = Of(Number(100), new(null, 1, "key"))!;
        Assert.Equal((100 - 1.959964, 100 + 1.959964), (Math.Round(found.Interval.Low, 6), Math.Round(found.Interval.High, 6)));
        Assert.Equal("published error [key]", found.Basis);
        Assert.True(found.HoldsDayToDayVariation);
    }

    // 1 + 1.2² + 0.5² + 0.4² = 2.85.
    [Fact]
    public void Interval_Estimated_AddsTheEquation()
    {
        var found = Of(Estimated(100, 1.2, 0.5, 0.4), new(null, 1, "key"))!;
        Assert.Equal(100 + 3.30880003007, found.Interval.High, 9);
        Assert.Equal("published error [key], and the error of the equation", found.Basis);
    }

    // TE 2 of 10 athletes and an equation's variance of 3: 9 (7/4)² = 27.5625 degrees.
    [Fact]
    public void Interval_ErrorOfFewAthletes_HasWelchDegrees()
    {
        var found = Of(Estimated(100, Math.Sqrt(3)), new(null, 2, "key", 10))!;
        Assert.Equal(27.5625, found.DegreesOfFreedom, 9);
        Assert.Equal(100 + 5.42345409259, found.Interval.High, 9);
    }

    // A retest holds the fit's error: 1 only, not √(1 + 2²).
    [Fact]
    public void Interval_FitWithARetest_DoesNotCountTheFitTwice()
        => Assert.Equal(1, Of(Number(100, error: 2), new(null, 1, "key"))!.StandardError, 12);

    // No retest: the fit's own error 2 with 6 degrees; qt(.975, 6) 2 = 4.89382370229.
    [Fact]
    public void Interval_FitWithoutARetest_FallsBackOnTheFitAndSaysSo()
    {
        var found = Of(Number(100, error: 2) with { Degrees = 6 }, null)!;
        Assert.Equal(100 + 4.89382370229, found.Interval.High, 9);
        Assert.False(found.HoldsDayToDayVariation);
        Assert.Equal("error of the value's own fit, day-to-day variation missing", found.Basis);
    }

    [Fact]
    public void Interval_EquationOnly_IsMarkedAsWithoutDayToDayVariation()
    {
        var found = Of(Estimated(100, 2), null)!;
        Assert.Equal((2.0, false, "error of the equation"), (found.StandardError, found.HoldsDayToDayVariation, found.Basis));
    }

    [Fact]
    public void Interval_NothingKnown_IsNull() => Assert.Null(Of(Number(100), null));

    // 100 kg × 5: SE of the equation 4.2 kg (docs/methods/strength.md), 4.2 % of 112.5 kg = 4.725 kg; together 6.32 kg.
    [Fact]
    public void Interval_BackSquatFromFiveRepetitions_IsWiderThanMeasured()
    {
        var estimated = Squat(100, 5);
        var measured = Squat(112.5, 1);
        Assert.Equal(6.32, estimated.StandardError, 1);
        Assert.Equal(4.725, measured.StandardError, 3);
        Assert.Equal(103.24, measured.Interval.Low, 2);
    }

    [Fact]
    public void HowMade_OfADay_SaysMeasuredOrEstimated()
    {
        Assert.Equal("estimated from 5 repetitions", Day(100, 5).HowMade);
        Assert.Equal("measured", Day(100, 1).HowMade);
        Assert.Null(Day(100, 1).Equation);
    }

    // Two attempts of a mean metric by the same equation: what lasts is in both, 2; what is fresh averages, √(1 + 1)/2.
    [Fact]
    public void Equation_MeanOfAttempts_AveragesOnlyTheFreshError()
    {
        var value = MetricDay.Of(Metric(rule: TrialRule.Mean), [Invented.Day("a1", March, Estimated(100, 2, 1, 1), Estimated(104, 2, 1, 1))]).For("a1")!;
        Assert.Equal((2.0, 1.0), (value.Equation!.Personal, value.Equation.Shared));
        Assert.Equal(0.707107, value.Equation.Fresh, 6);
        Assert.Equal("estimated from 5 repetitions", value.HowMade);
    }

    private static DayValueInterval? Of(NumberTrial trial, PublishedError? error)
    {
        var metric = Metric(published: error);
        IReadOnlyList<AthleteDay> days = [Invented.Day("a1", March, trial)];
        return MetricDay.Of(metric, days).For("a1")!.Interval(MetricReliability.Of(metric, "", [], [days]));
    }

    private static DayValue Day(double kilograms, int repetitions)
        => MetricDay.Of(StrengthMetrics.BackSquat, [Sets.DayOf(null, null, Sets.Of("back_squat", kilograms, repetitions))]).For("a1")!;

    private static DayValueInterval Squat(double kilograms, int repetitions)
        => Day(kilograms, repetitions).Interval(MetricReliability.Of(StrengthMetrics.BackSquat, "", [], []))!;
}
