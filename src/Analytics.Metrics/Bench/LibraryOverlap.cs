using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;
using Analytics.Statistics.Association;
using Analytics.Statistics.Reliability;

namespace Analytics.Metrics.Bench;

/// <summary>How a metric ranks players beside one library metric.</summary>
/// <param name="Metric">The library metric.</param>
/// <param name="Squad">Rank correlation over the squad.</param>
/// <param name="WithinGroups">The same of values less the mean of the group; null with too few players.</param>
public sealed record OverlapRow(Metric Metric, Correlation Squad, Correlation? WithinGroups)
{
    /// <summary>Size by which rows are ordered: that within groups, else that over the squad.</summary>
    public double Size => Math.Abs((WithinGroups ?? Squad).Value);
}

/// <summary>What a metric says that the library's do not.</summary>
/// <param name="Rows">Rank correlations with every library metric enough players did on the same occasion, largest first.</param>
/// <param name="BestTwo">The two library metrics that give most of it, or one; empty when none was done by enough players on both days.</param>
/// <param name="Own">Share of its lasting differences between players of a group that these do not give; null without a retest.</param>
/// <param name="GivenByTwo">Share of its variance between players of a group that these give, 0 to 1; null without them.</param>
/// <param name="Basis">What this rests on, or why there is no figure, in words a report can print.</param>
public sealed record LibraryOverlap(IReadOnlyList<OverlapRow> Rows, IReadOnlyList<Metric> BestTwo, OwnShare? Own, double? GivenByTwo, string Basis)
{
    internal static LibraryOverlap Of(BenchSquad squad, SeasonValues values, SeasonPeriod occasion)
    {
        var own = OccasionValues.On(values, occasion);
        var rows = squad.Library.Select(m => Row(squad, m, own, occasion)).OfType<OverlapRow>()
            .OrderByDescending(r => r.Size).ThenBy(r => r.Metric.Id, StringComparer.Ordinal).ToList();
        var days = RetestColumns.Fullest(squad, values);
        if (days is not null && BestOfTwo.On(squad, values, days) is { } remaining)
            return new(rows, remaining.Others, remaining.Own, remaining.Own.FromOthers, remaining.Basis);
        var single = BestOfTwo.OnOneOccasion(squad, values, occasion);
        return new(rows, single?.Others ?? [], null, single?.Given, single?.Basis ?? "too few players did it and two library metrics on one occasion");
    }

    private static OverlapRow? Row(BenchSquad squad, Metric metric, OccasionValues own, SeasonPeriod occasion)
    {
        var other = OccasionValues.On(squad.Values(metric), occasion);
        List<string> both = [.. own.Athletes.Where(a => other.Of(a) is not null).Order(StringComparer.Ordinal)];
        if (Rank([.. both.Select(a => own.Of(a)!.Value)], [.. both.Select(a => other.Of(a)!.Value)], squad.Rule) is not { } over) return null;
        var centred = GroupCentred.From(both, squad.Profile);
        // Every group mean taken off leaves a player less to go by.
        var left = centred.Athletes.Count - centred.Groups + 1;
        var within = left < squad.Rule.Fewest ? null : Rank(centred.Centre(a => own.Of(a)!.Value), centred.Centre(a => other.Of(a)!.Value), squad.Rule);
        return new(metric, over, within is null ? null : within with { Interval = FisherInterval.Of(within.Value, left, kind: CorrelationKind.Spearman) });
    }

    private static Correlation? Rank(double[] x, double[] y, BenchRule rule)
        => x.Length >= rule.Fewest && !Flat.Is(x) && !Flat.Is(y) ? Correlation.Spearman(x, y) : null;
}
