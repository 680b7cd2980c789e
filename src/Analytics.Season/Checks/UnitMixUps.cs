using System.Runtime.InteropServices;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Intake;

namespace Analytics.Season.Checks;

/// <summary>
/// Holds back values that lie within the allowed range but were typed in another unit than the head says: they are far from
/// what the athlete or the squad does, and the other unit brings them close. A value that no unit explains is left alone.
/// </summary>
internal static class UnitMixUps
{
    /// <summary>Checks all days against one another, measures side by side.</summary>
    /// <param name="days">The days, by date.</param>
    /// <param name="groupOf">Position group of an athlete.</param>
    public static void HoldBack(IReadOnlyCollection<CandidateDay> days, Func<string, string> groupOf)
    {
        var histories = Histories(days, groupOf);
        var found = new Found[histories.Count];
        Parallel.For(0, found.Length, i => found[i] = Find(histories[i]));
        foreach (var day in found.SelectMany(f => f.Days)) day.Table.Tally.HoldBackRows(day.Fault, day.Trials.Count);
        var wholeDays = found.SelectMany(f => f.Days).SelectMany(d => d.Trials).ToHashSet<Trial>(ReferenceEqualityComparer.Instance);
        var rows = found.SelectMany(f => f.Rows).ToDictionary(r => r.Key, r => r.Value, (IEqualityComparer<Trial>)ReferenceEqualityComparer.Instance);
        foreach (var day in days)
        {
            day.Remove(wholeDays);
            if (rows.Count > 0) day.HoldBackWhere(c => rows.GetValueOrDefault(c.Trial));
        }
    }

    private static Found Find(MeasureHistory history)
    {
        history.Seal();
        var days = WholeDays(history);
        var check = new RowMixUps(history);
        foreach (var athlete in history.Athletes) check.Check(athlete);
        return new Found(days, check.Faults);
    }

    private static List<MeasureHistory> Histories(IReadOnlyCollection<CandidateDay> days, Func<string, string> groupOf)
    {
        var histories = new Dictionary<MeasureKey, MeasureHistory>();
        var number = 0;
        foreach (var day in days)
        {
            foreach (ref readonly var candidate in CollectionsMarshal.AsSpan(day.Candidates))
            {
                if (Measures.Of(candidate.Trial) is not { } measured) continue;
                if (!histories.TryGetValue(measured.Key, out var history)) histories.Add(measured.Key, history = new MeasureHistory(measured.Key, groupOf));
                history.Add(number, new Reading(candidate.Trial, candidate.Table, measured.Value, candidate.IsChecked ? double.NaN : measured.Typed));
            }

            number++;
        }

        return [.. histories.Values];
    }

    /// <summary>A whole day in another unit: most athletes differ from their other days by just that factor. Of two days, the later is doubted.</summary>
    private static List<WrongDay> WholeDays(MeasureHistory history)
    {
        var found = new List<WrongDay>();
        var rule = history.Key.Rule;
        foreach (var day in history.Athletes.SelectMany(a => a.Days.Select(d => (Athlete: a, Day: d))).ToLookup(d => d.Day.Day).OrderByDescending(d => d.Key))
        {
            var ratios = day.Select(d => (Now: d.Day.Level, Others: d.Athlete.OtherDays(day.Key))).Where(r => r.Others.Count > 0).Select(r => r.Now / r.Others.Level).ToList();
            if (ratios.Count < MeasureHistory.FewestAthletes) continue;
            var ratio = Middle.Of(ratios);
            if (UnitGuess.Distance(ratio, 1) <= Math.Log(rule.Own.Far)) continue;
            foreach (var table in day.SelectMany(d => d.Athlete.Of(d.Day).ToArray()).Where(r => r.CanBeMistyped).GroupBy(r => r.Table))
            {
                if (UnitGuess.Of(rule.Column, table.Key, ratio, 1, rule.Own with { Near = 1.15 }) is not { } meant) continue;
                found.Add(WholeDay(history.Key, table.Key, [.. table.Select(r => r.Trial)], ratio, meant));
                history.Remove(day.Key);
                break;
            }
        }

        return found;
    }

    private static WrongDay WholeDay(MeasureKey key, ReadTable table, IReadOnlyCollection<Trial> trials, double ratio, Unit meant)
    {
        var head = table.Head.HeadOf(key.Rule.Column);
        var what = key.Test.Length > 0 ? $" for {CellText.Show(key.Test)}" : "";
        var fault = new CellFault(head, "", $"all {trials.Count} values{what} are about {CellText.Number(Math.Round(ratio, 2))} times those of the same athletes on other days; the column looks like {meant.Symbol}",
            $"If it is {meant.Symbol}, name the column {key.Rule.Column.Name}_{meant.Symbol}. If it is right, write yes in a column 'checked'.");
        return new WrongDay(table, trials, fault);
    }

    /// <summary>A table of which all values of a measure are in another unit.</summary>
    private sealed record WrongDay(ReadTable Table, IReadOnlyCollection<Trial> Trials, CellFault Fault);

    /// <summary>What was found in one measure.</summary>
    private sealed record Found(IReadOnlyList<WrongDay> Days, IReadOnlyDictionary<Trial, CellFault> Rows);
}
