using Analytics.Metrics.Jumping;
using Analytics.Metrics.Tests.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Jumping;

public class ReboundMetricsTests
{
    private static readonly JumpTrial Drop = Days.Jump(JumpKind.Drop) with
    {
        FlightTime = Duration.FromSeconds(0.5),
        ContactTime = Duration.FromSeconds(0.2),
        ObstacleHeight = Length.FromCentimetres(30),
    };

    // Flight 0.50 s, contact 0.20 s: 1.53281 m/s (tests/oracles/jumping/reactive.csv).
    [Fact]
    public void DropReactiveStrength_FlightAndContact_IsTheOracleIndex()
    {
        var value = Assert.Single(ReboundMetrics.DropReactiveStrength.FromTrials(Days.With(Drop)));
        Close.ToSixDigits(1.53281, value.Value);
        Assert.Equal(("mat, box 30 cm", null), (value.Series, value.Doubt));
    }

    [Fact]
    public void DropReactiveStrength_BoxAndMethod_AreSeries()
    {
        var values = ReboundMetrics.DropReactiveStrength.FromTrials(Days.With(
            Drop, Drop with { ObstacleHeight = Length.FromCentimetres(45) }, Drop with { ObstacleHeight = null }, Drop with { Method = JumpMethod.ForcePlate }));
        Assert.Equal(["mat, box 30 cm", "mat, box 45 cm", "mat, box height not noted", "force plate, flight time, box 30 cm"], values.Select(v => v.Series));
    }

    [Fact]
    public void DropReactiveStrength_SlowContact_IsRemarkedOn()
    {
        var slow = Assert.Single(ReboundMetrics.DropReactiveStrength.FromTrials(Days.With(Drop with { ContactTime = Duration.FromSeconds(0.25) })));
        Assert.Equal("contact 0.250 s: too long for fast stretch-shortening work", slow.Doubt);
        var both = Assert.Single(ReboundMetrics.DropReactiveStrength.FromTrials(Days.With(
            Drop with { ContactTime = Duration.FromSeconds(0.3), Height = Length.FromCentimetres(45) })));
        Assert.Equal("height as read is 45.0 cm, its flight time gives 30.7 cm; contact 0.300 s: too long for fast stretch-shortening work", both.Doubt);
    }

    [Fact]
    public void Indices_NoContactOrNoHeight_GiveNothing()
    {
        var day = Days.With(Drop with { ContactTime = null }, Drop with { ContactTime = Duration.Zero }, Drop with { FlightTime = null });
        Assert.Empty(ReboundMetrics.DropReactiveStrength.FromTrials(day));
    }

    [Fact]
    public void HurdleMetrics_HurdleJump_GiveContactAndIndex()
    {
        var hurdle = Drop with { Kind = JumpKind.Hurdle, ObstacleHeight = Length.FromCentimetres(60) };
        var day = Days.With(hurdle, hurdle with { FlightTime = null });
        Assert.Equal([0.2, 0.2], ReboundMetrics.HurdleContact.FromTrials(day).Select(v => v.Value));
        var index = Assert.Single(ReboundMetrics.HurdleReactiveStrength.FromTrials(day));
        Assert.Equal("mat, hurdle 60 cm", index.Series);
        Assert.Empty(ReboundMetrics.DropReactiveStrength.FromTrials(day));
    }
}
