using Analytics.Statistics.Results;

namespace Analytics.Statistics.Resampling;

/// <summary>An interval read from resamples, or the words why there is none.</summary>
public sealed record BootstrapInterval : Result
{
    /// <summary>The resamples it was read from.</summary>
    public required BootstrapDistribution Distribution { get; init; }

    /// <summary>How it was read.</summary>
    public required BootstrapMethod Method { get; init; }

    /// <summary>Nominal coverage.</summary>
    public required double Level { get; init; }

    /// <summary>How a quantile between two resamples was found.</summary>
    public required EndPoint EndPoint { get; init; }

    /// <summary>The limits in the unit of the statistic; null when they do not exist, see <see cref="Explanation"/>.</summary>
    public Interval? Limits { get; init; }

    /// <summary>Share of the resamples below the lower limit; null for the normal method.</summary>
    public double? LowerShare { get; init; }

    /// <summary>Share of the resamples below the upper limit; null for the normal method.</summary>
    public double? UpperShare { get; init; }

    /// <summary>Source of the acceleration.</summary>
    public Acceleration AccelerationSource { get; init; }

    /// <summary>The acceleration used; null for other methods than BCa.</summary>
    public double? Acceleration { get; init; }

    /// <summary>Why there are no limits, or how far these may be trusted; empty when there is nothing to say.</summary>
    public string Explanation { get; init; } = string.Empty;

    /// <inheritdoc/>
    public override ResultSheet Sheet() => BootstrapSheet.Of(this);
}
