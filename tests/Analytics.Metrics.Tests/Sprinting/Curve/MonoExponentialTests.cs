using Analytics.Metrics.Sprinting.Curve;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Sprinting.Curve;

public class MonoExponentialTests
{
    // tests/oracles/sprint/monoexp_forward.csv and monoexp_inverse.csv: 50-digit arithmetic, 14 digits given.
    [Fact]
    public void SpeedDistanceAcceleration_OracleTimes_Agree()
        => Assert.All(OracleTable.Read("sprint/monoexp_forward.csv"), row =>
        {
            var (run, t) = (Run(row["vmax_mps"], row["tau_s"]), Duration.FromSeconds(row["t_s"]));
            Assert.Equal(row["x_m"], run.DistanceAt(t).Metres, 1e-13 * (1 + row["x_m"]));
            Assert.Equal(row["v_mps"], run.SpeedAt(t).MetresPerSecond, 1e-13 * (1 + row["v_mps"]));
            Assert.Equal(row["a_mps2"], run.AccelerationAt(t).MetresPerSecondSquared, 1e-12 * (1 + row["a_mps2"]));
        });

    // From 1e-9 m: the plain formula keeps only 6 digits there; the series about the branch point keeps them all.
    [Fact]
    public void TimeToAndSpeedAt_OracleDistances_AgreeInAllDigits()
        => Assert.All(OracleTable.Read("sprint/monoexp_inverse.csv"), row =>
        {
            var (run, x) = (Run(row["vmax_mps"], row["tau_s"]), Length.FromMetres(row["x_m"]));
            Assert.Equal(0, (run.TimeTo(x).Seconds / row["t_s"]) - 1, 1e-14);
            Assert.Equal(0, (run.SpeedAt(x).MetresPerSecond / row["v_at_x_mps"]) - 1, 1e-13);
        });

    // -T ln(1-f): 63.212 % at T, 95 % at 2.995732 T, 99 % at 4.605170 T (tables of the natural logarithm).
    [Theory]
    [InlineData(0.95, 2.995732)]
    [InlineData(0.99, 4.605170)]
    public void TimeToSpeed_ShareOfTopSpeed_IsTheLogarithm(double share, double timeConstants)
        => Assert.Equal(timeConstants * 1.1, Run(8.5, 1.1).TimeToSpeed(Speed.FromMetresPerSecond(8.5 * share)).Seconds, 1e-6);

    [Fact]
    public void SpeedAt_OneTimeConstant_Is63Percent()
        => Assert.Equal(0.63212, Run(8.5, 1.1).SpeedAt(Duration.FromSeconds(1.1)).MetresPerSecond / 8.5, 1e-5);

    // [keller1973], times for a run at full effort with F = 12.2 m/s² and T = 0.892 s, V = F·T. From memory, and the printed F is
    // rounded: 0.02 s.
    [Theory]
    [InlineData(45.72, 5.09)]
    [InlineData(50, 5.48)]
    [InlineData(54.864, 5.93)]
    [InlineData(60, 6.40)]
    [InlineData(91.44, 9.29)]
    [InlineData(100, 10.07)]
    [InlineData(200, 19.25)]
    [InlineData(201.168, 19.36)]
    public void TimeTo_KellersTable_AgreesWithThePrintedTimes(double metres, double printedSeconds)
    {
        Assert.Equal(printedSeconds, Run(12.2 * 0.892, 0.892).TimeTo(Length.FromMetres(metres)).Seconds, 0.021);
        // V = 10.894 reproduces all eight printed times to the hundredth.
        Assert.Equal(printedSeconds, Run(10.894, 0.892).TimeTo(Length.FromMetres(metres)).Seconds, 0.0051);
    }

    [Fact]
    public void Inverses_UndoTheForwardCurve()
    {
        var run = Run(9.3, 0.95);
        foreach (var seconds in new[] { 1e-6, 1e-3, 0.1, 0.4, 0.6, 1.5, 4, 12 })
        {
            var t = Duration.FromSeconds(seconds);
            Assert.Equal(0, (run.TimeTo(run.DistanceAt(t)).Seconds / seconds) - 1, 1e-13);
            // Close to top speed the speed says little about the time: the error grows as exp(t/T).
            Assert.Equal(0, (run.TimeToSpeed(run.SpeedAt(t)).Seconds / seconds) - 1, 1e-14 * Math.Exp(seconds / 0.95));
            Assert.Equal(0, (run.DistanceToSpeed(run.SpeedAt(t)) / run.DistanceAt(t)) - 1, 1e-13 * Math.Exp(seconds / 0.95));
            Assert.Equal(run.SpeedAt(t).MetresPerSecond, run.SpeedAt(run.DistanceAt(t)).MetresPerSecond, 1e-13);
        }
    }

    [Fact]
    public void Curve_Yards_AreMetres()
        => Assert.Equal(1.72739349596585, Run(8.8, 0.77).TimeTo(Length.FromYards(10)).Seconds, 1e-13); // monoexp_inverse.csv, "10 yd"

    // Central differences of the curve itself: an independent route to the derivatives, good to about 1e-9.
    [Theory]
    [InlineData(0.02)]
    [InlineData(1)]
    [InlineData(36.576)]
    public void Partials_AnyDistance_AgreeWithDifferences(double metres)
    {
        const double h = 1e-5;
        var x = Length.FromMetres(metres);
        var byTopSpeed = (Run(8.5 + h, 1.1).TimeTo(x) - Run(8.5 - h, 1.1).TimeTo(x)).Seconds / (2 * h);
        var byTimeConstant = (Run(8.5, 1.1 + h).TimeTo(x) - Run(8.5, 1.1 - h).TimeTo(x)).Seconds / (2 * h);
        var time = Run(8.5, 1.1).TimePartials(x);
        Assert.Equal(byTopSpeed, time.ByTopSpeed, 1e-8);
        Assert.Equal(byTimeConstant, time.ByTimeConstant, 1e-8);

        var t = Run(8.5, 1.1).TimeTo(x);
        var distance = Run(8.5, 1.1).DistancePartials(t);
        Assert.Equal((Run(8.5 + h, 1.1).DistanceAt(t) - Run(8.5 - h, 1.1).DistanceAt(t)).Metres / (2 * h), distance.ByTopSpeed, 1e-8);
        Assert.Equal((Run(8.5, 1.1 + h).DistanceAt(t) - Run(8.5, 1.1 - h).DistanceAt(t)).Metres / (2 * h), distance.ByTimeConstant, 1e-8);
    }

    [Fact]
    public void Curve_AtRest_IsZero()
    {
        var run = Run(8.5, 1.1);
        Assert.Equal(0, run.TimeTo(Length.Zero).Seconds);
        Assert.Equal(0, run.SpeedAt(Length.Zero).MetresPerSecond);
        Assert.Equal(7.7272727272727275, run.InitialAcceleration.MetresPerSecondSquared, 1e-14); // 8.5/1.1
    }

    [Fact]
    public void Curve_OutsideItsRange_NamesTheNumber()
    {
        Assert.Contains("-1", Assert.Throws<ArgumentOutOfRangeException>(() => Run(-1, 1)).Message, StringComparison.Ordinal);
        Assert.Equal("timeConstant", Assert.Throws<ArgumentOutOfRangeException>(() => Run(9, 0)).ParamName);
        Assert.Equal("distance", Assert.Throws<ArgumentOutOfRangeException>(() => Run(9, 1).TimeTo(Length.FromMetres(-0.5))).ParamName);
        var tooFast = Assert.Throws<ArgumentOutOfRangeException>(() => Run(9, 1).TimeToSpeed(Speed.FromMetresPerSecond(9)));
        Assert.Equal("speed", tooFast.ParamName);
        Assert.Contains("below the top speed 9 m/s; got 9 m/s", tooFast.Message, StringComparison.Ordinal);
    }

    private static MonoExponential Run(double v, double tau) => new(Speed.FromMetresPerSecond(v), Duration.FromSeconds(tau));
}
