using Analytics.Metrics.Strength;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Strength;

public class FormulaSpreadTests
{
    private static readonly Mass Hundred = Mass.FromKilograms(100);

    // Lowest and highest from tests/oracles/strength/one_rep_max_100.csv; the standard deviation worked out independently with 40-digit decimals.
    [Theory]
    [InlineData(5, 111.111, 119.011, 2.84587)]
    [InlineData(10, 125, 134.747, 4.28282)]
    [InlineData(15, 131.102, 163.636, 11.66233)]
    public void Of_Squat_SpansTheGeneralEquations(double repetitions, double lowest, double highest, double deviation)
    {
        var spread = FormulaSpread.Of(Lifts.BackSquat, Hundred, repetitions);

        Assert.Equal(8, spread.Values.Count);
        Assert.Equal(lowest, spread.Lowest.Kilograms, 5e-4);
        Assert.Equal(highest, spread.Highest.Kilograms, 5e-4);
        Assert.Equal(deviation, spread.StandardDeviation.Kilograms, 1e-5);
    }

    [Fact]
    public void Of_BenchOfFive_AddsTheFiveRepEquation()
        => Assert.Equal(
            ["Epley", "Brzycki", "Lander", "Lombardi", "Mayhew et al.", "O'Conner et al.", "Wathen", "Adams", "Reynolds et al. bench press 5RM"],
            FormulaSpread.Of(Lifts.BenchPress, Hundred, 5).Values.Select(v => v.Formula.Name));

    [Fact]
    public void Of_BenchWith225Pounds_AddsTheFootballEquation()
        => Assert.Contains(FormulaSpread.Of(Lifts.BenchPress, Mass.FromPounds(225), 12).Values, v => v.Formula == FootballBenchFormulas.Mayhew);

    [Fact]
    public void Of_TwelveRepetitions_MarksThoseOutsideTheirRange()
        => Assert.Equal(
            ["Mayhew et al.", "Wathen"],
            FormulaSpread.Of(Lifts.BackSquat, Hundred, 12).Values.Where(v => v.InRange).Select(v => v.Formula.Name));

    [Fact]
    public void Of_BeyondABreakdown_LeavesThatEquationOut()
    {
        var names = FormulaSpread.Of(Lifts.BackSquat, Hundred, 38).Values.Select(v => v.Formula.Name).ToList();

        Assert.DoesNotContain("Brzycki", names);
        Assert.DoesNotContain("Lander", names);
        Assert.Contains("Adams", names);
    }

    [Fact]
    public void Of_HalfARepetition_IsRefused()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => FormulaSpread.Of(Lifts.BackSquat, Hundred, 0.5));

        Assert.Equal("repetitions", error.ParamName);
        Assert.Contains("got 0.5", error.Message, StringComparison.Ordinal);
    }
}
