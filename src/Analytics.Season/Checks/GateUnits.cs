using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Season.Columns;
using Analytics.Season.Intake;

namespace Analytics.Season.Checks;

/// <summary>
/// Holds back the sprints of a day whose gates stood at yards where the head says metres, or the other way: the whole squad
/// is 5 to 9 % off its other days, more at the far gates, as the other unit would make it. Runs of one timing and start only.
/// </summary>
internal static class GateUnits
{
    /// <summary>Checks all days against one another, the latest first.</summary>
    public static void HoldBack(IReadOnlyCollection<CandidateDay> days)
    {
        var series = days.SelectMany(d => d.Candidates.Where(c => c.Trial is SprintTrial).Select(c => (Day: d, Candidate: c, Run: (SprintTrial)c.Trial)))
            .GroupBy(c => (c.Run.Timing, c.Run.Start)).ToList();
        foreach (var runs in series)
        {
            var history = new RunHistory(runs.Select(r => (r.Day.Date, r.Run)));
            foreach (var day in runs.GroupBy(r => r.Day).OrderByDescending(d => d.Key.Date))
            {
                if (Meant(history, day.Key.Date) is not { } meant) continue;
                HoldBackDay(day.Key, [.. day.Select(r => r.Candidate).Where(c => !c.IsChecked)], meant);
                history.Remove(day.Key.Date);
            }
        }
    }

    /// <summary>The unit the gates of a day stood at, where it is not that of the head.</summary>
    private static string? Meant(RunHistory history, DateOnly day)
    {
        var athletes = history.On(day).ToList();
        if (athletes.Count < MeasureHistory.FewestAthletes) return null;
        var shift = new GateShift(athletes);
        if (!shift.IsImplausible()) return null;
        if (shift.IsExplainedBy(UnitFactors.MetresPerYard)) return "yd";
        return shift.IsExplainedBy(1 / UnitFactors.MetresPerYard) ? "m" : null;
    }

    private static void HoldBackDay(CandidateDay day, IReadOnlyList<Candidate> runs, string meant)
    {
        foreach (var table in runs.GroupBy(r => r.Table).Where(t => t.Key.Head.Gates.Any(g => !g.Name.EndsWith(meant, StringComparison.Ordinal))))
        {
            var heads = string.Join(", ", table.Key.Head.Gates.Select(table.Key.Head.HeadOf));
            table.Key.Tally.HoldBackRows(new CellFault(heads, "", $"all {table.Count()} runs differ from the other days of the same athletes, the more the farther the gate; the gates look as if they stood at {(meant is "yd" ? "yards" : "metres")}",
                $"If they did, name the columns for {meant}, such as t_10{meant}_s. If they are right, write yes in a column 'checked'."), table.Count());
            day.Remove(table.Select(r => r.Trial).ToHashSet<Trial>(ReferenceEqualityComparer.Instance));
        }
    }
}
