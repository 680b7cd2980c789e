using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Strength;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Strength;

public class StrengthMetricsTests
{
    private static readonly Mass Hundred = Mass.FromKilograms(100);

    [Fact]
    public void All_Identifiers_AreTheCataloguesOwn()
        => Assert.Equal(["back_squat_1rm", "bench_press_1rm", "power_clean_1rm", "back_squat_relative"], StrengthMetrics.All.Select(m => m.Id));

    [Fact]
    public void FromTrials_MeasuredSingle_HasNoFormulaErrorAndNoDoubt()
    {
        var day = Sets.DayOf(Hundred, Sets.Day, Sets.Of("back_squat", 200, 1));

        Assert.Equal([new TrialValue(200) { HowMade = "measured" }], StrengthMetrics.BackSquat.FromTrials(day));
    }

    [Fact]
    public void FromTrials_OtherLiftOnly_IsEmpty()
    {
        var day = Sets.DayOf(Hundred, Sets.Day, Sets.Of("front_squat", 200, 1));

        Assert.All(StrengthMetrics.All, m => Assert.Empty(m.FromTrials(day)));
    }

    // Brzycki at 5 repetitions: 1.125 of the load (computed from the published formula with independent arithmetic).
    [Fact]
    public void FromTrials_FiveRepetitions_GivesOneEstimateWithError()
    {
        var value = Assert.Single(StrengthMetrics.BenchPress.FromTrials(Sets.DayOf(null, null, Sets.Of("bench_press", 100, 5))));

        Assert.Equal(112.5, value.Value, 3);
        Assert.InRange(value.StandardError!.Value, 2, 6);
        Assert.Equal("", value.Series);
        Assert.Null(value.Doubt);
        Assert.Equal("estimated from 5 repetitions", value.HowMade);
    }

    // The fifth repetition of 100 kg makes 36/32 − 36/33 of it, 3.409 kg; 1/√12 of that is 0.984 kg. Scatter 112.5 · 14.1/310 · √(4/11.3) = 3.044 kg holds it.
    [Fact]
    public void FromTrials_FiveRepetitionsToFailure_SplitsTheError()
    {
        var value = Assert.Single(StrengthMetrics.BenchPress.FromTrials(Sets.DayOf(null, null, Sets.Of("bench_press", 100, 5))));

        var error = value.Equation!;
        Assert.Equal(0.984, error.Fresh, 3);
        Assert.Equal(3.044, Math.Sqrt(error.Personal * error.Personal + error.Fresh * error.Fresh), 3);
        Assert.Equal(value.StandardError!.Value, Math.Sqrt(error.Variance), 9);
        Assert.Equal((5.0, "Brzycki, beyond 10 repetitions Epley"), (error.Repetitions!.Value, error.Equation));
    }

    // With a reserve the whole repetition is in doubt: 3.409 kg; the scatter then is personal altogether.
    [Fact]
    public void FromTrials_RepetitionsInReserve_AreMisjudgedAnewEachDay()
    {
        var value = Assert.Single(StrengthMetrics.BenchPress.FromTrials(Sets.DayOf(null, null, Sets.Of("bench_press", 100, 3, 2))));

        Assert.Equal(3.409, value.Equation!.Fresh, 3);
        Assert.Equal(3.044, value.Equation.Personal, 3);
        Assert.Equal("estimated from 5 repetitions", value.HowMade);
    }

    [Fact]
    public void RelativeBackSquat_FiveRepetitions_HasTheErrorPerBodyMass()
    {
        var value = Assert.Single(StrengthMetrics.RelativeBackSquat.FromTrials(Sets.DayOf(Mass.FromKilograms(80), Sets.Day, Sets.Of("back_squat", 100, 5))));

        Assert.Equal(0.984 / 80, value.Equation!.Fresh, 5);
        Assert.Equal(value.StandardError!.Value, Math.Sqrt(value.Equation.Variance), 9);
    }

    [Fact]
    public void FromTrials_CleanOfFourRepetitions_IsDoubtful()
    {
        var value = Assert.Single(StrengthMetrics.PowerClean.FromTrials(Sets.DayOf(null, null, Sets.Of("power_clean", 100, 4))));

        Assert.Equal("estimated from 4 repetitions, more than 3", value.Doubt);
    }

    [Fact]
    public void RelativeBackSquat_KnownMasses_IsRatioWithUnit()
    {
        var value = Assert.Single(StrengthMetrics.RelativeBackSquat.FromTrials(Sets.DayOf(Mass.FromKilograms(80), Sets.Day, Sets.Of("back_squat", 160, 1))));

        Assert.Equal(new TrialValue(2) { HowMade = "measured" }, value);
        Assert.Equal("kg/kg", StrengthMetrics.RelativeBackSquat.Unit);
    }

    [Fact]
    public void RelativeBackSquat_NeverWeighed_IsEmpty()
        => Assert.Empty(StrengthMetrics.RelativeBackSquat.FromTrials(Sets.DayOf(null, null, Sets.Of("back_squat", 160, 1))));

    [Fact]
    public void RelativeBackSquat_OldBodyMassAndDoubtfulSet_TravelTogether()
    {
        var day = Sets.DayOf(Hundred, Sets.Day.AddDays(-40), Sets.Of("back_squat", 120, 12));

        Assert.Equal("estimated from 12 repetitions, more than 10; body mass from 21 January 2026", Assert.Single(StrengthMetrics.RelativeBackSquat.FromTrials(day)).Doubt);
    }

    [Fact]
    public void All_EveryMetric_IsFilledIn()
        => Assert.All(StrengthMetrics.All, m =>
        {
            Assert.NotEmpty(m.Meaning);
            Assert.NotEmpty(m.Formula);
            Assert.NotEmpty(m.Sources);
            Assert.True(m.PlausibleLow < m.PlausibleHigh);
            Assert.Equal(TrialRule.Best, m.Rule);
            Assert.Equal(Direction.Higher, m.Better);
            Assert.NotNull(m.PublishedError);
        });
}
