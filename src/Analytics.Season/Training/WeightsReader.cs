using Analytics.Planning.Rooms;
using Analytics.Quantities;
using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Intake;
using Analytics.Season.Tables;

namespace Analytics.Season.Training;

/// <summary>Reads <c>weights.csv</c>: the bar, plates in pairs at one station, and single weights.</summary>
internal static class WeightsReader
{
    /// <summary>Word of the bar.</summary>
    public const string Bar = "bar";

    /// <summary>Word of a plate.</summary>
    public const string Plate = "plate";

    private static readonly Column Item = new("item", needed: true);
    private static readonly QuantityColumn Weight = new("weight", UnitSets.Loads, 0.1, 300, needed: true);
    private static readonly NumberColumn Pairs = new("pairs", 1, 50, whole: true);

    public static readonly IReadOnlyList<Column> Columns = [Item, Weight, Pairs];

    /// <summary>What could be kept; null when nothing could.</summary>
    /// <param name="intake">The reading.</param>
    /// <param name="tables">The tables.</param>
    /// <param name="implements">Implements that exercises are done with.</param>
    public static WeightStock? Read(SeasonIntake intake, IReadOnlyList<Table> tables, IReadOnlyCollection<string> implements)
    {
        var (rows, seen) = (new List<WeightRow>(), new SeenRows());
        foreach (var table in tables)
        {
            var before = rows.Count;
            intake.ReadRows(table, Columns, withGates: false, (row, tally) =>
            {
                if (Make(row, table, seen) is not { } weight) return;
                seen.Add(row, table, weight.Item);
                rows.Add(weight);
                tally.CountKept();
            });
            foreach (var item in rows.Skip(before).Select(r => r.Item).Distinct().Where(i => i is not (Bar or Plate) && !implements.Contains(i)))
                intake.Note(table.Path, $"No exercise is done with '{CellText.Show(item)}', so its weights are not used{(NearWord.Of(item, implements) is { } near ? $"; did you mean {CellText.Show(near)}?" : ".")}");
        }

        if (rows.Count is 0) return null;
        Remark(intake, tables[0].Path, rows);
        return Stock(rows);
    }

    private static WeightRow? Make(RowCells row, Table table, SeenRows seen)
    {
        var item = row.NeedId(Item, "item");
        if (item is Bar) seen.Refuse(row, table, Item, item, "a bar", "Loads are worked out for one bar; keep the one for barbell lifts.");
        var kilograms = row.NeedQuantity(Weight, "weight");
        var pairs = row.Number(Pairs);
        if (item is Plate && pairs is null && row.Text(Pairs).Length is 0) row.Wrong(Pairs, "there is no number of pairs", "Fill in how many pairs of this plate lie at one station.");
        if (item is not Plate && pairs is not null) row.Wrong(Pairs, "pairs are for plates", "Empty the cell.");
        if (row.Faults.Count > 0) return null;
        var unit = row.Head[Weight].First(p => row.TextAt(p).Length > 0).Unit!.Symbol;
        return new(item, Mass.FromKilograms(kilograms), (int)(pairs ?? 0), unit);
    }

    private static void Remark(SeasonIntake intake, string path, List<WeightRow> rows)
    {
        if (rows.All(r => r.Item != Bar)) intake.Note(path, "There is no bar in the list, so no load of a barbell can be put together; write a row 'bar' with its weight.");
        if (rows.All(r => r.Item != Plate)) intake.Note(path, "There is no plate in the list, so nothing can be put on the bar; write a row 'plate' for each kind, with its weight and pairs at one station.");
        if (rows.DistinctBy(r => r.Unit).Count() > 1) intake.Note(path, $"Weights stand there in lb and in kg; loads are shown in {UnitOf(rows)}, the unit of the {(rows.Any(r => r.Item is Plate) ? "first plate" : "first row")}.");
    }

    private static string UnitOf(List<WeightRow> rows) => (rows.FirstOrDefault(r => r.Item is Plate) ?? rows[0]).Unit;

    private static WeightStock Stock(List<WeightRow> rows) => new()
    {
        Bar = rows.FirstOrDefault(r => r.Item is Bar)?.Weight,
        Plates = [.. rows.Where(r => r.Item is Plate).GroupBy(r => r.Weight.Kilograms).OrderByDescending(g => g.Key).Select(g => new PlatePair(g.First().Weight, g.Sum(r => r.Pairs)))],
        // A plate is also held in the hand.
        Singles = rows.Where(r => r.Item is not Bar).GroupBy(r => r.Item).ToDictionary(g => g.Key, g => (IReadOnlyList<Mass>)[.. g.Select(r => r.Weight).DistinctBy(w => w.Kilograms).OrderBy(w => w.Kilograms)], StringComparer.Ordinal),
        Unit = UnitOf(rows),
    };

    private sealed record WeightRow(string Item, Mass Weight, int Pairs, string Unit);
}
