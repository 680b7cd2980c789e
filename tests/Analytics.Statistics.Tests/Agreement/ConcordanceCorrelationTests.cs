using Analytics.Statistics.Agreement;

namespace Analytics.Statistics.Tests.Agreement;

public class ConcordanceCorrelationTests
{
    // By hand, divisor n: x 1 2 3, y 2 3 4: s² = 2/3 both, s_xy = 2/3, shift 1: (4/3)/(4/3 + 1) = 4/7.
    [Fact]
    public void Of_ShiftedPairs_MatchesHandValue()
    {
        var c = ConcordanceCorrelation.Of([1, 2, 3], [2, 3, 4]);
        Oracle.Close(4.0 / 7, c.Value, 1e-14);
        Oracle.Close(1, c.Pearson, 1e-14);
        Oracle.Close(4.0 / 7, c.BiasFactor!.Value, 1e-14);
    }

    // x, y normal with correlation .9, y shifted by .5: concordance .9 × 2/(2 + .25) = .8; 4,000 seeded samples of 60.
    // The interval is approximate: 1.5 % is allowed on top of three standard errors.
    [Fact]
    public void Interval_Simulated_HoldsTheTruthAtAboutTheStatedRate()
    {
        var normal = new Gaussian(4);
        const int samples = 4000;
        var held = 0;
        for (var i = 0; i < samples; i++)
        {
            double[] x = new double[60], y = new double[60];
            for (var j = 0; j < 60; j++)
            {
                x[j] = normal.Next();
                y[j] = 0.5 + 0.9 * x[j] + Math.Sqrt(1 - 0.81) * normal.Next();
            }

            if (ConcordanceCorrelation.Of(x, y).Interval!.Value.Contains(0.8)) held++;
        }

        Assert.InRange((double)held / samples, 0.925, 0.975);
    }

    [Fact]
    public void Of_PerfectAgreement_IsOne() => Assert.Equal(new Interval(1, 1), ConcordanceCorrelation.Of([1, 2, 4], [1, 2, 4]).Interval);

    [Fact]
    public void Of_NoCorrelation_HasNoInterval()
    {
        var c = ConcordanceCorrelation.Of([-1, 0, 1], [1, -2, 1]);
        Assert.Equal((0, null), (c.Value, c.Interval));
    }

    [Fact]
    public void Of_OneMethodConstant_NamesIt()
        => Assert.Contains("All 3 values of y are equal", Assert.Throws<ArgumentException>(() => ConcordanceCorrelation.Of([1, 2, 3], [2, 2, 2])).Message, StringComparison.Ordinal);
}
