using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>How a residual analysis ended.</summary>
public enum ResidualState
{
    /// <summary>There is a cut-off.</summary>
    Chosen,

    /// <summary>Fewer than 10 samples.</summary>
    TooFewSamples,

    /// <summary>A cut-off of the list is not below half the frame rate.</summary>
    RateTooLow,

    /// <summary>The residuals of the high cut-offs do not fall along a straight line: not noise alone is left there.</summary>
    NoStraightTail,

    /// <summary>Even the lowest cut-off leaves little more than noise: no movement to weigh against it.</summary>
    NoCrossing,
}

/// <summary>The residuals of one coordinate by cut-off, the line through their tail and the cut-off it gives, or in words why there is none.</summary>
public sealed record ResidualAnalysisResult
{
    /// <summary>How it ended.</summary>
    public required ResidualState State { get; init; }

    /// <summary>The ending in one sentence.</summary>
    public required string Explanation { get; init; }

    /// <summary>What was tried.</summary>
    public required ResidualSettings Settings { get; init; }

    /// <summary>Root-mean-square residual by cut-off, in the unit of the samples; empty when it was not computed.</summary>
    public IReadOnlyList<double> Residuals { get; init; } = [];

    /// <summary>Slope of the tail line, unit of the samples for each Hz; null when it was not fitted.</summary>
    public double? TailSlope { get; init; }

    /// <summary>The tail line at 0 Hz: the estimate of the noise SD, in the unit of the samples; null when it was not fitted.</summary>
    public double? NoiseLevel { get; init; }

    /// <summary>Share of the tail's variance on its line; null when it was not fitted.</summary>
    public double? TailRSquared { get; init; }

    /// <summary>The cut-off; null unless <see cref="State"/> is <see cref="ResidualState.Chosen"/>.</summary>
    public Frequency? Cutoff { get; init; }
}
