using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Tables;

namespace Analytics.Season.Training;

/// <summary>Which things of a file have been read, and where they stand, so that a second one is told.</summary>
internal sealed class SeenRows
{
    private readonly Dictionary<string, (string Path, int Line)> places = new(StringComparer.Ordinal);

    /// <summary>Says so in the row when the thing stands there already.</summary>
    /// <param name="row">The row.</param>
    /// <param name="table">Its table.</param>
    /// <param name="column">Column that names it.</param>
    /// <param name="key">What tells it from others.</param>
    /// <param name="what">What it is, in words: "the exercise".</param>
    /// <param name="remedy">What would mend it.</param>
    public void Refuse(RowCells row, Table table, Column column, string key, string what, string remedy)
    {
        if (!places.TryGetValue(key, out var place)) return;
        row.Wrong(column, $"{what} already stands in {(place.Path == table.Path ? "" : CellMarks.Text(place.Path) + " ")}line {place.Line}", remedy);
    }

    /// <summary>Takes it down, once its row is kept.</summary>
    public void Add(RowCells row, Table table, string key) => places.TryAdd(key, (table.Path, row.Line));
}
