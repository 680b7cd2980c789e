using Analytics.Simulation.Demo.Testing;

namespace Analytics.Simulation.Tests.Demo.Testing;

public class SprintModelTests
{
    /// <summary>Times to 5, 10, 20, 30 and 40 m for V = 8.5 m/s, T = 1.1 s, computed apart with 50 digits from the closed form
    /// with Lambert's W; with leads of 0, 0.3 and 0.5 m.</summary>
    [Theory]
    [InlineData(0, 1.37230772241, 2.1157520728, 3.40307406152, 4.61280843525, 5.80024102736)]
    [InlineData(0.3, 1.13045759979, 1.86602423472, 3.14908439035, 4.35770394563, 5.54478351225)]
    [InlineData(0.5, 1.0731880766, 1.80382045299, 3.08414816464, 4.29204654973, 5.47889722692)]
    public void ClockTime_KnownAthlete_GivesTabulatedTimes(double lead, params double[] expected)
    {
        double[] gates = [5, 10, 20, 30, 40];
        for (var i = 0; i < gates.Length; i++)
            // The table has 11 decimals.
            Assert.Equal(expected[i], SprintModel.ClockTime(gates[i], 8.5, 1.1, lead), 1e-10);
    }
}
