using Analytics.Metrics.Strength;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Strength;

public class OneRepMaxTests
{
    [Theory]
    [InlineData(null)]
    [InlineData(0.0)]
    public void Estimate_OneRepetitionToFailure_IsMeasured(double? reserve)
    {
        var result = OneRepMax.Estimate(Sets.Of("back_squat", 180, 1, reserve));

        Assert.True(result.IsMeasured);
        Assert.Equal(Mass.FromKilograms(180), result.Value);
        Assert.Equal("measured, one repetition", result.Method);
        Assert.Equal(1, result.N);
        Assert.Null(result.StandardError);
        Assert.Null(result.Interval);
        Assert.Null(result.Spread);
        Assert.Null(result.Formula);
        Assert.Null(result.Doubt);
    }

    // Even with an equation asked for: none is needed for a load that went up once.
    [Fact]
    public void Estimate_OneRepetitionWithAFormula_IsStillMeasured()
        => Assert.Equal(Mass.FromKilograms(180), OneRepMax.Estimate(Sets.Of("back_squat", 180, 1), GeneralFormulas.Epley).Value);

    // Value, error and interval worked out independently with 40-digit decimals from the published equations and from the figures in
    // OneRepMaxError: 14.1 lb of 310.0 lb at 12.3 repetitions, the deviation between the equations, one repetition for a judged reserve.
    [Theory]
    [InlineData("back_squat", 100, 3, null, 105.8824, 3.45392, 100, 112.6519)]
    [InlineData("back_squat", 100, 5, null, 112.5, 4.16741, 104.3320, 120.6680)]
    [InlineData("bench_press", 100, 5, null, 112.5, 4.06297, 104.5367, 120.4633)]
    [InlineData("back_squat", 100, 10, null, 133.3333, 6.90182, 119.8060, 146.8606)]
    [InlineData("back_squat", 100, 15, null, 150, 13.91688, 122.7234, 177.2766)]
    [InlineData("back_squat", 140, 5, 2.0, 168, 8.76535, 150.8202, 185.1798)]
    [InlineData("back_squat", 100, 1, 1.0, 102.8571, 4.14127, 100, 110.9739)]
    [InlineData("back_squat", 100, 1, 0.5, 101.4085, 3.97149, 100, 109.1924)]
    public void Estimate_SeveralRepetitions_GivesValueErrorAndInterval(string lift, double load, int repetitions, double? reserve, double value, double error, double low, double high)
    {
        var result = OneRepMax.Estimate(Sets.Of(lift, load, repetitions, reserve));

        Assert.False(result.IsMeasured);
        Assert.Equal(value, result.Value.Kilograms, 5.1e-5);
        Assert.Equal(error, result.StandardError!.Value.Kilograms, 1e-5);
        Assert.Equal(low, result.Interval!.Value.Low, 1e-4);
        Assert.Equal(high, result.Interval!.Value.High, 1e-4);
        Assert.Equal(0.95, result.Interval!.Value.Level);
        Assert.Equal(repetitions + (reserve ?? 0), result.EffectiveRepetitions);
    }

    [Fact]
    public void Estimate_WithReserve_SaysSoInTheMethod()
    {
        Assert.Equal("estimated with Brzycki from 5 repetitions and 2 in reserve", OneRepMax.Estimate(Sets.Of("back_squat", 140, 5, 2)).Method);
        Assert.Equal("estimated with Brzycki from 1 repetition and 0.5 in reserve", OneRepMax.Estimate(Sets.Of("back_squat", 140, 1, 0.5)).Method);
        Assert.Equal("estimated with Epley from 12 repetitions", OneRepMax.Estimate(Sets.Of("back_squat", 140, 12)).Method);
    }

    // Reserve counts as repetitions: five with two left is a set of seven in Brzycki, 83.33 % of 1RM.
    [Fact]
    public void Estimate_FiveWithTwoInReserve_IsThatOfSeven()
    {
        var judged = OneRepMax.Estimate(Sets.Of("back_squat", 140, 5, 2));
        var done = OneRepMax.Estimate(Sets.Of("back_squat", 140, 7));

        Assert.Equal(0.8333, judged.Load / judged.Value, 5e-5);
        Assert.Equal(done.Value, judged.Value);
        Assert.True(judged.StandardError > done.StandardError);
    }

    [Theory]
    [InlineData("back_squat", 10, null, null)]
    [InlineData("back_squat", 11, null, "estimated from 11 repetitions, more than 10")]
    [InlineData("back_squat", 9, 1.5, "estimated from 10.5 repetitions, more than 10")]
    [InlineData("back_squat", 5, 3.0, null)]
    [InlineData("back_squat", 5, 4.0, "judged 4 repetitions from failure")]
    [InlineData("power_clean", 3, null, null)]
    [InlineData("power_clean", 4, null, "estimated from 4 repetitions, more than 3")]
    [InlineData("power_clean", 2, 4.0, "estimated from 6 repetitions, more than 3; judged 4 repetitions from failure")]
    public void Estimate_FarFromASingle_IsDoubtful(string lift, int repetitions, double? reserve, string? doubt)
    {
        var result = OneRepMax.Estimate(Sets.Of(lift, 100, repetitions, reserve));

        Assert.Equal(doubt, result.Doubt);
        Assert.Equal(doubt is not null, result.IsDoubtful);
    }

    [Fact]
    public void Estimate_BelowTheRangeOfTheChosenFormula_IsDoubtful()
        => Assert.Equal("outside the range of Lander", OneRepMax.Estimate(Sets.Of("back_squat", 100, 1, 0.5), GeneralFormulas.Lander).Doubt);

    [Fact]
    public void Estimate_FormulaOfAnotherLift_IsRefused()
    {
        var error = Assert.Throws<ArgumentException>(() => OneRepMax.Estimate(Sets.Of("back_squat", 100, 5), FiveRepMaxFormulas.BenchPress));

        Assert.Equal("formula", error.ParamName);
        Assert.Contains("made for bench_press; the set is back_squat", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 5, null, "above 0 kg; got 0 kg")]
    [InlineData(100, 0, null, "1 or more; got 0")]
    [InlineData(100, -3, null, "1 or more; got -3")]
    [InlineData(100, 5, -1.0, "0 to 10; got -1")]
    [InlineData(100, 5, 10.5, "0 to 10; got 10.5")]
    [InlineData(100, 5, double.NaN, "0 to 10; got NaN")]
    public void Estimate_SetOutOfRange_IsRefused(double load, int repetitions, double? reserve, string text)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => OneRepMax.Estimate(Sets.Of("back_squat", load, repetitions, reserve)));

        Assert.Equal("set", error.ParamName);
        Assert.Contains(text, error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(3)]
    [InlineData(12)]
    [InlineData(45)]
    public void Estimate_LoadDoubled_DoublesValueAndError(int repetitions)
    {
        var one = OneRepMax.Estimate(Sets.Of("back_squat", 80, repetitions));
        var two = OneRepMax.Estimate(Sets.Of("back_squat", 160, repetitions));

        Assert.Equal(2, two.Value / one.Value, 1e-12);
        Assert.Equal(2, two.StandardError!.Value / one.StandardError!.Value, 1e-12);
    }

    [Fact]
    public void ToEstimate_FiveRepetitions_CarriesUnitErrorAndMethod()
    {
        var estimate = OneRepMax.Estimate(Sets.Of("back_squat", 100, 5)).ToEstimate();

        Assert.Equal(112.5, estimate.Value, 1e-12);
        Assert.Equal(4.16741, estimate.StandardError!.Value, 1e-5);
        Assert.Equal(1, estimate.N);
        Assert.Equal("estimated with Brzycki from 5 repetitions", estimate.Method);
    }
}
