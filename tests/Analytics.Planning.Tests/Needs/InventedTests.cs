using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Trials;
using Analytics.Planning.Needs;

namespace Analytics.Planning.Tests.Needs;

/// <summary>A trial that simply is a number.</summary>
internal sealed record NumberTrial : Trial
{
    public required double Value { get; init; }
}

/// <summary>Tests of an invented line of seven with error 1, as in the hand-worked cases of the standings.</summary>
internal static class InventedTests
{
    public static readonly DateOnly March = new(2026, 3, 2);

    /// <summary>The result of one of seven players with the values 10, 20, ... 70: middle 40, margin 4.315859, and by hand (R for Student's law, 6 degrees of
    /// freedom) the probabilities of being behind 0.98972, 0.94732, 0.74197, 0.30895 for the first four.</summary>
    public static PlayerTest Of(string metricId, Quality quality, int place, DateOnly? date = null, Direction better = Direction.Higher, PublishedError? error = null)
    {
        var day = date ?? March;
        var metric = Metric(metricId, quality, better, error ?? new PublishedError(null, 1, "key"));
        // Where lower is better the values run the other way, so that the first player is the last of the group all the same.
        AthleteDay[] days = [.. Enumerable.Range(1, 7).Select(i => new AthleteDay
        {
            AthleteId = $"a{i}",
            Date = day,
            Trials = [new NumberTrial { AthleteId = $"a{i}", Date = day, Value = 10 * (better == Direction.Lower ? 8 - i : i) }],
        })];
        var standing = new SquadProfile { Squad = [.. days.Select(d => new SquadMember(d.AthleteId, "Line"))] }.Standing(metric, days);
        return new PlayerTest { Metric = metric, Date = day, Standing = standing.For($"a{place}"), Margin = standing.Margin.Value };
    }

    private static Metric Metric(string id, Quality quality, Direction better, PublishedError error) => new()
    {
        Id = id,
        Label = "Test " + id,
        Unit = "kg",
        Decimals = 1,
        Better = better,
        Quality = quality,
        Rule = TrialRule.Best,
        FromTrials = day => day.Of<NumberTrial>().Select(t => new TrialValue(t.Value)),
        PlausibleLow = 0,
        PlausibleHigh = 1000,
        Meaning = "",
        Formula = "",
        Sources = [],
        PublishedError = error,
    };
}
