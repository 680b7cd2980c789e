using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;
using Analytics.Statistics;
using Analytics.Statistics.Reliability;

namespace Analytics.Metrics.Bench;

/// <summary>What the repeats of a metric are.</summary>
public enum RepeatKind
{
    /// <summary>Testing days so close together that nobody truly changed.</summary>
    RetestDays,

    /// <summary>Attempts of one day: an upper bound, the day itself is not repeated. The ICC is that of their mean, which no best attempt exceeds with normal errors.</summary>
    SameDay,

    /// <summary>Occasions weeks apart: a lower bound, players change between them.</summary>
    Occasions,

    /// <summary>There are none.</summary>
    None,
}

/// <summary>How well a metric returns, from the best repeats there are.</summary>
/// <param name="Kind">What the repeats are.</param>
/// <param name="Icc">Share of the variance that is between athletes; null when there is none to compute.</param>
/// <param name="Athletes">Athletes with repeats.</param>
/// <param name="LeaveOneOut">The same with each athlete left out in turn.</param>
public sealed record Repeatability(RepeatKind Kind, IntraclassCorrelation? Icc, int Athletes, IReadOnlyList<IntraclassCorrelation> LeaveOneOut)
{
    /// <summary>Estimate; null when there is none.</summary>
    public double? Value => Icc?.Value;

    /// <summary>Interval; null when there is none.</summary>
    public Interval? Interval => Icc?.Interval;

    internal static Repeatability Of(SquadProfile profile, SeasonValues values, BenchRule rule)
    {
        var retested = profile.Retests.Select(r => RetestRows.Of(values.Metric, values.Series, [r], rule.Fewest))
            .Select(r => r.Rows.Where(row => row.All(v => v.HasValue)).ToList()).MaxBy(r => r.Count) ?? [];
        return Try(RepeatKind.RetestDays, retested, IccForm.ConsistencySingle, rule)
            ?? Try(RepeatKind.SameDay, SameDay(values), IccForm.OneWayMean, rule)
            ?? Try(RepeatKind.Occasions, Apart(profile, values), IccForm.ConsistencySingle, rule)
            ?? new(RepeatKind.None, null, 0, []);
    }

    private static Repeatability? Try(RepeatKind kind, List<IReadOnlyList<double?>> rows, IccForm form, BenchRule rule)
    {
        if (rows.Count < rule.Fewest || !Varies(rows)) return null;
        var without = rows.Select((_, i) => rows.Where((_, j) => j != i).ToList()).Where(Varies);
        return new(kind, Correlate(rows, form), rows.Count, [.. without.Select(r => Correlate(r, form))]);
    }

    private static bool Varies(List<IReadOnlyList<double?>> rows) => !Flat.Is(rows.SelectMany(r => r).OfType<double>());

    private static IntraclassCorrelation Correlate(List<IReadOnlyList<double?>> rows, IccForm form) => IntraclassCorrelation.Of(TrialTable.FromRows(rows), form);

    // The first day of everybody with two attempts or more; as many attempts of each as most have.
    private static List<IReadOnlyList<double?>> SameDay(SeasonValues values)
    {
        var firsts = values.Athletes.Select(a => values.Of(a).FirstOrDefault(v => v.Attempts.Count > 1)).OfType<DayValue>().ToList();
        if (firsts.Count == 0) return [];
        var usual = firsts.GroupBy(f => f.Attempts.Count).OrderByDescending(g => g.Count()).ThenBy(g => g.Key).First().Key;
        return [.. firsts.Where(f => f.Attempts.Count >= usual).Select(f => (IReadOnlyList<double?>)[.. f.Attempts.Take(usual).Select(a => (double?)a.Value)])];
    }

    private static List<IReadOnlyList<double?>> Apart(SquadProfile profile, SeasonValues values)
    {
        var occasions = SeasonPeriods.Occasions(values.Dates, profile.Retests).All;
        if (occasions.Count < 2) return [];
        var all = occasions.Select(o => OccasionValues.On(values, o)).ToList();
        var (first, second) = Enumerable.Range(0, all.Count).SelectMany(i => Enumerable.Range(i + 1, all.Count - i - 1).Select(j => (all[i], all[j])))
            .MaxBy(p => p.Item1.Athletes.Count(a => p.Item2.Of(a) is not null));
        return [.. first.Athletes.Where(a => second.Of(a) is not null).Select(a => (IReadOnlyList<double?>)[first.Of(a), second.Of(a)])];
    }
}
