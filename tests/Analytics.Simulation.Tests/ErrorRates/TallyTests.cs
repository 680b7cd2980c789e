using Analytics.Simulation.ErrorRates;

namespace Analytics.Simulation.Tests.ErrorRates;

public class TallyTests
{
    /// <summary>Two seasons, 3 of 4 and 1 of 4: rate 0.5; residuals +1 and -1, so SE = sqrt(2 · 2/1)/8 = 0.25.</summary>
    [Fact]
    public void MonteCarloError_TwoSeasons_IsByHand()
    {
        var tally = new Tally();
        foreach (var held in new[] { true, true, true, false }) tally.Add(1, held);
        foreach (var held in new[] { true, false, false, false }) tally.Add(2, held);
        Assert.Equal(0.5, tally.Rate);
        Assert.Equal(0.25, tally.MonteCarloError, 1e-15);
    }

    [Fact]
    public void Rate_NothingAsked_IsNoNumber()
    {
        Assert.True(double.IsNaN(new Tally().Rate));
        Assert.True(double.IsNaN(new Tally().MonteCarloError));
    }
}
