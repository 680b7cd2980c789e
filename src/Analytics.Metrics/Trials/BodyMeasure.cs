using Analytics.Quantities;

namespace Analytics.Metrics.Trials;

/// <summary>Body mass, and stature where it was taken.</summary>
public sealed record BodyMeasure : Trial
{
    /// <summary>Body mass.</summary>
    public required Mass BodyMass { get; init; }

    /// <summary>Stature, if measured.</summary>
    public Length? Stature { get; init; }
}
