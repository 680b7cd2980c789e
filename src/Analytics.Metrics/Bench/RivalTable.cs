using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;
using Analytics.Metrics.Sketching;
using Analytics.Statistics;
using Analytics.Statistics.Reliability;
using Analytics.Statistics.Resampling;

namespace Analytics.Metrics.Bench;

/// <summary>How much better a rival repeats than the first one, on the same players.</summary>
/// <param name="Athletes">Players with both on two occasions.</param>
/// <param name="Difference">ICC of the rival less that of the first.</param>
/// <param name="Interval">Its interval, players drawn anew for both together; null when too few resamples gave one.</param>
public sealed record RepeatGain(int Athletes, double Difference, Interval? Interval);

/// <summary>One definition among its rivals.</summary>
/// <param name="Card">Its card.</param>
/// <param name="Against">How much better it repeats than the first; null for the first itself, and without a retest of enough players.</param>
public sealed record Rival(SketchCard Card, RepeatGain? Against);

/// <summary>Rival definitions of one idea on the same data, in the order given; the first is the one to beat.</summary>
/// <param name="Rivals">The definitions.</param>
public sealed record RivalTable(IReadOnlyList<Rival> Rivals)
{
    /// <summary>Which to take, in one plain sentence; says so when they cannot be told apart.</summary>
    public string Words
    {
        get
        {
            var better = Rivals.Where(r => r.Against?.Interval is { Low: > 0 }).MaxBy(r => r.Against!.Difference);
            if (better is not null) return FormattableString.Invariant($"{better.Card.Sketch.Label} repeats better than {Rivals[0].Card.Sketch.Label}: ICC higher by {better.Against!.Difference:0.00} ({better.Against.Interval!.Value.Low:0.00} to {better.Against.Interval.Value.High:0.00}) on the same {better.Against.Athletes} players.");
            var worse = Rivals.Where(r => r.Against is not null).ToList();
            if (worse.Count == Rivals.Count - 1 && worse.TrueForAll(r => r.Against!.Interval is { High: < 0 })) return $"{Rivals[0].Card.Sketch.Label} repeats better than its rivals.";
            return worse.Count > 0 ? "Which of them repeats better cannot be told with these players; take the simpler one." : "No retest of enough players: which of them repeats better cannot be told.";
        }
    }

    internal static RivalTable Of(BenchSquad squad, IReadOnlyList<MetricSketch> rivals)
    {
        ArgumentNullException.ThrowIfNull(rivals);
        if (rivals.Count < 2) throw new ArgumentException($"{rivals.Count} definition given; two or more are needed to compare.", nameof(rivals));
        var cards = rivals.Select(squad.Judge).ToList();
        return new([.. cards.Select((c, i) => new Rival(c, i == 0 ? null : Gain(squad, cards[0].Values, c.Values, 1 - 0.05 / (cards.Count - 1))))]);
    }

    private static RepeatGain? Gain(BenchSquad squad, SeasonValues first, SeasonValues rival, double level)
    {
        if (RetestColumns.Fullest(squad, first) is not { } days) return null;
        var both = days.Athletes.Select(a => (A: days.Pair(first, a), B: days.Pair(rival, a))).Where(p => p.B is not null).Select(p => (A: p.A!.Value, B: p.B!.Value)).ToList();
        if (both.Count < squad.Rule.Fewest) return null;
        double Difference(ReadOnlySpan<int> rows) => Icc(rows, i => both[i].B) - Icc(rows, i => both[i].A);
        // Without any spread there is no ICC, and nothing to resample.
        if (Flat.Is(both.SelectMany(p => new[] { p.A.First, p.A.Second })) || Flat.Is(both.SelectMany(p => new[] { p.B.First, p.B.Second })) || double.IsNaN(Difference([.. Enumerable.Range(0, both.Count)]))) return null;
        var draws = Bootstrap.OfRows(both.Count, Difference, new() { Resamples = 2000 });
        return new(both.Count, draws.Estimate, draws.Interval(BootstrapMethod.Percentile, level).Limits);
    }

    // ICC(3,1) [shroutfleiss1979] without the interval that IntraclassCorrelation works out each time.
    private static double Icc(ReadOnlySpan<int> rows, Func<int, (double First, double Second)> pair)
    {
        var table = new double?[rows.Length][];
        for (var i = 0; i < rows.Length; i++)
        {
            var (a, b) = pair(rows[i]);
            table[i] = [a, b];
        }

        var squares = MeanSquares.Of(TrialTable.FromRows(table));
        var sum = squares.BetweenAthletes + squares.Residual;
        return sum > 0 ? (squares.BetweenAthletes - squares.Residual) / sum : double.NaN;
    }
}
