using Analytics.Statistics.Association;
using Analytics.Statistics.Association.Repeated;

namespace Analytics.Metrics.Transfer;

/// <summary>What errors alone give: a good day helps both tests, and who started luckily falls back in both.</summary>
public sealed record SharedErrors
{
    /// <summary>Correlation of the differences between the retest days, which hold errors only; null without enough retests of both.</summary>
    public required Correlation? OnRetestDays { get; init; }

    /// <summary>The same correlation from what is left around each player's own line over all days; null with too few days.</summary>
    public required double? AroundLines { get; init; }

    /// <summary>Correlation of the gains that these errors alone give; null with too few days.</summary>
    public required double? OfGains { get; init; }

    /// <summary>Correlation of the gains that falling back from the two starting levels alone gives (regression to the mean); null without typical errors.</summary>
    public required double? FallingBack { get; init; }

    internal static SharedErrors Of(TransferMeasure x, TransferMeasure y, GainCorrelation gains, TestingCalendar calendar, double level) => new()
    {
        OnRetestDays = Retest(x, y, calendar, level),
        AroundLines = gains.OfErrors,
        OfGains = gains.FromErrors,
        FallingBack = Falling(x, y, gains, calendar),
    };

    private static Correlation? Retest(TransferMeasure x, TransferMeasure y, TestingCalendar calendar, double level)
    {
        if (calendar.Retest is not [var first, var second]) return null;
        List<double> dx = [], dy = [];
        foreach (var ((id, _), before) in x.Turned.Where(v => v.Key.Day == first).OrderBy(v => v.Key.Athlete, StringComparer.Ordinal))
        {
            if (!x.Turned.TryGetValue((id, second), out var after) || !y.Turned.TryGetValue((id, first), out var b) || !y.Turned.TryGetValue((id, second), out var a)) continue;
            dx.Add(after - before);
            dy.Add(a - b);
        }

        return dx.Count > 3 && dx.Distinct().Count() > 1 && dy.Distinct().Count() > 1 ? Correlation.Pearson(dx, dy, level) : null;
    }

    // Expected changes by regression to the mean are −share × (start − mean): their covariance over the SDs of the gains.
    private static double? Falling(TransferMeasure x, TransferMeasure y, GainCorrelation gains, TestingCalendar calendar)
    {
        if (StartFallBack.Of(x.Turned, calendar, x.TypicalError) is not { } fx || StartFallBack.Of(y.Turned, calendar, y.TypicalError) is not { } fy) return null;
        var (sx, sy) = (calendar.Starts(x.Turned), calendar.Starts(y.Turned));
        var ids = gains.Gains.Select(g => g.Athlete).Where(id => sx.ContainsKey(id) && sy.ContainsKey(id)).ToList();
        if (ids.Count < 4) return null;
        double[] a = [.. ids.Select(id => sx[id].Mean)], b = [.. ids.Select(id => sy[id].Mean)];
        var (ma, mb, mx, my) = (a.Average(), b.Average(), gains.Gains.Average(g => g.X), gains.Gains.Average(g => g.Y));
        var covariance = a.Zip(b, (p, q) => (p - ma) * (q - mb)).Sum() / (ids.Count - 1);
        var spread = Math.Sqrt(gains.Gains.Sum(g => (g.X - mx) * (g.X - mx)) * gains.Gains.Sum(g => (g.Y - my) * (g.Y - my))) / (gains.Athletes - 1);
        return fx.Share * fy.Share * covariance / spread;
    }
}
