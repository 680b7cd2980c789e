using Analytics.Metrics.Catalogue;
using Analytics.Planning.Exercises;
using Analytics.Planning.People;
using Analytics.Planning.Rules;
using Analytics.Planning.Weeks;

namespace Analytics.Planning.Needs;

/// <summary>
/// What a player needs, quality by quality, strength for the legs and for the upper body each for itself, as far as his tests can say: the first test of it that gives a
/// probability speaks for it, another one of the same tested quality may object. No least number of qualities: a squad with lifts and a stopwatch is told what these can tell. See docs/methods/planning.md.
/// </summary>
public static class PlayerNeeds
{
    /// <summary>Probability below which another test of the quality says "not behind".</summary>
    public const double NotBehind = 0.5;

    /// <summary>
    /// One entry for each trained quality, in session order; of strength one for each half of the body that was tested: a good bench says nothing about a weak squat.
    /// What cannot be said is there with its reason.
    /// </summary>
    /// <param name="group">Position group of the player.</param>
    /// <param name="tests">His tests, at most one a metric, in any order; those after <paramref name="today"/> are not looked at.</param>
    /// <param name="today">Day the needs are for.</param>
    /// <param name="rules">Rules: probability of a need, days after which a test is old or says nothing.</param>
    /// <param name="targets">Targets of the coach.</param>
    /// <param name="show">A value of a metric with its unit, in words; null for the catalogue's unit.</param>
    /// <exception cref="ArgumentException">Two tests of one metric.</exception>
    public static IReadOnlyList<QualityNeed> Of(
        string group, IEnumerable<PlayerTest> tests, DateOnly today, PlanRules rules, GroupTargets targets, Func<Metric, double, string>? show = null)
    {
        ArgumentNullException.ThrowIfNull(tests);
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(targets);
        var words = new NeedWords(show, today, rules);
        var judged = tests.Where(t => t.Date <= today && t.Metric.Better != Direction.Neither)
            .Select(t => TestJudged.Of(t, group, targets)).OrderBy(t => NeedTests.PlaceOf(t.Test.Metric.Id)).ThenBy(t => t.Test.Metric.Id, StringComparer.Ordinal).ToList();
        if (judged.GroupBy(t => t.Test.Metric.Id).FirstOrDefault(g => g.Skip(1).Any()) is { } twice)
            throw new ArgumentException($"There are two tests of {twice.Key}; give the one that counts.", nameof(tests));
        return [.. TrainedQualities.All.SelectMany(q => OfQuality(q, [.. judged.Where(t => Serves(t, q))], words, rules))];
    }

    // A test that reports do not take as one of needs counts once the coach has set a target for it.
    private static bool Serves(TestJudged test, TrainedQuality quality)
        => TrainedQualities.ServedBy(test.Test.Metric.Quality) == quality && (test.Target is not null || NeedTests.Order.Contains(test.Test.Metric.Id));

    private static IEnumerable<QualityNeed> OfQuality(TrainedQuality quality, List<TestJudged> tests, NeedWords words, PlanRules rules)
        => tests.Count == 0 ? [new(quality, null, "cannot say: no test of it", false)]
            : tests.GroupBy(t => NeedTests.HalfOf(t.Test.Metric)).OrderBy(h => h.Key).Select(h => Of(quality, h.Key, [.. h], words, rules));

    private static QualityNeed Of(TrainedQuality quality, BodyHalf half, List<TestJudged> tests, NeedWords words, PlanRules rules)
    {
        QualityNeed Open(string why) => new(quality, null, "cannot say: " + why, false) { Half = half };
        var fresh = tests.Where(t => !words.IsExpired(t.Test)).ToList();
        if (fresh.Count == 0) return Open(words.Expired(tests.MaxBy(t => t.Test.Date)!.Test));

        var known = fresh.Where(t => t.Probability is not null).ToList();
        if (known.Count == 0) return Open(NeedWords.NotComparable(fresh[0].Test));
        // What the coach has set targets for is what he asks about; the other tests of the quality are then not asked.
        if (known.Exists(t => t.Target is not null)) known.RemoveAll(t => t.Target is null);

        var first = known[0];
        var isBehind = rules.IsOn(RuleIds.NeedProbability) && first.Probability >= rules.Value(RuleIds.NeedProbability) / 100;
        if (isBehind && known.Find(t => t.Test.Metric.Quality == first.Test.Metric.Quality && t.Probability < NotBehind) is { } objects)
            return Open($"tests disagree: {words.Said(first)}; {words.Said(objects)}");
        return new(quality, first.Probability, words.Said(first) + (isBehind ? "" : words.NotEnough()), isBehind) { Half = half };
    }
}

/// <summary>A test with the probability that the player is below the target.</summary>
/// <param name="Test">The test.</param>
/// <param name="Target">Target of the coach; null when the middle of the group less the margin is it.</param>
/// <param name="Probability">0 to 1; null when it cannot be stated.</param>
internal sealed record TestJudged(PlayerTest Test, double? Target, double? Probability)
{
    public static TestJudged Of(PlayerTest test, string group, GroupTargets targets)
    {
        var target = targets.Of(group, test.Metric.Id);
        return new(test, target, target is { } value ? test.Standing?.ProbabilityWorseThan(value) : test.Standing?.ProbabilityBehind);
    }
}
