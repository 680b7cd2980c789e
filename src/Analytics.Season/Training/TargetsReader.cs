using Analytics.Metrics.Catalogue;
using Analytics.Planning.Exercises;
using Analytics.Planning.Needs;
using Analytics.Quantities;
using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Intake;
using Analytics.Season.Tables;

namespace Analytics.Season.Training;

/// <summary>Reads <c>targets.csv</c>: what the coach wants a group to reach in a test.</summary>
internal static class TargetsReader
{
    private static readonly IReadOnlyList<Metric> Served = [.. MetricCatalogue.All.Where(m => m.Better != Direction.Neither && TrainedQualities.ServedBy(m.Quality) is not null)];
    private static readonly IReadOnlyList<string> Ids = [.. Served.Select(m => m.Id)];

    /// <summary>The targets that could be kept, in file order and in the units of the catalogue.</summary>
    /// <param name="intake">The reading.</param>
    /// <param name="tables">The tables.</param>
    /// <param name="groups">Position groups of the squad.</param>
    public static List<GroupTarget> Read(SeasonIntake intake, IEnumerable<Table> tables, IReadOnlyCollection<string> groups)
    {
        var (targets, seen) = (new List<GroupTarget>(), new SeenRows());
        foreach (var table in tables)
        {
            intake.ReadRows(table, TargetColumns.All, withGates: false, (row, tally) =>
            {
                var group = row.Text(TargetColumns.Group) is { Length: > 0 } named ? row.Refer(TargetColumns.Group, "group", named, groups, "athletes.csv") : null;
                var metric = MetricOf(row);
                var value = metric is null ? 0 : ValueOf(row, table, metric);
                var note = row.Free(TargetColumns.Note, "note");
                if (row.Faults.Count > 0) return;
                var key = $"{group}\n{metric!.Id}";
                seen.Refuse(row, table, TargetColumns.Metric, key, $"a target of {metric.Id} for {(group is null ? "all groups" : $"the group {CellText.Show(group)}")}", "Keep the row that holds, and delete the other.");
                if (row.Faults.Count > 0) return;
                seen.Add(row, table, key);
                targets.Add(new(group, metric.Id, value) { Note = note });
                tally.CountKept();
            });
        }

        return targets;
    }

    private static Metric? MetricOf(RowCells row)
    {
        var text = row.NeedText(TargetColumns.Metric, "metric");
        if (text.Length is 0) return null;
        var id = Words.Normal(text);
        if (Served.FirstOrDefault(m => m.Id == id) is { } metric) return metric;
        if (MetricCatalogue.All.FirstOrDefault(m => m.Id == id) is { } other)
        {
            row.Wrong(TargetColumns.Metric, $"the metric {other.Id} tells of no need, because {(other.Better == Direction.Neither ? "neither more nor less of it is better" : "no exercise of a week trains it by itself")}", $"Set the target in one of: {string.Join(", ", Ids)}.");
            return null;
        }

        var near = NearWord.Of(id, Ids) ?? Ids.FirstOrDefault(i => id.Length > 2 && i.StartsWith(id, StringComparison.Ordinal));
        row.Wrong(TargetColumns.Metric, $"the metric '{CellText.Show(text)}' is not known{(near is null ? "" : $"; did you mean {near}?")}", $"Use one of: {string.Join(", ", Ids)}.");
        return null;
    }

    /// <summary>In the unit of the catalogue; the row has a fault when it cannot be used.</summary>
    private static double ValueOf(RowCells row, Table table, Metric metric)
    {
        var cell = row.NeedText(TargetColumns.Value, "value");
        var units = TargetUnits.Of(metric);
        var written = row.Text(TargetColumns.Unit);
        if (units.Find(written) is not { } unit)
        {
            row.Wrong(TargetColumns.Unit, written.Length is 0 ? $"the target of {metric.Id} has no unit" : $"the unit '{CellText.Show(written)}' is not one of {metric.Id}{(units.Near(written) is { } near ? $"; did you mean {near}?" : "")}",
                $"Write {units.Words} as unit{(units.MayBeEmpty ? ", or leave the cell empty" : "")}.");
            return 0;
        }

        if (cell.Length is 0) return 0;
        double low = units.In(unit, metric.PlausibleLow), high = units.In(unit, metric.PlausibleHigh);
        if (NumberCell.Read(cell, low, high, out var problem, unit, units.Accepted, table) is { } number && problem is null) return units.InCatalogue(number, unit);
        row.Wrong(TargetColumns.Value, problem!.Reason, Remedy(cell, unit, units, metric) ?? problem.Remedy);
        return 0;
    }

    /// <summary>What would mend a number; null where it may be read in two ways, which is said already.</summary>
    private static string? Remedy(string cell, Unit unit, TargetUnits units, Metric metric)
    {
        if (NumberText.Read(cell) is not { } number) return "Write the number only; its unit stands in the column unit.";
        bool Fits(double value) => value >= metric.PlausibleLow && value <= metric.PlausibleHigh;
        if (number.Other is { } other && Fits(units.InCatalogue(other, unit))) return null;
        return units.Accepted.FirstOrDefault(u => Fits(units.InCatalogue(number.Value, u))) is { } meant
            ? $"If it is {meant.Symbol}, write {meant.Symbol} as unit; else correct the value." : "Correct the value, or its unit.";
    }
}
