using Analytics.Simulation.ErrorRates.Grid.Tables;
using Analytics.Simulation.ErrorRates.Grid.Verdicts;
using Analytics.Simulation.Randomness;
using Analytics.Statistics.Summaries;

namespace Analytics.Simulation.Tests.ErrorRates.Grid;

public class ErrorLawTests
{
    private const int Athletes = 40_000;

    /// <summary>Differences of two occasions have the variance 2 TE² (1 − correlation), whatever the kind; the correlation is that of serial errors.</summary>
    [Theory]
    [InlineData(ErrorKind.Normal, 0)]
    [InlineData(ErrorKind.Skewed, 0)]
    [InlineData(ErrorKind.Proportional, 0)]
    [InlineData(ErrorKind.Uneven, 0)]
    [InlineData(ErrorKind.Serial, 0.4)]
    public void Athlete_EveryKind_HasTheTypicalErrorItNames(ErrorKind kind, double correlation)
    {
        var pairs = Pairs(kind, 3, together: true);
        var variance = Moments.Variance([.. pairs.Select(p => p[1] - p[0])]) / 2;
        var wanted = Math.Pow(ErrorLaw.TypicalError(kind, 3), 2) * (1 - correlation);
        // The kurtosis of the kinds is below 12, so a standard error is below √(11/40 000) = 1.7 %.
        Assert.InRange(variance / wanted, 0.94, 1.06);
    }

    /// <summary>The covariance of two occasions is the variance between athletes when the errors do not correlate.</summary>
    [Theory]
    [InlineData(ErrorKind.Normal)]
    [InlineData(ErrorKind.Proportional)]
    [InlineData(ErrorKind.Uneven)]
    public void Athlete_TwoOccasions_ShareTheSpreadBetweenAthletes(ErrorKind kind)
    {
        var pairs = Pairs(kind, 3, together: true);
        double a = pairs.Average(p => p[0]), b = pairs.Average(p => p[1]);
        Assert.InRange(pairs.Average(p => (p[0] - a) * (p[1] - b)) / ErrorLaw.Between(kind, 3), 0.96, 1.04);
    }

    [Fact]
    public void Athlete_OccasionsFarApart_DoNotCorrelate()
    {
        var pairs = Pairs(ErrorKind.Serial, 0, together: false);
        Assert.InRange(pairs.Average(p => (p[0] - ErrorLaw.Mean) * (p[1] - ErrorLaw.Mean)), -0.02, 0.02);
        Assert.InRange(Pairs(ErrorKind.Serial, 0, together: true).Average(p => (p[0] - ErrorLaw.Mean) * (p[1] - ErrorLaw.Mean)), 0.38, 0.42);
    }

    /// <summary>Skewness of a log-normal law of shape 0.5: (e^0.25 + 2) √(e^0.25 − 1) = 1.7502 (closed form, computed by hand).</summary>
    [Fact]
    public void Athlete_SkewedErrors_AreSkewedToTheRight()
    {
        var errors = Pairs(ErrorKind.Skewed, 0, together: true).Select(p => p[0] - ErrorLaw.Mean).ToList();
        Assert.InRange(errors.Average(), -0.02, 0.02);
        Assert.InRange(errors.Average(e => e * e * e), 1.45, 2.05);
    }

    /// <summary>E(TE found)/TE with 9 degrees of freedom is c4(10) = 0.9726592741 (R); its standard error here is 0.23/√20 000.</summary>
    [Fact]
    public void Draw_RetestOfTenAthletes_FindsTheErrorWithItsKnownBias()
    {
        var mean = Enumerable.Range(0, 20_000).Average(i => ChangeDraw.Draw(new(9, 1, 1, ErrorKind.Normal), RandomNumbers.For(5, "c4", i)).TypicalError);
        Assert.InRange(mean, 0.9726592741 - 4 * 0.00164, 0.9726592741 + 4 * 0.00164);
    }

    private static List<double[]> Pairs(ErrorKind kind, double spread, bool together)
        => [.. Enumerable.Range(0, Athletes).Select(i => ErrorLaw.Athlete(kind, spread, [0, 0], RandomNumbers.For(3, "law", i), together))];
}
