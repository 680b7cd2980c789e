using Analytics.Metrics.Catalogue;
using Analytics.Statistics.Change;

namespace Analytics.Metrics.Profile;

/// <summary>The needs of a squad, with what looking at so many athletes and qualities costs.</summary>
/// <remarks>
/// A quality is behind when the probability that the true value lies below the middle of the group by more than the margin reaches
/// the threshold. Among those the one furthest behind is the first need. Body size and momentum are not needs: they are not trained as one quality.
/// </remarks>
public sealed record SquadNeeds
{
    /// <summary>One entry an athlete of the squad, in the order of the squad list.</summary>
    public required IReadOnlyList<Need> Athletes { get; init; }

    /// <summary>Probability a need had to reach.</summary>
    public required double Threshold { get; init; }

    /// <summary>Athlete-by-quality comparisons made.</summary>
    public int Looks => Athletes.Sum(a => a.Looks);

    /// <summary>Needs named.</summary>
    public int Named => Athletes.Count(a => a.First is not null);

    /// <summary>
    /// How many of the needs named are expected to be wrong (the athlete is not behind by more than the margin): the sum of one minus their
    /// probabilities. Looking at many qualities does not spoil this count as long as the model holds, since each probability already weighs how rare
    /// a large deficit is.
    /// </summary>
    public double ExpectedWrong => Athletes.Sum(a => a.First is { } need ? 1 - need.Probability : 0);

    internal static SquadNeeds Of(
        SquadProfile profile, IReadOnlyList<GroupStanding> standings, IReadOnlyList<SquadChange> changes, IReadOnlyDictionary<string, string> unavailable)
    {
        ArgumentNullException.ThrowIfNull(standings);
        ArgumentNullException.ThrowIfNull(changes);
        ArgumentNullException.ThrowIfNull(unavailable);
        var trained = standings.Where(s => s.Metric.Better != Direction.Neither && s.Metric.Quality is not (Quality.Body or Quality.Momentum)).ToList();
        return new()
        {
            Athletes = [.. profile.Squad.Select(m => Of(profile, m, trained, changes, unavailable))],
            Threshold = profile.NeedProbability,
        };
    }

    private static Need Of(
        SquadProfile profile, SquadMember member, List<GroupStanding> standings, IReadOnlyList<SquadChange> changes, IReadOnlyDictionary<string, string> unavailable)
    {
        var losses = changes.SelectMany(c => c.Athletes.Where(a => a.AthleteId == member.Id && a.Verdict == Verdict.ClearLoss)
            .Select(a => new ClearLoss(c.Metric, a))).ToList();
        Need Open(string why, int looks) => new(member.Id, member.Group, null, [], why, losses, looks);

        if (unavailable.TryGetValue(member.Id, out var status)) return Open($"not judged: {status}", 0);
        var tested = standings.Select(s => (s.Metric, Standing: s.For(member.Id), s.Spread)).Where(s => s.Standing is not null).ToList();
        if (tested.Count == 0) return Open("not tested", 0);

        var qualities = tested.Where(s => s.Standing!.ProbabilityBehind.HasValue).GroupBy(s => s.Metric.Quality).ToList();
        if (qualities.Count < profile.MinimumQualities)
        {
            return Open(qualities.Count == 0
                ? $"no test can be compared: {tested[0].Standing!.Reason}"
                : $"only {qualities.Count} {(qualities.Count == 1 ? "quality" : "qualities")} can be compared, {profile.MinimumQualities} are needed", qualities.Count);
        }

        var split = 0;
        var behind = new List<QualityBehind>();
        foreach (var quality in qualities)
        {
            var (metric, standing, spread) = quality.First();
            if (standing!.ProbabilityBehind < profile.NeedProbability) continue;

            // Another test of the same quality that says "not behind" leaves the matter open.
            if (quality.Any(s => s.Standing!.ProbabilityBehind < 0.5)) split++;
            else behind.Add(new(quality.Key, metric, standing, -standing.Likely!.Value / Math.Sqrt(spread!.TrueVariance!.Value)));
        }

        behind.Sort((a, b) => b.Deficit.CompareTo(a.Deficit));
        if (behind.Count > 0) return new(member.Id, member.Group, behind[0], behind[1..], null, losses, qualities.Count);
        return Open(split > 0 ? "tests of the same quality disagree" : "no quality clearly behind the group", qualities.Count);
    }
}
