using Analytics.Metrics.Strength;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Strength;

public class OneRepMaxFormulaTests
{
    private static readonly Mass Hundred = Mass.FromKilograms(100);

    [Theory]
    [InlineData(37, "fewer than 37; got 37")]
    [InlineData(40, "fewer than 37; got 40")]
    [InlineData(0, "got 0")]
    [InlineData(0.5, "got 0.5")]
    [InlineData(double.NaN, "got NaN")]
    [InlineData(double.PositiveInfinity, "got Infinity")]
    public void Estimate_BrzyckiWhereItHasNoMeaning_IsRefused(double repetitions, string text)
        => AssertRefused(GeneralFormulas.Brzycki, Hundred, repetitions, "repetitions", "Brzycki is defined for", text);

    [Theory]
    [InlineData("Brzycki", 36.999)]
    [InlineData("Lander", 37.922)]
    [InlineData("Adams", 49.999)]
    public void Estimate_JustBeforeTheBreakdown_IsFiniteAndHuge(string name, double repetitions)
        => Assert.True(Named(name).Estimate(Hundred, repetitions) > Mass.FromKilograms(1000));

    // 101.3 / 2.67123 = 37.9226; at and beyond it the equation would turn negative.
    [Theory]
    [InlineData("Lander", 37.923, "fewer than 37.923")]
    [InlineData("Adams", 50, "fewer than 50")]
    public void Estimate_FromTheBreakdownOn_IsRefused(string name, double repetitions, string text)
        => AssertRefused(Named(name), Hundred, repetitions, "repetitions", name, text);

    [Fact]
    public void Estimate_LoadOfZero_IsRefused() => AssertRefused(GeneralFormulas.Epley, Mass.Zero, 5, "load", "above 0 kg", "got 0 kg");

    [Fact]
    public void Estimate_OtherLoadThanTheFormulas_IsRefused()
        => AssertRefused(FootballBenchFormulas.Mayhew, Mass.FromPounds(185), 10, "load", "225 lb only", "got 185 lb");

    [Theory]
    [InlineData(4)]
    [InlineData(6)]
    [InlineData(10)]
    public void Estimate_FiveRepFormulaForAnotherSet_IsRefused(double repetitions)
        => AssertRefused(FiveRepMaxFormulas.BenchPress, Hundred, repetitions, "repetitions", "5 to 5", $"got {repetitions}");

    [Fact]
    public void AppliesTo_OnlyWhereTheEquationMaySpeak()
    {
        Assert.True(GeneralFormulas.Epley.AppliesTo("deadlift", Hundred, 60));
        Assert.False(GeneralFormulas.Brzycki.AppliesTo("deadlift", Hundred, 37));
        Assert.False(GeneralFormulas.Epley.AppliesTo("deadlift", Hundred, 0.9));
        Assert.True(FiveRepMaxFormulas.BenchPress.AppliesTo("bench_press", Hundred, 5));
        Assert.False(FiveRepMaxFormulas.BenchPress.AppliesTo("back_squat", Hundred, 5));
        Assert.False(FiveRepMaxFormulas.BenchPress.AppliesTo("bench_press", Hundred, 6));
        Assert.True(FootballBenchFormulas.Mayhew.AppliesTo("bench_press", Mass.FromKilograms(102), 12));
        Assert.False(FootballBenchFormulas.Mayhew.AppliesTo("bench_press", Hundred, 12));
    }

    private static OneRepMaxFormula Named(string name) => OneRepMaxFormulas.All.Single(f => f.Name == name);

    private static void AssertRefused(OneRepMaxFormula formula, Mass load, double repetitions, string parameter, params string[] texts)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => formula.Estimate(load, repetitions));
        Assert.Equal(parameter, error.ParamName);
        Assert.All(texts, text => Assert.Contains(text, error.Message, StringComparison.Ordinal));
    }
}
