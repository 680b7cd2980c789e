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

    // Values of a metric on both days, by athlete.
    private sealed class Pairs(SeasonValues values, RetestColumns days)
    {
        public Metric Metric => values.Metric;

        public Dictionary<string, (double First, double Second)> Of { get; } = days.Athletes.Select(a => (Athlete: a, Pair: days.Pair(values, a)))
            .Where(p => p.Pair is not null).ToDictionary(p => p.Athlete, p => p.Pair!.Value, StringComparer.Ordinal);
    }

    private sealed record Candidate(Pairs Of, double[] First, double[] Second)
    {
        public double[] Mean { get; } = [.. First.Zip(Second, (a, b) => (a + b) / 2)];
    }

    private sealed record Choice(Candidate Own, IReadOnlyList<Candidate> Others, double Given, int Groups);

    // Less than this is rounding, and two that give the same would be exchanged for ever.
    private const double LeastGain = 1e-9;

    /// <summary>From two retest days; null when no library metric was done by enough of the athletes.</summary>
    public static Remaining? On(BenchSquad squad, SeasonValues values, RetestColumns days)
    {
        var wanted = squad.Rule.LeastShared * days.Athletes.Count;
        // Read once a metric: they are tried with each other over and over.
        var own = new Pairs(values, days);
        var able = squad.Library.Select(m => new Pairs(squad.Values(m), days)).Where(p => p.Of.Count >= wanted).ToList();
        Choice? Beside(params Pairs[] kept) => able.Except(kept).Select(p => Chosen(squad, own, days, wanted, [.. kept, p])).OfType<Choice>()
            .OrderByDescending(c => c.Given).ThenBy(c => c.Others[^1].Of.Metric.Id, StringComparer.Ordinal).FirstOrDefault();

        if (Beside() is not { } best) return null;
        // The two are sought one after the other, then the older one is exchanged while that gives more: a metric that goes a little with both of a pair must not hide the pair.
        if (Beside(best.Others[0].Of) is { } two)
        {
            best = two;
            while (Beside(best.Others[1].Of) is { } other && other.Given > best.Given + LeastGain) best = other;
        }

        var share = OwnShare.Of(new(best.Own.First, best.Own.Second), [.. best.Others.Select(c => new OccasionPair(c.First, c.Second))], best.Groups);
        return new([.. best.Others.Select(c => c.Of.Metric)], share, $"{share.N} players on both retest days, values less the mean of their group");
    }

    // The metric beside some of the library, among the athletes who have all of them on both days; null with too few.
    private static Choice? Chosen(BenchSquad squad, Pairs own, RetestColumns days, double wanted, IReadOnlyList<Pairs> others)
    {
        var centred = GroupCentred.From(days.Athletes.Where(a => others.All(o => o.Of.ContainsKey(a))), squad.Profile);
        if (centred.Athletes.Count < Math.Max(Math.Max(squad.Rule.Fewest, centred.Groups + 5), wanted)) return null;
        var column = Columns(own, centred);
        List<Candidate> columns = [.. others.Select(o => Columns(o, centred))];
        return Explained(column.Mean, [.. columns.Select(c => c.Mean)]) is { } given ? new(column, columns, given, centred.Groups) : null;
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

    private static Candidate Columns(Pairs pairs, GroupCentred centred)
    {
        var logs = centred.Athletes.All(a => pairs.Of[a] is { First: > 0, Second: > 0 });
        double Scale(double v) => logs ? Math.Log(v) : v;
        return new(pairs, centred.Centre(a => Scale(pairs.Of[a].First)), centred.Centre(a => Scale(pairs.Of[a].Second)));
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
