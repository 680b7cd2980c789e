using Analytics.Metrics.Jumping;
using Analytics.Metrics.Tests.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Jumping;

public class PushOffMetricsTests
{
    private static readonly JumpTrial Squat = Days.Jump(JumpKind.Squat) with
    {
        Height = Length.FromCentimetres(35),
        PushOffDistance = Length.FromCentimetres(40),
    };

    // 0.35 m over 0.40 m: 24.1004 W/kg (tests/oracles/jumping/push_off.csv).
    [Fact]
    public void MeanPower_SquatJump_IsTheOraclePowerWhateverTheMass()
    {
        var weighed = Assert.Single(PushOffMetrics.MeanPower.FromTrials(Days.With(Squat)));
        var unweighed = Assert.Single(PushOffMetrics.MeanPower.FromTrials(Days.Empty with { Trials = [Squat] }));
        Close.ToSixDigits(24.1004, weighed.Value);
        Assert.Equal("squat jump, mat", weighed.Series);
        Assert.Equal(weighed, unweighed);
    }

    [Fact]
    public void MeanPower_KindAndMethod_AreSeries()
    {
        var day = Days.With(Squat, Squat with { Kind = JumpKind.Countermovement, Method = JumpMethod.ForcePlate }, Squat with { Kind = JumpKind.Drop });
        Assert.Equal(["squat jump, mat", "countermovement jump, force plate"], PushOffMetrics.MeanPower.FromTrials(day).Select(v => v.Series));
    }

    [Fact]
    public void MeanPower_NoDistanceOrNoHeight_GivesNothing()
        => Assert.Empty(PushOffMetrics.MeanPower.FromTrials(Days.With(
            Squat with { PushOffDistance = null }, Squat with { PushOffDistance = Length.Zero }, Squat with { Height = null })));
}
