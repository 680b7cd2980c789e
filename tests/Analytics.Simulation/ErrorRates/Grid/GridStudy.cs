using Analytics.Simulation.ErrorRates.Grid.Intervals;
using Analytics.Simulation.ErrorRates.Grid.Rates;
using Analytics.Simulation.ErrorRates.Grid.Tables;
using Analytics.Simulation.ErrorRates.Grid.Verdicts;
using Analytics.Simulation.Randomness;
using Analytics.Statistics.Change;

namespace Analytics.Simulation.ErrorRates.Grid;

/// <summary>The grid, measured. A draw's stream depends on seed, case and number only, so threads and further entries change no figure.</summary>
public sealed class GridStudy
{
    private GridStudy(int draws, ulong seed) => (Draws, Seed) = (draws, seed);

    public int Draws { get; }

    public ulong Seed { get; }

    public IReadOnlyList<IntervalResult> Intervals { get; private set; } = [];

    public IReadOnlyList<VerdictResult> Verdicts { get; private set; } = [];

    public IReadOnlyList<RateResult> Rates { get; private set; } = [];

    /// <summary>Measures entries.</summary>
    /// <param name="draws">Draws a case with a closed form; a quarter where there is none, and less for dear entries.</param>
    /// <param name="seed">Seed of all.</param>
    /// <param name="threads">Threads; the result does not depend on it.</param>
    /// <param name="progress">Told what is done.</param>
    /// <param name="only">Cases to measure, by their label; all when null.</param>
    public static GridStudy Run(
        IReadOnlyList<IntervalUnderTest> intervals, IReadOnlyList<VerdictUnderTest> verdicts, IReadOnlyList<RateUnderTest> rates,
        int draws, ulong seed, int threads, Action<string>? progress = null, Func<string, bool>? only = null)
    {
        bool Wanted(object the) => only?.Invoke(the.ToString()!) ?? true;
        var study = new GridStudy(draws, seed);
        study.Intervals = InParallel(intervals.SelectMany(i => i.Cells.Where(Wanted).Select(c => (Entry: i, Cell: c))), threads, w => study.Measure(w.Entry, w.Cell));
        progress?.Invoke($"{study.Intervals.Count} cases of {intervals.Count} intervals");
        study.Verdicts = InParallel(verdicts.SelectMany(v => v.Cases.Where(Wanted).Select(c => (Entry: v, Case: c))), threads, w => study.Measure(w.Entry, w.Case)).SelectMany(r => r).ToList();
        progress?.Invoke($"{study.Verdicts.Count} cases of {verdicts.Count} verdicts");
        study.Rates = InParallel(rates.SelectMany(r => r.Cases.Where(c => Wanted(c.Label)).Select(c => (Entry: r, Case: c))), threads, w => study.Measure(w.Entry, w.Case));
        progress?.Invoke($"{study.Rates.Count} cases of {rates.Count} other rates");
        return study;
    }

    private IntervalResult Measure(IntervalUnderTest entry, TableCell cell)
    {
        var closed = entry.ClosedForm(cell);
        var covered = new RateCount();
        var none = 0;
        for (var draw = 0; draw < DrawsOf(closed, entry.Dearness); draw++)
        {
            if (entry.Of(SimulatedTable.Draw(cell, RandomNumbers.For(Seed, cell.ToString(), draw))) is { } found)
                covered.Add(found.Interval.Contains(found.Truth));
            else
                none++;
        }

        return new(entry, cell, covered, none, closed);
    }

    private IReadOnlyList<VerdictResult> Measure(VerdictUnderTest entry, ChangeCase the)
    {
        var changes = the.TrueChanges;
        var counts = changes.Select(_ => new Dictionary<Verdict, int>()).ToArray();
        var draws = DrawsOf(entry.ClosedForm(the, 0), 1);
        for (var draw = 0; draw < draws; draw++)
        {
            var athlete = ChangeDraw.Draw(the, RandomNumbers.For(Seed, the.ToString(), draw));
            for (var i = 0; i < changes.Count; i++)
            {
                var verdict = entry.Judge(athlete, changes[i]);
                counts[i][verdict] = counts[i].GetValueOrDefault(verdict) + 1;
            }
        }

        return [.. changes.Select((change, i) => new VerdictResult(entry, the, change, draws, counts[i], entry.ClosedForm(the, change)))];
    }

    private RateResult Measure(RateUnderTest entry, RateCase the)
    {
        var count = new RateCount();
        for (var draw = 0; draw < DrawsOf(the.ClosedForm, the.Dearness); draw++) count.Add(the.Draw(RandomNumbers.For(Seed, entry.Name + the.Label, draw)));
        return new(entry, the, count);
    }

    // What theory knows is a test of the simulation and gets every draw; elsewhere a quarter tells the rate to 0.3 %.
    private int DrawsOf(double? closedForm, int dearness) => Math.Max(2, Draws / (closedForm.HasValue ? 1 : 4 * dearness));

    private static TResult[] InParallel<TWork, TResult>(IEnumerable<TWork> work, int threads, Func<TWork, TResult> measure)
    {
        var items = work.ToArray();
        var results = new TResult[items.Length];
        Parallel.For(0, items.Length, new ParallelOptions { MaxDegreeOfParallelism = threads }, i => results[i] = measure(items[i]));
        return results;
    }
}
