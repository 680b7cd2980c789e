using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Motion.Digitising;

public class LengthScaleTests
{
    // 1 px = 1 mm, so the end-point SD of 5 px is 5 mm.
    [Theory]
    [InlineData(1, 0.0070710678)]
    [InlineData(2, 0.0035355339)]
    public void RelativeSd_Stick_IsRootTwoTimesTheEndSd(double metres, double expected)
    {
        var scale = LengthScale.FromLength(Length.FromMetres(metres), 0, 1000 * metres, 5);
        Assert.Equal(expected, scale.RelativeSd, 5e-11);
        Assert.Equal(0.001, scale.MetresPerPixel, 1e-15);
    }

    [Fact]
    public void RelativeSd_Simulated_AgreesWithTheFormula()
    {
        var random = new Random(3);
        double sum = 0, squares = 0;
        const int draws = 40_000;
        for (var i = 0; i < draws; i++)
        {
            var k = LengthScale.FromLength(Length.FromMetres(2), Normal(random) * 1.5, 400 + ((Normal(random) - Normal(random)) * 1.5), 1.5).MetresPerPixel;
            (sum, squares) = (sum + k, squares + (k * k));
        }
        var (mean, sd) = (sum / draws, Math.Sqrt((squares / draws) - (sum / draws * (sum / draws))));
        // 4 standard errors of an SD from 40,000 draws: 4/√80000 = 1.4 %.
        Assert.Equal(1, sd / mean / LengthScale.FromLength(Length.FromMetres(2), 0, 400, 1.5).RelativeSd, 0.015);
    }

    [Fact]
    public void FromEnds_SeveralFrames_TakesTheMeanAndSharpensIt()
    {
        var from = new PixelTrack("low", MarkerRole.CalibrationFrom, [10, double.NaN, 10, 10, 10], [900, double.NaN, 900, 900, 900]);
        var to = new PixelTrack("high", MarkerRole.CalibrationTo, [11, 10, 9, 10, 10], [500, 499, 501, 500, 499]);
        var scale = LengthScale.FromEnds(Length.FromMetres(2), from, to, 2);
        Assert.Equal(2 / 400.0, scale.MetresPerPixel, 1e-12);
        Assert.Equal(Math.Sqrt(2) * 1 / 400, scale.RelativeSd, 1e-12);
    }

    [Fact]
    public void FromLength_Bad_IsRefusedInWords()
    {
        Assert.Contains("0 px", Assert.Throws<ArgumentOutOfRangeException>(() => LengthScale.FromLength(Length.FromMetres(1), 0, 0, 1)).Message, StringComparison.Ordinal);
        Assert.Contains("calibration length", Assert.Throws<ArgumentOutOfRangeException>(() => LengthScale.FromLength(Length.FromMetres(-1), 0, 9, 1)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => LengthScale.FromLength(Length.FromMetres(1), double.NaN, 9, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => LengthScale.FromLength(Length.FromMetres(1), 0, 9, -1));
        var lonely = new PixelTrack("low", MarkerRole.CalibrationFrom, [1, double.NaN], [1, double.NaN]);
        var other = new PixelTrack("high", MarkerRole.CalibrationTo, [double.NaN, 1], [double.NaN, 1]);
        Assert.Contains("same frame", Assert.Throws<ArgumentException>(() => LengthScale.FromEnds(Length.FromMetres(1), lonely, other, 1)).Message, StringComparison.Ordinal);
    }

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
