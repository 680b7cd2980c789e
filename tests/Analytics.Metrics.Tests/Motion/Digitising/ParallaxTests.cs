using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Motion.Digitising;

/// <summary>Pinhole arithmetic; expected figures by independent 50-digit arithmetic (tests/oracles/motion/README.md).</summary>
public class ParallaxTests
{
    [Theory]
    [InlineData(10, 1, 1.111111111)]
    [InlineData(15, 1, 1.071428571)]
    [InlineData(20, 1, 1.052631579)]
    [InlineData(20, 0.5, 1.025641026)]
    [InlineData(30, 1, 1.034482759)]
    [InlineData(10, -1, 0.9090909091)]
    [InlineData(20, -1, 0.9523809524)]
    [InlineData(30, -1, 0.9677419355)]
    public void Magnification_Lane_IsTheCheckTable(double camera, double nearer, double expected)
        => Assert.Equal(expected, Parallax.Magnification(Length.FromMetres(camera), Length.FromMetres(nearer)), 5e-10);

    [Theory]
    [InlineData(20, 1, 10, 0.5)]
    [InlineData(15, 1, 5, 0.3333333333)]
    [InlineData(20, 0.5, 5, 0.125)]
    [InlineData(20, 0.5, -5, -0.125)]
    public void MarkError_OffAxis_IsTheCheckTable(double camera, double nearer, double mark, double expected)
        => Assert.Equal(expected, Parallax.MarkError(Length.FromMetres(mark), Length.FromMetres(camera), Length.FromMetres(nearer)).Metres, 1e-10);

    [Theory]
    [InlineData(5, 0.99619470)]
    [InlineData(-10, 0.98480775)]
    public void Foreshortening_Angle_IsItsCosine(double degrees, double expected)
        => Assert.Equal(expected, Parallax.Foreshortening(Angle.FromDegrees(degrees)), 5e-9);

    [Fact]
    public void Magnification_AthleteAtTheCamera_IsRefused()
        => Assert.Contains("got 12 m", Assert.Throws<ArgumentOutOfRangeException>(() => Parallax.Magnification(Length.FromMetres(12), Length.FromMetres(12))).Message, StringComparison.Ordinal);
}
