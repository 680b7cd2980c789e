using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Statistics.Change;

namespace Analytics.Metrics.Profile;

/// <summary>The squad, its retest days and the coach's choices: what every comparison of a season needs. Made once, then asked.</summary>
/// <example>
/// <code>
/// var profile = new SquadProfile { Squad = members, Retests = [RepeatDays.Pair(monday, thursday)] };
/// SquadChange change = profile.Change(MetricCatalogue.Get("back_squat_1rm"), march, april);
/// GroupStanding standing = profile.Standing(MetricCatalogue.Get("cmj_height"), april);
/// SquadNeeds needs = profile.Needs(standings, changes, unavailable);
/// </code>
/// </example>
public sealed record SquadProfile
{
    /// <summary>The athletes with their position groups. Spread between athletes is measured within these groups.</summary>
    public required IReadOnlyList<SquadMember> Squad { get; init; }

    /// <summary>Retest days of the season; empty when there were none.</summary>
    public IReadOnlyList<RepeatDays> Retests { get; init; } = [];

    /// <summary>Fewest athletes on retest days for an error of the squad's own; below it the published one is used.</summary>
    public int MinimumRetested { get; init; } = 8;

    /// <summary>Smallest worthwhile change as a share of the SD between athletes of the same group, test error taken off.</summary>
    public double WorthwhileShare { get; init; } = 0.2;

    /// <summary>Smallest worthwhile changes the coach has set, by metric identifier, in the metric's catalogue unit.</summary>
    public IReadOnlyDictionary<string, double> Worthwhile { get; init; } = new Dictionary<string, double>();

    /// <summary>The rule behind the verdicts.</summary>
    public VerdictRule Rule { get; init; } = BeyondErrorRule.Standard;

    /// <summary>Fewest athletes of a group who must have done a test before one of them is compared with the group.</summary>
    public int MinimumGroup { get; init; } = 3;

    /// <summary>Probability of being behind that a need must reach.</summary>
    public double NeedProbability { get; init; } = 0.80;

    /// <summary>Fewest qualities an athlete must have been tested in before one of them is called the need.</summary>
    public int MinimumQualities { get; init; } = 3;

    /// <summary>Change of everybody in one metric between two testing days.</summary>
    /// <param name="metric">The metric.</param>
    /// <param name="before">The earlier day.</param>
    /// <param name="after">The later day.</param>
    public SquadChange Change(Metric metric, IReadOnlyList<AthleteDay> before, IReadOnlyList<AthleteDay> after)
        => SquadChange.Of(this, metric, before, after);

    /// <summary>Where everybody stands in one metric within the position group.</summary>
    /// <param name="metric">The metric.</param>
    /// <param name="day">The testing day.</param>
    public GroupStanding Standing(Metric metric, IReadOnlyList<AthleteDay> day) => GroupStanding.Of(this, metric, day);

    /// <summary>What each athlete most needs next, where the tests can say so.</summary>
    /// <param name="standings">One standing a metric; the first of a quality speaks for it, the others may object.</param>
    /// <param name="changes">Changes since the previous day; clear losses are passed on beside the need. May be empty.</param>
    /// <param name="unavailable">Athletes not to be judged now, with their status as written ("injured").</param>
    public SquadNeeds Needs(
        IReadOnlyList<GroupStanding> standings, IReadOnlyList<SquadChange> changes, IReadOnlyDictionary<string, string> unavailable)
        => SquadNeeds.Of(this, standings, changes, unavailable);

    internal string? GroupOf(string athleteId) => Squad.FirstOrDefault(m => m.Id == athleteId)?.Group;
}
