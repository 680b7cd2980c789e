using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Statistics.Change;
using Analytics.Statistics.Shrinkage;
using Analytics.Statistics.Summaries;

namespace Analytics.Metrics.Profile;

/// <summary>Where each athlete stands within the position group in one metric on one day.</summary>
/// <remarks>
/// Model: an athlete's true value is normal about the middle of the group with one spread for all groups; the middles are normal about the squad's; the
/// test adds its typical error. Middles of small groups are pulled toward the squad, athletes toward their group, each by a weight that is stated.
/// </remarks>
public sealed record GroupStanding
{
    /// <summary>The metric.</summary>
    public required Metric Metric { get; init; }

    /// <summary>The day as evaluated, with the values not compared and those without a value.</summary>
    public required MetricDay Day { get; init; }

    /// <summary>The groups, in the order of the squad list.</summary>
    public required IReadOnlyList<GroupSummary> Groups { get; init; }

    /// <summary>The athletes with a value, in the order of the day.</summary>
    public required IReadOnlyList<AthleteStanding> Athletes { get; init; }

    /// <summary>Spread between athletes of the same group; null with too few athletes, and then nobody has a score.</summary>
    public required WithinGroupSpread? Spread { get; init; }

    /// <summary>The typical error used.</summary>
    public required MetricReliability Reliability { get; init; }

    /// <summary>How far behind counts as behind: the smallest worthwhile change, for "too small to matter" holds here too.</summary>
    public required SmallestWorthwhileChange Margin { get; init; }

    /// <summary>Athletes with a value who are not in the squad list and so have no group.</summary>
    public required IReadOnlyList<string> WithoutGroup { get; init; }

    /// <summary>The standing of one athlete; null when there is none.</summary>
    /// <param name="athleteId">Identifier of the athlete.</param>
    public AthleteStanding? For(string athleteId) => Athletes.FirstOrDefault(a => a.AthleteId == athleteId);

    internal static GroupStanding Of(SquadProfile profile, Metric metric, IReadOnlyList<AthleteDay> days)
    {
        var day = MetricDay.Of(metric, days);
        var reliability = MetricReliability.Of(metric, day.Series, profile.Retests, [days], profile.MinimumRetested);
        var spread = WithinGroupSpread.Of(profile, day, reliability);
        var margin = WithinGroupSpread.Worthwhile(profile, day, spread);
        var groups = Summaries(profile, day, spread);
        var known = day.Values.Where(v => profile.GroupOf(v.AthleteId) is not null).ToList();
        return new()
        {
            Metric = metric,
            Day = day,
            Groups = groups,
            Athletes = [.. known.Select(v => AthleteStanding.Of(profile, metric, v, groups.First(g => g.Group == profile.GroupOf(v.AthleteId)), spread, reliability, margin))],
            Spread = spread,
            Reliability = reliability,
            Margin = margin,
            WithoutGroup = [.. day.Values.Select(v => v.AthleteId).Where(id => profile.GroupOf(id) is null)],
        };
    }

    private static List<GroupSummary> Summaries(SquadProfile profile, MetricDay day, WithinGroupSpread? spread)
    {
        var summaries = profile.Squad.Select(m => m.Group).Distinct()
            .Select(group => (Group: group, Values: day.Values.Where(v => profile.GroupOf(v.AthleteId) == group).Select(v => v.Value).ToArray()))
            .Where(g => g.Values.Length > 0)
            .Select(g => (g.Group, Summary: Summary.Of(g.Values))).ToList();

        // Three group means cannot tell how far groups differ, so each keeps its own.
        if (spread is not { StandardDeviation: > 0 } || summaries.Count < MorrisShrinkage.Fewest)
        {
            return [.. summaries.Select(g => new GroupSummary(
                g.Group, g.Summary, g.Summary.Mean, spread is null ? null : spread.StandardDeviation / Math.Sqrt(g.Summary.N), 1))];
        }

        var shrunken = MorrisShrinkage.Of(
            [.. summaries.Select(g => g.Summary.Mean)], [.. summaries.Select(g => spread.StandardDeviation / Math.Sqrt(g.Summary.N))]);
        return [.. summaries.Zip(shrunken.Values, (g, s) => new GroupSummary(g.Group, g.Summary, s.Value, s.StandardError, s.Weight))];
    }
}

/// <summary>One position group in one metric.</summary>
/// <param name="Group">Name of the group.</param>
/// <param name="Values">Number, mean, SD, median, quartiles and extremes of the athletes' day values, in the metric's unit.</param>
/// <param name="Middle">The middle athletes are compared with: the mean, pulled toward the squad when the group is small.</param>
/// <param name="MiddleError">Standard error of the middle; null without a spread.</param>
/// <param name="Weight">Weight of the group's own mean in its middle, 0 to 1; 1 when not shrunken.</param>
public sealed record GroupSummary(string Group, Summary Values, double Middle, double? MiddleError, double Weight);
