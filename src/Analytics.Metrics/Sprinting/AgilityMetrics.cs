using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Sprinting;

/// <summary>Change-of-direction times; hand and electronic times are separate series.</summary>
internal static class AgilityMetrics
{
    public static IReadOnlyList<Metric> All { get; } =
    [
        Run("pro_agility", "pro_agility", "Pro-agility (5-10-5)", 3.7, 6.5,
            "20 yd with two half turns: 5 yd out, 10 yd back past the middle, 5 yd to finish.", ["sierer2008"]),
        Run("agility_505", "505", "505 turn", 1.9, 3.5,
            "One half turn at running speed: 5 m to the line and 5 m back. Left and right turns count alike here; look at the sides before you call a player slow.",
            ["nimphius2016"]),
        Run("three_cone", "three_cone", "Three-cone", 6.2, 10,
            "A winding 30 yd round three cones: turns and curved running.", ["sierer2008"]),
    ];

    private static Metric Run(string id, string test, string label, double low, double high, string meaning, IReadOnlyList<string> sources) => new()
    {
        Id = id,
        Label = label,
        Unit = "s",
        Decimals = 2,
        Better = Direction.Lower,
        Quality = Quality.ChangeOfDirection,
        Rule = TrialRule.Best,
        RuleReason = "A maximal run: the fastest time is the trade's habit. A best-of gets faster with more runs, so give everyone the same number.",
        FromTrials = day => day.Of<AgilityTrial>().Where(t => t.Test == test)
            .Select(t => new TrialValue(t.Time.Seconds, null, SprintSeries.Of(t.Timing))),
        PlausibleLow = low,
        PlausibleHigh = high,
        Meaning = meaning,
        Formula = "time of the run",
        Sources = sources,
    };
}
