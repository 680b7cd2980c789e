using Analytics.Metrics.Catalogue;

namespace Analytics.Metrics.Jumping;

/// <summary>Every jump metric, in report order.</summary>
public static class JumpMetrics
{
    /// <summary>All jump metrics.</summary>
    public static IReadOnlyList<Metric> All { get; } =
    [
        VerticalJumpMetrics.CountermovementHeight,
        VerticalJumpMetrics.SquatHeight,
        VerticalJumpMetrics.CountermovementPeakPower,
        PushOffMetrics.MeanPower,
        ReboundMetrics.DropReactiveStrength,
        ReboundMetrics.HurdleReactiveStrength,
        ReboundMetrics.HurdleContact,
    ];
}
