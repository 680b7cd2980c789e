using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Statistics.Change;
using Analytics.Statistics.Multiplicity;

namespace Analytics.Metrics.Seasons;

/// <summary>
/// How each athlete changed over the season in one metric: from his baseline, the mean of both days when he did both of a retest, to his last occasion.
/// Every athlete of the squad list with a value is in exactly one of <see cref="Athletes"/> and <see cref="OneOccasionOnly"/>.
/// </summary>
public sealed record SeasonChange
{
    /// <summary>The metric.</summary>
    public required Metric Metric { get; init; }

    /// <summary>The scale compared; null when there is no value.</summary>
    public required string? Series { get; init; }

    /// <summary>Changes of those with values on two occasions, largest improvement first (largest rise when no direction is better).</summary>
    public required IReadOnlyList<AthleteSeason> Athletes { get; init; }

    /// <summary>Athletes with values on one occasion only.</summary>
    public required IReadOnlyList<string> OneOccasionOnly { get; init; }

    /// <summary>Athletes with a value who are not in the squad list.</summary>
    public required IReadOnlyList<string> WithoutGroup { get; init; }

    /// <summary>Athletes of the squad list without any value on the scale compared.</summary>
    public required IReadOnlyList<string> WithoutValue { get; init; }

    /// <summary>Values on other scales.</summary>
    public required IReadOnlyList<NotCompared> NotCompared { get; init; }

    /// <summary>The typical error the athletes were judged by.</summary>
    public required MetricReliability Reliability { get; init; }

    /// <summary>The smallest worthwhile change and how it was chosen.</summary>
    public required SmallestWorthwhileChange Worthwhile { get; init; }

    /// <summary>The rule.</summary>
    public required VerdictRule Rule { get; init; }

    /// <summary>The change that can be told from none, by how many values were averaged; empty when no error is known.</summary>
    public IReadOnlyList<DetectableChange> Detectable =>
    [
        .. Athletes.Where(a => a.Change is not null).GroupBy(a => (Before: a.Baseline.Occasions, After: a.Last.Occasions, Equation: a.HasEquationError))
            .OrderBy(g => g.Key).Select(g => new DetectableChange(
                g.Key.Before, g.Key.After, g.Key.Equation, g.Count(), g.Average(a => a.Change!.DetectableChange(Rule.Level)))),
    ];

    /// <summary>Number of clear gains. For a metric without a better direction a gain is a rise.</summary>
    public int Gains => Athletes.Count(a => a.Verdict == Verdict.ClearGain);

    /// <summary>Number of clear losses.</summary>
    public int Losses => Athletes.Count(a => a.Verdict == Verdict.ClearLoss);

    /// <summary>Clear verdicts, gains and losses together, that chance alone would give if nobody had changed: at most this many.</summary>
    public ChanceFlags ByChance => FlagRates.ByChance(Athletes.Count(a => a.Reason is null), Athletes.Count == 0 ? 0 : Rule.LargestFalseFlagRate);

    /// <summary>What to bear in mind, in words a report can print.</summary>
    public IReadOnlyList<string> Cautions
    {
        get
        {
            var unlike = Athletes.Count(a => a.HasEquationError);
            var part = Athletes.Count(a => !a.IsWholeSeason);
            return
            [
                .. Reliability.Cautions,
                .. unlike == 0 ? (string[])[] : [$"{unlike} of {Athletes.Count} changes compare values that were not made the same way (measured or estimated, or from other repetitions); the equation's error is added."],
                .. part == 0 ? (string[])[] : [$"{part} of {Athletes.Count} athletes were tested over a part of the season only; their change is that of their own part."],
                "Athletes singled out for a low first score tend to score higher next time without any training, and the other way round.",
            ];
        }
    }

    /// <summary>Judges everybody.</summary>
    /// <param name="profile">The squad with its groups, retest days and rule.</param>
    /// <param name="values">The metric over the season.</param>
    public static SeasonChange Of(SquadProfile profile, SeasonValues values)
    {
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(values);
        var reliability = values.Reliability(profile);
        var occasions = SeasonPeriods.Occasions(values.Dates, profile.Retests);
        var periods = SeasonPeriods.Of(values.Dates, profile.Retests);
        var worthwhile = FirstValues.Worthwhile(profile, values, periods, reliability);
        var judge = new SeasonJudge(profile, values, reliability, worthwhile, occasions, periods);
        List<SquadMember> squad = [.. profile.Squad.DistinctBy(m => m.Id)];
        List<SquadMember> tested = [.. squad.Where(m => values.Of(m.Id).Count > 0)];
        var known = squad.Select(m => m.Id).ToHashSet(StringComparer.Ordinal);
        List<(string Id, AthleteSeason? Season)> judged = [.. tested.Select(m => (m.Id, judge.Of(m)))];
        return new()
        {
            Metric = values.Metric,
            Series = values.Series,
            Athletes =
            [
                .. judged.Select(j => j.Season).OfType<AthleteSeason>()
                    .OrderByDescending(a => values.Metric.Better == Direction.Lower ? -a.Difference : a.Difference).ThenBy(a => a.AthleteId, StringComparer.Ordinal),
            ],
            OneOccasionOnly = [.. judged.Where(j => j.Season is null).Select(j => j.Id)],
            WithoutGroup = [.. values.Athletes.Where(id => !known.Contains(id))],
            WithoutValue = [.. squad.Select(m => m.Id).Where(id => values.Of(id).Count == 0)],
            NotCompared = values.NotCompared,
            Reliability = reliability,
            Worthwhile = worthwhile,
            Rule = profile.Rule,
        };
    }
}
