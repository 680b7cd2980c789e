using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Catalogue;

/// <summary>Body size.</summary>
public static class BodyMetrics
{
    /// <summary>Body mass on the scales.</summary>
    public static Metric BodyMass { get; } = new()
    {
        Id = "body_mass",
        Label = "Body mass",
        Unit = "kg",
        Decimals = 1,
        Better = Direction.Neither,
        Quality = Quality.Body,
        Rule = TrialRule.Mean,
        RuleReason = "Several weighings of one day differ only by scale and clothing.",
        FromTrials = day => day.Of<BodyMeasure>().Select(m => new TrialValue(m.BodyMass.Kilograms)),
        PlausibleLow = 35,
        PlausibleHigh = 220,
        Meaning = "Body mass as weighed that day; more is not better by itself.",
        Formula = "m [kg], read from the scales",
        Sources = [],
    };

    /// <summary>All body metrics, in report order.</summary>
    public static IReadOnlyList<Metric> All { get; } = [BodyMass];
}
