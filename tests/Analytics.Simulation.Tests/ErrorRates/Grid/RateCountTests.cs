using Analytics.Simulation.ErrorRates.Grid;

namespace Analytics.Simulation.Tests.ErrorRates.Grid;

public class RateCountTests
{
    /// <summary>3 of 4: √(p(1 − p)/(N − 1)) = √(0.1875/3) = 0.25.</summary>
    [Fact]
    public void MonteCarloError_OneQuestionADraw_IsByHand()
    {
        var count = new RateCount();
        foreach (var held in new[] { true, true, true, false }) count.Add(held);
        Assert.Equal(0.75, count.Rate);
        Assert.Equal(0.25, count.MonteCarloError, 1e-15);
    }

    /// <summary>Two squads, 3 of 4 and 1 of 4: residuals +1 and −1, so √(2 · 2/1)/8 = 0.25; eight independent answers would give 0.19.</summary>
    [Fact]
    public void MonteCarloError_SquadsAsDraws_IsByHand()
    {
        var count = new RateCount();
        count.Add(new Share(3, 4));
        count.Add(new Share(1, 4));
        Assert.Equal(0.5, count.Rate);
        Assert.Equal(0.25, count.MonteCarloError, 1e-15);
    }

    /// <summary>60 of 100 against 0.5: (0.6 − 0.5)/√(0.25/100) = 2.</summary>
    [Fact]
    public void ErrorsFrom_PlainAnswers_UsesTheErrorOfTheClosedForm()
    {
        var count = new RateCount();
        for (var i = 0; i < 100; i++) count.Add(i < 60);
        Assert.Equal(2, count.ErrorsFrom(0.5), 1e-12);
        Assert.Equal(double.PositiveInfinity, count.ErrorsFrom(1));
    }

    [Fact]
    public void Rate_NothingAsked_IsNoNumber() => Assert.True(double.IsNaN(new RateCount().Rate));
}
