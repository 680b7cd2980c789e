using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;
using Analytics.Statistics.Association;
using Analytics.Statistics.Reliability;

namespace Analytics.Metrics.Bench;

/// <summary>The one or two library metrics that give most of another metric, within groups.</summary>
internal static class BestOfTwo
{
    public sealed record Remaining(IReadOnlyList<Metric> Others, OwnShare Own, string Basis);

    private sealed record Candidate(Metric Metric, double[] First, double[] Second)
    {
        public double[] Mean { get; } = [.. First.Zip(Second, (a, b) => (a + b) / 2)];
    }

    /// <summary>From two retest days; null when no library metric was done by enough of the athletes.</summary>
    public static Remaining? On(BenchSquad squad, SeasonValues values, RetestColumns days)
    {
        var wanted = squad.Rule.LeastShared * days.Athletes.Count;
        var able = squad.Library.Where(m => days.Athletes.Count(a => days.Pair(squad.Values(m), a) is not null) >= wanted).ToList();
        if (able.Count == 0) return null;
        // The two are sought one after the other, each among the athletes who have all of those before.
        var (chosen, centred) = (new List<Candidate>(), GroupCentred.From(days.Athletes, squad.Profile));
        Candidate own = Columns(values.Metric, values, days, centred);
        foreach (var _ in Enumerable.Range(0, Math.Min(2, able.Count)))
        {
            var tried = able.Where(m => chosen.All(c => c.Metric != m)).Select(m =>
            {
                var with = GroupCentred.From(centred.Athletes.Where(a => days.Pair(squad.Values(m), a) is not null), squad.Profile);
                var columns = chosen.Select(c => c.Metric).Append(m).Select(x => Columns(x, squad.Values(x), days, with)).ToList();
                return (Metric: m, With: with, Columns: columns, Own: Columns(values.Metric, values, days, with));
            }).Where(t => t.With.Athletes.Count >= Math.Max(squad.Rule.Fewest, t.With.Groups + 5) && t.With.Athletes.Count >= wanted)
                .Select(t => (t.Metric, t.With, t.Columns, t.Own, R: Explained(t.Own.Mean, [.. t.Columns.Select(c => c.Mean)])))
                .Where(t => t.R is not null).OrderByDescending(t => t.R).ThenBy(t => t.Metric.Id, StringComparer.Ordinal).ToList();
            if (tried.Count == 0) break;
            (centred, own) = (tried[0].With, tried[0].Own);
            chosen = tried[0].Columns;
        }

        if (chosen.Count == 0) return null;
        var share = OwnShare.Of(new(own.First, own.Second), [.. chosen.Select(c => new OccasionPair(c.First, c.Second))], centred.Groups);
        return new([.. chosen.Select(c => c.Metric)], share, $"{share.N} players on both retest days, values less the mean of their group");
    }

    /// <summary>From one occasion; null when no library metric was done by enough of the athletes.</summary>
    public static (IReadOnlyList<Metric> Others, double? Given, string Basis)? OnOneOccasion(BenchSquad squad, SeasonValues values, SeasonPeriod occasion)
    {
        var own = OccasionValues.On(values, occasion);
        var wanted = Math.Max(squad.Rule.Fewest, squad.Rule.LeastShared * own.Count);
        var others = squad.Library.Select(m => (Metric: m, Values: OccasionValues.On(squad.Values(m), occasion)))
            .Where(o => own.Athletes.Count(a => o.Values.Of(a) is not null) >= wanted).ToList();
        List<(IReadOnlyList<Metric> Others, double R, int N)> tried = [.. others.SelectMany((a, i) => others.Skip(i).Select(b => a.Metric == b.Metric ? [a] : new[] { a, b })).Select(pair =>
        {
            var centred = GroupCentred.From(own.Athletes.Where(a => pair.All(p => p.Values.Of(a) is not null)), squad.Profile);
            var r = centred.Athletes.Count < Math.Max(wanted, centred.Groups + 5) ? null
                : Explained(Logs(centred, a => own.Of(a)!.Value), [.. pair.Select(p => Logs(centred, a => p.Values.Of(a)!.Value))]);
            return r is { } share ? ((IReadOnlyList<Metric>)[.. pair.Select(p => p.Metric)], share, centred.Athletes.Count - centred.Groups) : default((IReadOnlyList<Metric>, double, int)?);
        }).OfType<(IReadOnlyList<Metric>, double, int)>()];
        if (tried.Count == 0) return null;
        var best = tried.OrderByDescending(t => t.R).ThenBy(t => t.Others.Count).ThenBy(t => t.Others[0].Id, StringComparer.Ordinal).First();
        return (best.Others, Math.Max(0, 1 - (1 - best.R) * best.N / (best.N - best.Others.Count)), "one occasion only: without retest days what remains cannot be told from test error");
    }

    private static Candidate Columns(Metric metric, SeasonValues values, RetestColumns days, GroupCentred centred)
    {
        var pairs = centred.Athletes.ToDictionary(a => a, a => days.Pair(values, a)!.Value, StringComparer.Ordinal);
        var logs = pairs.Values.All(p => p.First > 0 && p.Second > 0);
        double Scale(double v) => logs ? Math.Log(v) : v;
        return new(metric, centred.Centre(a => Scale(pairs[a].First)), centred.Centre(a => Scale(pairs[a].Second)));
    }

    // Products and powers are sums on the scale of logarithms, so a copy in another unit or a square is seen as what it is.
    private static double[] Logs(GroupCentred centred, Func<string, double> value)
    {
        var logs = centred.Athletes.All(a => value(a) > 0);
        return centred.Centre(a => logs ? Math.Log(value(a)) : value(a));
    }

    private static double? Explained(double[] y, IReadOnlyList<double[]> x)
        => y.All(v => v == 0) || x.Any(c => c.All(v => v == 0)) ? null
            : x.Count == 1 ? Math.Pow(Correlation.Pearson(x[0], y).Value, 2) : ExplainedByTwo(y, x[0], x[1]);

    // R² of two from the three correlations; a pair that says the same counts as one.
    private static double ExplainedByTwo(double[] y, double[] a, double[] b)
    {
        double ya = Correlation.Pearson(y, a).Value, yb = Correlation.Pearson(y, b).Value, ab = Correlation.Pearson(a, b).Value;
        var apart = 1 - ab * ab;
        return apart < 1e-10 ? ya * ya : Math.Clamp((ya * ya + yb * yb - 2 * ya * yb * ab) / apart, 0, 1);
    }
}
