using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Association.Repeated;

/// <summary>The rows of two measures sorted by athlete and day.</summary>
internal sealed class GainRows
{
    private readonly string[] _athletes;
    private readonly GainTable _table;
    private readonly int _withBoth;

    private GainRows(string[] athletes, GainTable table, int withBoth) => (_athletes, _table, _withBoth) = (athletes, table, withBoth);

    public static GainRows Read<T>(IReadOnlyList<T> athletes, IReadOnlyList<double> times, IReadOnlyList<double?> x, IReadOnlyList<double?> y, IReadOnlyList<double>? precisionX,
        IReadOnlyList<double>? precisionY)
        where T : notnull
    {
        ArgumentNullException.ThrowIfNull(athletes);
        Require.Sample(times, 2, nameof(times));
        Paired.SameLength(times, athletes, nameof(athletes));
        Column(x, times, nameof(x));
        Column(y, times, nameof(y));
        Precisions(precisionX, times, nameof(precisionX));
        Precisions(precisionY, times, nameof(precisionY));
        var days = times.Distinct().Order().ToArray();
        var span = days[^1] - days[0];
        if (!(span > 0)) throw new ArgumentException(FormattableString.Invariant($"All {times.Count} rows are of one day; gains need two or more."), nameof(times));
        var place = days.Select((d, i) => (d, i)).ToDictionary(p => p.d, p => p.i);
        double[] scaled = [.. days.Select(d => (d - days[0]) / span)];
        var groups = Enumerable.Range(0, times.Count).GroupBy(i => athletes[i]).ToList();
        (int, double, double)[][] Own(IReadOnlyList<double?> values, IReadOnlyList<double>? precisions) =>
            [.. groups.Select(g => g.Where(i => values[i].HasValue).Select(i => (place[times[i]], values[i]!.Value, precisions?[i] ?? 1)).OrderBy(v => v.Item1).ToArray())];
        var (ownX, ownY) = (Own(x, precisionX), Own(y, precisionY));
        if (ownX.Concat(ownY).Any(o => o.Select(v => v.Item1).Distinct().Count() < o.Length))
            throw new ArgumentException("An athlete has two values of one measure on one day; give one, the best or the mean.", nameof(times));
        var table = new GainTable(new(scaled, ownX), new(scaled, ownY), groups.Count, days.Length, GainCorrelation.LeastSpan);
        return new([.. groups.Select(g => g.Key.ToString() ?? string.Empty)], table, groups.Where((_, i) => ownX[i].Length > 0 && ownY[i].Length > 0).Count());
    }

    public GainCorrelation Correlate(double level)
    {
        Require.Share(level, nameof(level));
        var used = _table.Used;
        if (used.Length < 4)
            throw new ArgumentException($"{used.Length} athletes were seen over at least half the span in both measures; 4 or more are needed.");
        var (gx, gy, m) = _table.Look(_ => false);
        if (!Differ(m.XX, _table.Sizes.X) || !Differ(m.YY, _table.Sizes.Y))
            throw new GainsAlikeException();
        var known = _table.Freedom >= GainCorrelation.LeastFreedom && m.ErrorXX > 0 && m.ErrorYY > 0;
        var blockOf = new int[_table.Athletes];
        Array.Fill(blockOf, -1);
        for (var i = 0; i < used.Length; i++) blockOf[used[i]] = AthleteBlocks.Of(i, used.Length);
        double[] without = [.. Enumerable.Range(0, AthleteBlocks.Count(used.Length)).Select(b => _table.Look(i => blockOf[i] == b).Moments).Select(l => Math.Atanh(known ? l.Clean : l.Raw))];
        var (n, freedoms) = (used.Length, _table.Freedoms);
        return new()
        {
            Value = known ? m.Clean : m.Raw,
            ErrorOfZ = AthleteBlocks.Error(without),
            Raw = m.Raw,
            FromErrors = known ? m.ErrorXY / Math.Sqrt(m.XX * m.YY) : null,
            OfErrors = known ? m.ErrorXY / Math.Sqrt(m.ErrorXX * m.ErrorYY) : null,
            ReliabilityX = known ? 1 - m.ErrorXX / m.XX : null,
            ReliabilityY = known ? 1 - m.ErrorYY / m.YY : null,
            SpreadPX = known ? FisherLaw.UpperTail(m.XX / m.ErrorXX, n - 1, freedoms.X) : null,
            SpreadPY = known ? FisherLaw.UpperTail(m.YY / m.ErrorYY, n - 1, freedoms.Y) : null,
            Gains = [.. used.Select(i => new GainPair(_athletes[i], gx[i], gy[i], _table.Weight(i)))],
            TooShort = _withBoth - n,
            ErrorFreedom = _table.Freedom,
            Level = level,
        };
    }

    // Against the values, not the gains: where everybody gained the same, the gains beyond the squad's are rounding alone,
    // about 1e-15 of the values a term: an SD under 1e-12 of them is nothing.
    private static bool Differ(double variance, double size) => variance > 1e-24 * size * size;

    private static void Precisions(IReadOnlyList<double>? values, IReadOnlyList<double> times, string name)
    {
        if (values is null) return;
        Paired.SameLength(times, values, name);
        foreach (var value in values)
        {
            if (value is not (>= 1e-6 and <= 1e6))
                throw new ArgumentException(FormattableString.Invariant($"{name} holds {value}; allowed: 1e-6 to 1e6, 1 for a value of the usual error."), name);
        }
    }

    private static void Column(IReadOnlyList<double?> values, IReadOnlyList<double> times, string name)
    {
        ArgumentNullException.ThrowIfNull(values, name);
        Paired.SameLength(times, values, name);
        Require.Sample([.. values.OfType<double>()], 2, name);
    }
}
