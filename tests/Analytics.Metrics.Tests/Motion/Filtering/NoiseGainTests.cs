using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Motion.Filtering;

public class NoiseGainTests
{
    private static readonly Frequency Rate = Frequency.FromHertz(120);

    // 1 mm at 120 Hz.
    [Fact]
    public void Unfiltered_OneMillimetre_IsTheCheckValue()
    {
        Assert.Equal(0.0848528137, 0.001 * NoiseGain.OfVelocity(null, Rate), 5e-11);
        Assert.Equal(35.2726523, 0.001 * NoiseGain.OfAcceleration(null, Rate), 5e-8);
        Assert.Equal(1, NoiseGain.OfPosition(null, Rate));
    }

    [Theory]
    [InlineData(6, FilterShape.Butterworth, true)]
    [InlineData(12, FilterShape.Butterworth, true)]
    [InlineData(12, FilterShape.CriticallyDamped, true)]
    [InlineData(10, FilterShape.Butterworth, false)]
    public void Filtered_Impulse_HasTheSameGain(double hertz, FilterShape shape, bool dual)
    {
        // The SD ratio for white noise is the root of the summed squared response to one unit sample.
        var filter = new LowPass(Frequency.FromHertz(hertz)) { Shape = shape, DualPass = dual };
        double[] x = new double[2001], y = new double[2001], v = new double[1999], a = new double[1999];
        x[1000] = 1;
        filter.Apply(x, Rate, y);
        CentralDifferences.Velocity(y, Duration.FromSeconds(1 / 120.0), v);
        CentralDifferences.Acceleration(y, Duration.FromSeconds(1 / 120.0), a);
        Assert.Equal(Root(y), NoiseGain.OfPosition(filter, Rate), 1e-9);
        Assert.Equal(1, Root(v) / NoiseGain.OfVelocity(filter, Rate), 1e-9);
        Assert.Equal(1, Root(a) / NoiseGain.OfAcceleration(filter, Rate), 1e-9);
    }

    private static double Root(double[] response) => Math.Sqrt(response.Sum(h => h * h));
}
