using Analytics.Metrics.Bench.Inputs;
using Analytics.Statistics.Resampling;

namespace Analytics.Metrics.Tests.Bench;

public class CorrelatedDrawsTests
{
    [Theory]
    [InlineData(1.0)]
    [InlineData(-1.0)]
    public void Next_PerfectCorrelation_IsOneError(double r)
    {
        var joint = new CorrelatedDraws(new[,] { { 0, r }, { r, 0 } });
        var draws = new NormalDraws(1);

        for (var i = 0; i < 100; i++)
        {
            var errors = joint.Next(draws);
            // Correlations are taken as exact to 1e-9, and errors hold the root of that.
            Assert.Equal(r * errors[0], errors[1], 1e-4);
        }
    }

    // Three errors of which two are one and the same, the third goes with both.
    [Fact]
    public void Next_PerfectPairBesideAThird_KeepsAllThree()
    {
        double[,] wanted = { { 0, 1, 0.5 }, { 1, 0, 0.5 }, { 0.5, 0.5, 0 } };
        var found = Correlations(wanted);

        // Here it is the mean square of one error: standard error √(2/20,000) = 0.01; allowed four.
        Assert.Equal(1, found[0], 0.04);
        Assert.True(new CorrelatedDraws(wanted).Next(new(7)) is [var one, var same, _] && Math.Abs(one - same) < 1e-4);
        // 20,000 draws: standard error at most 1/√20,000 = 0.007, a little more for products; allowed four.
        Assert.Equal(0.5, found[1], 0.03);
        Assert.Equal(0.5, found[2], 0.03);
    }

    // Allowed as above.
    [Fact]
    public void Next_ModestCorrelations_AreKept()
    {
        var found = Correlations(new[,] { { 0, 0.6, -0.3 }, { 0.6, 0, 0.2 }, { -0.3, 0.2, 0 } });

        Assert.Equal(0.6, found[0], 0.03);
        Assert.Equal(-0.3, found[1], 0.03);
        Assert.Equal(0.2, found[2], 0.03);
    }

    // No three errors can all go against each other at −0.9: −0.5 is the limit, and they are drawn there within the step of 2 %, −0.49 to −0.50, with the four standard errors above.
    [Fact]
    public void Next_CorrelationsThatContradict_AreDrawnTowardZeroUntilTheyDoNot()
        => Assert.All(Correlations(new[,] { { 0, -0.9, -0.9 }, { -0.9, 0, -0.9 }, { -0.9, -0.9, 0 } }), r => Assert.Equal(-0.495, r, 0.035));

    // Between 0 and 1, 0 and 2, 1 and 2; the errors have SD 1, and their mean square a standard error of 0.01; allowed five.
    private static double[] Correlations(double[,] wanted)
    {
        var joint = new CorrelatedDraws(wanted);
        var draws = new NormalDraws(3);
        double[][] all = [.. Enumerable.Range(0, 20_000).Select(_ => joint.Next(draws))];
        Assert.All(Enumerable.Range(0, 3), i => Assert.Equal(1, all.Average(z => z[i] * z[i]), 0.05));
        return [all.Average(z => z[0] * z[1]), all.Average(z => z[0] * z[2]), all.Average(z => z[1] * z[2])];
    }
}
