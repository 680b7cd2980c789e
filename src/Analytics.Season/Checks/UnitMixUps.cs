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
internal sealed class UnitMixUps
{
    private readonly IReadOnlyCollection<CandidateDay> days;
    private readonly Dictionary<Trial, CellFault> rows = new(ReferenceEqualityComparer.Instance);
    private readonly HashSet<Trial> wholeDays = new(ReferenceEqualityComparer.Instance);

    private UnitMixUps(IReadOnlyCollection<CandidateDay> days) => this.days = days;

    /// <summary>Checks all days against one another.</summary>
    /// <param name="days">The days, by date.</param>
    /// <param name="groupOf">Position group of an athlete.</param>
    public static void HoldBack(IReadOnlyCollection<CandidateDay> days, Func<string, string> groupOf)
    {
        var check = new UnitMixUps(days);
        foreach (var (key, readings) in check.Readings())
        {
            var history = new MeasureHistory(readings, key.Rule.BestOfDay, groupOf);
            check.CheckDays(key, history);
            foreach (var (id, day, values) in history.AthleteDays) check.CheckRows(key.Rule, history, id, day, values);
        }

        foreach (var day in days)
        {
            day.Remove(check.wholeDays);
            day.HoldBackWhere(c => check.rows.GetValueOrDefault(c.Trial));
        }
    }

    private Dictionary<MeasureKey, List<Reading>> Readings()
    {
        var readings = new Dictionary<MeasureKey, List<Reading>>();
        var number = 0;
        foreach (var day in days)
        {
            foreach (var candidate in day.Candidates)
            {
                if (Measures.Of(candidate.Trial) is not { } measured) continue;
                if (!readings.TryGetValue(measured.Key, out var list)) readings.Add(measured.Key, list = []);
                list.Add(new Reading(candidate, number, measured.Value, candidate.IsChecked ? double.NaN : measured.Typed));
            }

            number++;
        }

        return readings;
    }

    /// <summary>A whole day in another unit: most athletes differ from their other days by just that factor. Of two days, the later is doubted.</summary>
    private void CheckDays(MeasureKey key, MeasureHistory history)
    {
        var byDay = history.AthleteDays.GroupBy(d => d.Day).ToDictionary(d => d.Key, d => d.ToList());
        foreach (var day in byDay.Keys.OrderDescending())
        {
            var ofDay = byDay[day];
            var ratios = ofDay.Select(d => (Now: history.OfDay(d.AthleteId, day), Others: history.OtherDays(d.AthleteId, day)))
                .Where(r => r.Others.Count > 0).Select(r => r.Now / r.Others.Level).ToList();
            if (ratios.Count < MeasureHistory.FewestAthletes) continue;
            var ratio = MeasureHistory.Median(ratios);
            foreach (var table in ofDay.SelectMany(d => d.Readings).Where(r => r.CanBeMistyped).GroupBy(r => r.Source.Table))
            {
                if (UnitGuess.Of(key.Rule.Column, table.Key, ratio, 1, key.Rule.OwnFar, 1.15) is not { } meant) continue;
                HoldBackDay(key, table.Key, [.. table.Select(r => r.Source.Trial)], ratio, meant);
                history.Remove(day);
                break;
            }
        }
    }

    private void HoldBackDay(MeasureKey key, ReadTable table, IReadOnlyCollection<Trial> trials, double ratio, Unit meant)
    {
        wholeDays.UnionWith(trials);
        var head = table.Head.HeadOf(key.Rule.Column);
        var what = key.Test.Length > 0 ? $" for {key.Test}" : "";
        table.Tally.HoldBackRows(new CellFault(head, "", $"all {trials.Count} values{what} are about {CellText.Number(Math.Round(ratio, 2))} times those of the same athletes on other days; the column looks like {meant.Symbol}",
            $"If it is {meant.Symbol}, name the column {key.Rule.Column.Name}_{meant.Symbol}. If it is right, write yes in a column 'checked'."), trials.Count);
    }

    private void CheckRows(MeasureRule rule, MeasureHistory history, string id, int day, IReadOnlyList<Reading> readings)
    {
        var others = history.OtherDays(id, day);
        var usual = history.Usual(id);
        var ofDay = history.OfDay(id, day);
        foreach (var reading in readings.Where(r => r.CanBeMistyped))
        {
            foreach (var (level, isOwn) in Levels(rule, readings, reading, others, usual))
            {
                if (Judged(rule, reading.Value, ofDay, level) is not { } value) continue;
                var (far, near) = isOwn ? (rule.OwnFar, rule.OwnNear) : (rule.SquadFar, rule.SquadNear);
                if (UnitGuess.Of(rule.Column, reading.Source.Table, value, level, far, near) is not { } meant) continue;
                if (isOwn && !IsSure(value, value * UnitGuess.Factor(rule.Column, reading.Source.Table, meant), usual, others.Count, readings.Count)) continue;
                var compared = $"{CellText.Number(Math.Round(value / level, 2))} times {(isOwn ? "what this athlete does otherwise" : "the usual value of the squad")}";
                rows[reading.Source.Trial] = UnitGuess.Fault(rule.Column, reading.Source.Table, reading.Typed, compared, meant);
                break;
            }
        }
    }

    /// <summary>What to compare with: the athlete's other days; without any, his other rows of the day, then the squad.</summary>
    private static IEnumerable<(double Level, bool IsOwn)> Levels(MeasureRule rule, IReadOnlyList<Reading> readings, Reading reading, (int Count, double Level) others, double? usual)
    {
        if (others.Count > 0)
        {
            yield return (others.Level, true);
            yield break;
        }

        if (rule.BestOfDay && readings.Count > 1) yield return (readings.Where(r => r != reading).Max(r => r.Value), true);
        if (!rule.BestOfDay && readings.Count > 2) yield return (MeasureHistory.Median(readings.Select(r => r.Value)), true);
        if (usual is { } squad) yield return (squad, false);
    }

    /// <summary>Light sets before a heavy one are no slip: only a day whose best is light can be one, and then its best is judged.</summary>
    private static double? Judged(MeasureRule rule, double value, double ofDay, double level)
        => !rule.BestOfDay || value >= level ? value : ofDay < level ? ofDay : null;

    /// <summary>With few values it may be the others that are wrong; then the squad decides.</summary>
    private static bool IsSure(double value, double converted, double? usual, int otherDays, int rowsOfDay)
        => otherDays >= 3
           || (usual is { } level ? UnitGuess.Distance(converted, level) < UnitGuess.Distance(value, level) : otherDays is 2 || (otherDays is 0 && rowsOfDay >= 3));
}
