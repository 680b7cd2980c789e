using Analytics.Metrics.Profile;
using Analytics.Statistics.MixedModels;

namespace Analytics.Metrics.Seasons;

/// <summary>The rows a trend is fitted to: every value, or an athlete's mean of a period when months were taken together.</summary>
internal sealed class TrendRows
{
    private readonly Dictionary<(string? Group, int Period), (double Sum, int Rows)> _shared = [];

    private TrendRows(IReadOnlyList<TrendRow> all, HashSet<string> groups) => (All, Groups) = (all, groups);

    public IReadOnlyList<TrendRow> All { get; }

    public HashSet<string> Groups { get; }

    public static TrendRows Of(SeasonValues values, MetricReliability reliability, SeasonPeriods periods, Dictionary<string, string> groups, bool proportional)
    {
        var points = values.Values.Where(v => groups.ContainsKey(v.AthleteId))
            .Select(v => (v.AthleteId, Group: groups[v.AthleteId], Period: periods.NumberOf(v.Date), Value: v))
            .ToList();
        double Scaled(double value) => proportional ? Math.Log(value) : value;
        IReadOnlyList<TrendRow> all = periods.AreCalendar
            ?
            [
                .. points.GroupBy(p => (p.AthleteId, p.Group, p.Period)).Select(g => new TrendRow(
                    g.Key.AthleteId, g.Key.Group, periods.All[g.Key.Period].Day, g.Average(p => Scaled(p.Value.Value))) { Weight = g.Average(p => Weight(p.Value, reliability)) }),
            ]
            : [.. points.Select(p => new TrendRow(p.AthleteId, p.Group, periods.All[p.Period].Day, Scaled(p.Value.Value)) { Weight = Weight(p.Value, reliability) })];
        var rows = new TrendRows(all, [.. points.Select(p => p.Group)]);
        foreach (var (_, group, period, value) in points)
        {
            var shared = value.Equation?.Shared ?? 0;
            rows.Add(null, period, proportional ? shared / value.Value : shared);
            rows.Add(group, period, proportional ? shared / value.Value : shared);
        }

        return rows;
    }

    /// <summary>Standard error of what an equation gets wrong about everybody alike, in the mean of a period; on the scale of the rows.</summary>
    public double SharedError(string? group, int period)
        => _shared.TryGetValue((group ?? "", period), out var found) ? found.Sum / found.Rows : 0;

    /// <summary>TE²/(TE² + equation²): a value estimated from repetitions counts less than a measured one, by what the equation gets wrong about the athlete.</summary>
    private static double Weight(DayValue value, MetricReliability reliability)
    {
        if (value.Equation is not { } e || reliability.ErrorAt(value.Value) is not (> 0 and var error)) return 1;
        var equation = (e.Personal * e.Personal) + (reliability.HoldsFreshEquationError ? 0 : e.Fresh * e.Fresh);
        return error * error / ((error * error) + equation);
    }

    private void Add(string? group, int period, double shared)
    {
        var (sum, count) = _shared.GetValueOrDefault((group ?? "", period));
        _shared[(group ?? "", period)] = (sum + shared, count + 1);
    }
}
