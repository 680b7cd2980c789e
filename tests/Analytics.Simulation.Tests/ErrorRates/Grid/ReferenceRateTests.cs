using Analytics.Simulation.ErrorRates.Grid;
using Analytics.Simulation.ErrorRates.Grid.Rates;

namespace Analytics.Simulation.Tests.ErrorRates.Grid;

/// <summary>Rates without a plain closed form against simulations made elsewhere (R), each with the error of both.</summary>
public class ReferenceRateTests
{
    // R, 20,000 series each, no trend, two-sided 5 %.
    [Theory]
    [InlineData("\u03C6 0.2, 20 values", 0.09405)]
    [InlineData("\u03C6 0.6, 12 values", 0.2397)]
    public void MannKendall_CarryOver_FindsAsManyFalseTrends(string label, double rate) => AssertNear<MannKendallTrends>(label, rate);

    [Theory]
    [InlineData("\u03C6 0.2, 20 values", 0.1024)]
    [InlineData("\u03C6 0.4, 40 values", 0.1997)]
    public void LeastSquares_CarryOver_FindsAsManyFalseTrends(string label, double rate) => AssertNear<LeastSquaresTrends>(label, rate);

    // R: the interval of the variance of responses holds it in 98.87 % when there are none and in 96.4 % at an SD of one typical error.
    [Theory]
    [InlineData("interval, 15 athletes, 15 controls, true SD 0 TE", 0.9887)]
    [InlineData("interval, 15 athletes, 15 controls, true SD 1 TE", 0.964)]
    public void IndividualResponses_FewAthletes_CoverMoreThanTheySay(string label, double rate) => AssertNear<ResponseRates>(label, rate);

    // R: 2*pt(-k/sqrt(1+1/m), m-1) and 2*pt(-1.96, m-1).
    [Theory]
    [InlineData("mean \u00B1 2 SD, 10 tests before", 0.088897932)]
    [InlineData("mean \u00B1 3 SD, 5 tests before", 0.051979694)]
    [InlineData("1.96 SD \u221A(1 + 1/m), 3 tests before", 0.18905731)]
    public void OwnBaseline_FewTests_FlagsAsComputedElsewhere(string label, double rate) => AssertNear<OwnBaselineFlag>(label, rate);

    // R, exact conditional rate over 400,000 baselines: nine times the stated 0.27 % with 10 values before.
    [Theory]
    [InlineData("5 values before", 0.05703)]
    [InlineData("10 values before", 0.02335)]
    public void IndividualsChart_FewValues_FlagsAsManyAsComputedElsewhere(string label, double rate) => AssertNear<IndividualsChartFlag>(label, rate);

    // Exact for independent tests [benjaminihochberg1995]: 5 % times the share of true nulls.
    [Theory]
    [InlineData("20 of 20 without effect", 0.05)]
    [InlineData("5 of 20 without effect", 0.0125)]
    public void FalseDiscovery_IndependentTests_IsExact(string label, double rate) => AssertNear<FalseDiscovery>(label, rate);

    private static void AssertNear<T>(string label, double rate) where T : RateUnderTest, new()
    {
        var count = GridStudy.Run([], [], [new T()], 16_000, 5, 2, only: c => c == label).Rates.Single().Count;
        var error = Math.Sqrt(count.MonteCarloError * count.MonteCarloError + rate * (1 - rate) / 20_000);
        Assert.InRange((count.Rate - rate) / error, -4, 4);
    }
}
