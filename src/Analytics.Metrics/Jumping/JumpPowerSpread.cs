using Analytics.Quantities;

namespace Analytics.Metrics.Jumping;

/// <summary>One jump through every formula of one kind: how far the formulas themselves disagree.</summary>
public sealed record JumpPowerSpread
{
    private JumpPowerSpread(IReadOnlyList<JumpPowerEstimate> estimates) => Estimates = estimates;

    /// <summary>The estimates, lowest first.</summary>
    public IReadOnlyList<JumpPowerEstimate> Estimates { get; }

    /// <summary>Lowest estimate.</summary>
    public Power Low => Estimates[0].Power;

    /// <summary>Highest estimate.</summary>
    public Power High => Estimates[^1].Power;

    /// <summary>Highest less lowest.</summary>
    public Power Width => High - Low;

    /// <summary>The spread over the formulas of one kind.</summary>
    /// <param name="kind">Peak, mean or fall; kinds are never mixed.</param>
    /// <param name="height">Jump height, 0 m or more.</param>
    /// <param name="bodyMass">Above 0 kg.</param>
    /// <param name="stature">Above 0 m; formulas that need it are left out when it is null.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside those ranges.</exception>
    public static JumpPowerSpread Of(JumpPowerKind kind, Length height, Mass bodyMass, Length? stature = null)
        => new([.. JumpPowerFormulas.All
            .Where(f => f.Kind == kind && (stature is not null || !f.NeedsStature))
            .Select(f => f.Estimate(height, bodyMass, stature))
            .OrderBy(e => e.Power)]);
}
