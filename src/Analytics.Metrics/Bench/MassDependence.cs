using Analytics.Metrics.Seasons;
using Analytics.Metrics.Trials;
using Analytics.Statistics;
using Analytics.Statistics.Association;
using Analytics.Statistics.Fitting;
using Analytics.Statistics.Resampling;

namespace Analytics.Metrics.Bench;

/// <summary>How a metric goes with body mass over the squad.</summary>
/// <param name="N">Athletes with both.</param>
/// <param name="Rank">Rank correlation with body mass.</param>
/// <param name="Exponent">Power of body mass the metric grows with: slope of the logarithms, interval by resampling of athletes; null where a value is 0 or less.</param>
/// <param name="LeastWithoutOne">Lowest exponent when one athlete is left out; null without an exponent.</param>
/// <param name="MostWithoutOne">Highest exponent when one athlete is left out; null without an exponent.</param>
/// <remarks>0: no dependence. 1: in proportion. 0.67 by geometric similarity for strength; 0.29 to 0.56 were found in football players [oba2014].</remarks>
public sealed record MassDependence(int N, Correlation Rank, Estimate? Exponent, double? LeastWithoutOne, double? MostWithoutOne)
{
    internal static MassDependence? Of(OccasionValues values, SeasonPeriod occasion, IEnumerable<AthleteDay> days, BenchRule rule)
    {
        var mass = days.Where(d => d.Date >= occasion.From && d.Date <= occasion.To && d.BodyMass is { Kilograms: > 0 })
            .GroupBy(d => d.AthleteId, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Average(d => d.BodyMass!.Value.Kilograms), StringComparer.Ordinal);
        List<string> both = [.. values.Athletes.Where(mass.ContainsKey).Order(StringComparer.Ordinal)];
        double[] m = [.. both.Select(id => mass[id])], y = [.. both.Select(a => values.Of(a)!.Value)];
        if (both.Count < rule.Fewest || m.Distinct().Count() < 3 || y.Distinct().Count() < 3 || Flat.Is(y)) return null;
        var rank = Correlation.Spearman(m, y);
        if (y.Any(v => v <= 0)) return new(both.Count, rank, null, null, null);
        double[] x = Array.ConvertAll(m, Math.Log), z = Array.ConvertAll(y, Math.Log);
        var draws = Bootstrap.OfRows(both.Count, rows => Slope(x, z, rows), new() { Resamples = 2000 });
        // Leaving out one athlete shows whether he alone makes the exponent.
        return new(both.Count, rank, new(StraightLine.Of(x, z).Slope, draws.StandardError, draws.Interval().Limits, both.Count, "slope of the logarithms, athletes drawn anew"),
            draws.LeaveOneOut.Min(), draws.LeaveOneOut.Max());
    }

    private static double Slope(double[] x, double[] y, ReadOnlySpan<int> rows)
    {
        double[] a = new double[rows.Length], b = new double[rows.Length];
        for (var i = 0; i < rows.Length; i++) (a[i], b[i]) = (x[rows[i]], y[rows[i]]);
        return a.Max() > a.Min() ? StraightLine.Of(a, b).Slope : double.NaN;
    }
}
