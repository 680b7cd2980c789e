using Analytics.Metrics.Jumping;
using Analytics.Metrics.Tests.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Jumping;

public class VerticalJumpMetricsTests
{
    private static readonly JumpTrial Mat = Days.Jump(JumpKind.Countermovement);

    [Fact]
    public void CountermovementHeight_FlightTimeOnly_IsTheOracleHeight()
    {
        var value = Assert.Single(VerticalJumpMetrics.CountermovementHeight.FromTrials(Days.With(Mat with { FlightTime = Duration.FromSeconds(0.6) })));
        Assert.Equal(44.145, value.Value, 1e-9); // 0.44145 m, Linthorne 2001 with g = 9.81 (tests/oracles/jumping)
        Assert.Equal("mat", value.Series);
        Assert.Null(value.Doubt);
    }

    [Theory]
    [InlineData(JumpMethod.Mat, "mat")]
    [InlineData(JumpMethod.ForcePlate, "force plate")]
    [InlineData(JumpMethod.Reach, "jump and reach")]
    [InlineData(JumpMethod.Video, "video")]
    public void CountermovementHeight_EachMethod_IsItsOwnSeries(JumpMethod method, string series)
    {
        var jump = Days.Jump(JumpKind.Countermovement, method) with { Height = Length.FromInches(20) };
        var value = Assert.Single(VerticalJumpMetrics.CountermovementHeight.FromTrials(Days.With(jump)));
        Assert.Equal((50.8, series), (value.Value, value.Series)); // 20 in by the definition of the inch
    }

    // Flight time gave 1.7 cm more than impulse on one plate in Baumgart and others 2017: not one scale.
    [Fact]
    public void CountermovementHeight_PlateFlightTime_IsNotThePlatesOwnHeight()
    {
        var plate = Days.Jump(JumpKind.Countermovement, JumpMethod.ForcePlate);
        var values = VerticalJumpMetrics.CountermovementHeight.FromTrials(Days.With(
            plate with { Height = Length.FromCentimetres(42) }, plate with { FlightTime = Duration.FromSeconds(0.6) }));
        Assert.Equal(["force plate", "force plate, flight time"], values.Select(v => v.Series));
    }

    [Fact]
    public void CountermovementHeight_MatHeightAgainstItsFlightTime_IsRemarkedOn()
    {
        var jump = Mat with { Height = Length.FromCentimetres(50), FlightTime = Duration.FromSeconds(0.6) };
        var value = Assert.Single(VerticalJumpMetrics.CountermovementHeight.FromTrials(Days.With(jump)));
        Assert.Equal(50, value.Value);
        Assert.Equal("height as read is 50.0 cm, its flight time gives 44.1 cm", value.Doubt);

        var rounded = Mat with { Height = Length.FromCentimetres(44), FlightTime = Duration.FromSeconds(0.6) };
        Assert.Null(Assert.Single(VerticalJumpMetrics.CountermovementHeight.FromTrials(Days.With(rounded))).Doubt);
    }

    [Fact]
    public void Heights_OtherKindsOfJump_AreNotMixedIn()
    {
        var day = Days.With(Days.Jump(JumpKind.Squat) with { Height = Length.FromCentimetres(38) }, Mat with { Height = Length.FromCentimetres(42) });
        Assert.Equal(42, Assert.Single(VerticalJumpMetrics.CountermovementHeight.FromTrials(day)).Value);
        Assert.Equal(38, Assert.Single(VerticalJumpMetrics.SquatHeight.FromTrials(day)).Value);
    }

    [Fact]
    public void CountermovementHeight_NoHeightNoFlight_GivesNothing()
        => Assert.Empty(VerticalJumpMetrics.CountermovementHeight.FromTrials(Days.With(Mat, Mat with { FlightTime = Duration.Zero })));

    // 45 cm, 90 kg: Amonette 4858.5 W (tests/oracles/jumping/power.csv), standard error printed in the paper.
    [Fact]
    public void CountermovementPeakPower_WeighedAthlete_HasThePublishedError()
    {
        var day = Days.With(Mat with { Height = Length.FromCentimetres(45) });
        var value = Assert.Single(VerticalJumpMetrics.CountermovementPeakPower.FromTrials(day));
        Assert.Equal(4858.5, value.Value, 1e-6);
        Assert.Equal(250.7, value.StandardError);
        Assert.Equal(("mat", null), (value.Series, value.Doubt));
    }

    [Fact]
    public void CountermovementPeakPower_NeverWeighed_GivesNothing()
        => Assert.Empty(VerticalJumpMetrics.CountermovementPeakPower.FromTrials(Days.Empty with { Trials = [Mat with { Height = Length.FromCentimetres(45) }] }));

    [Fact]
    public void CountermovementPeakPower_HeavyAndWeighedLongAgo_SaysBoth()
    {
        var day = Days.With(Mat with { Height = Length.FromCentimetres(45) }) with
        {
            BodyMass = Mass.FromKilograms(130),
            BodyMassDate = Days.Date.AddDays(-15),
        };
        Assert.Equal("extrapolated: body mass above 110 kg; body mass from 15 February 2026",
            Assert.Single(VerticalJumpMetrics.CountermovementPeakPower.FromTrials(day)).Doubt);
        Assert.DoesNotContain("body mass from",
            Assert.Single(VerticalJumpMetrics.CountermovementPeakPower.FromTrials(day with { BodyMassDate = Days.Date.AddDays(-14) })).Doubt, StringComparison.Ordinal);
    }

    // Alves Souza and others 2020 print 5.8 % for the height of 41 men, force plate, 2 to 7 days apart. It is the only between-day figure we know here:
    // errors of jumps minutes apart would make every change look real.
    [Fact]
    public void PublishedError_OnlyBetweenDayFigures_AreCarried()
    {
        var known = Assert.Single(JumpMetrics.All.Concat(Metrics.FieldPower.PowerMetrics.All), m => m.PublishedError is not null);
        Assert.Equal(("cmj_height", 5.8, null, "souza2020"), (known.Id, known.PublishedError!.Percent, known.PublishedError.Absolute, known.PublishedError.SourceKey));
    }

    [Fact]
    public void CountermovementPeakPower_Formula_IsTheDefaultFormula()
        => Assert.Contains("63.6·h [cm] + 42.7·m [kg] − 1846.5 (" + JumpPowerFormulas.Default.Name, VerticalJumpMetrics.CountermovementPeakPower.Formula, StringComparison.Ordinal);
}
