using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Intake;
using Analytics.Season.Tables;

namespace Analytics.Season.Training;

/// <summary>Reads tables whose rows each name one thing; a second of the same name is held back.</summary>
internal static class NamedRows
{
    /// <summary>The things that could be kept, in file order.</summary>
    /// <typeparam name="T">Type of the thing.</typeparam>
    /// <param name="intake">Where rows are counted.</param>
    /// <param name="tables">The tables.</param>
    /// <param name="columns">Columns they may have.</param>
    /// <param name="name">Column of the identifier.</param>
    /// <param name="what">What a row is, in words: "exercise".</param>
    /// <param name="make">Makes the thing from its row and identifier; faults go to the row.</param>
    public static List<T> Read<T>(SeasonIntake intake, IEnumerable<Table> tables, IReadOnlyList<Column> columns, Column name, string what, Func<RowCells, string, T> make)
    {
        var (things, seen) = (new List<T>(), new SeenRows());
        foreach (var table in tables)
        {
            intake.ReadRows(table, columns, withGates: false, (row, tally) =>
            {
                var id = row.NeedId(name, what);
                seen.Refuse(row, table, name, id, $"the {what} '{CellText.Show(id)}'", $"Give each {what} an identifier of its own, or delete one of the two rows.");
                var thing = make(row, id);
                if (row.Faults.Count > 0) return;
                seen.Add(row, table, id);
                things.Add(thing);
                tally.CountKept();
            });
        }

        return things;
    }
}
