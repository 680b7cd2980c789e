using Analytics.Simulation.Demo.Testing;

namespace Analytics.Simulation.Tests.Demo.Testing;

public class LiftTestTests
{
    /// <summary>At a cost of 0.032 a repetition, 400 lb once is 400 / 1.128 = 354.6 lb five times.</summary>
    [Theory]
    [InlineData(401, 0)]
    [InlineData(400, 1)]
    [InlineData(354, 5)]
    [InlineData(355, 4)]
    public void Possible_LoadBelowMaximum_CountsWholeRepetitions(double load, int expected)
        => Assert.Equal(expected, LiftTest.Possible(400, load, 0.032));
}
