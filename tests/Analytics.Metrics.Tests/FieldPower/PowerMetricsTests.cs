using Analytics.Metrics.FieldPower;
using Analytics.Metrics.Tests.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.FieldPower;

public class PowerMetricsTests
{
    [Fact]
    public void StandingLong_FeetAndInches_AreCentimetres()
    {
        var jump = Days.Jump(JumpKind.StandingLong, JumpMethod.Tape) with { Distance = Length.FromFeet(9) + Length.FromInches(6) };
        var value = Assert.Single(PowerMetrics.StandingLong.FromTrials(Days.With(jump, jump with { Distance = null })));
        Assert.Equal(289.56, value.Value, 1e-9); // 114 in by the definition of the inch
        Assert.Equal("tape", value.Series);
    }

    // 75 kg, 0.50 s, 1.05 m: 1545.08 W (tests/oracles/jumping/stair.csv).
    [Fact]
    public void Stair_WeighedAthlete_UsesTheRiseOfTheTrial()
    {
        var day = Days.With(Days.Stair(1.05, 0.50), Days.Stair(1.40, 0.70)) with { BodyMass = Mass.FromKilograms(75) };
        var values = PowerMetrics.Stair.FromTrials(day).ToList();
        Close.ToSixDigits(1545.08, values[0].Value);
        Assert.Equal(["rise 1.05 m", "rise 1.40 m"], values.Select(v => v.Series));
    }

    [Fact]
    public void Stair_NeverWeighedOrNoTime_GivesNothing()
    {
        Assert.Empty(PowerMetrics.Stair.FromTrials(Days.Empty with { Trials = [Days.Stair(1.05, 0.5)] }));
        Assert.Empty(PowerMetrics.Stair.FromTrials(Days.With(Days.Stair(1.05, 0))));
    }

    [Fact]
    public void Stair_MassWeighedLongAgo_IsRemarkedOn()
    {
        var day = Days.With(Days.Stair(1.05, 0.5)) with { BodyMassDate = Days.Date.AddDays(-60) };
        Assert.Equal("body mass from 1 January 2026", Assert.Single(PowerMetrics.Stair.FromTrials(day)).Doubt);
    }

    // 100 kg, 0.90 m, 0.80 s: 1103.625 W (tests/oracles/jumping/bar.csv).
    [Fact]
    public void CleanBar_TimedCleans_AreSeriesByLift()
    {
        var pull = Days.Lift("power_clean", 100, 1) with { BarRise = Length.FromMetres(0.9), PullTime = Duration.FromSeconds(0.8) };
        var values = PowerMetrics.CleanBar.FromTrials(Days.With(
            pull, pull with { Lift = "hang_clean" }, pull with { Lift = "back_squat" }, pull with { PullTime = null }, pull with { BarRise = Length.Zero })).ToList();
        Assert.Equal(["power clean", "hang clean"], values.Select(v => v.Series));
        Assert.All(values, v => Assert.Equal(1103.625, v.Value, 1e-9));
    }
}
