using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Files;
using Analytics.Season.Intake;
using Analytics.Season.Tables;

namespace Analytics.Season.Clips;

/// <summary>Reads a file of digitised points, long or wide.</summary>
internal static class PointsReader
{
    public static readonly NumberColumn Frame = new("frame", 0, 1_000_000, whole: true, needed: true);

    /// <summary>Farthest a point may lie from the corner of the picture, px; catches slips, common practice, no source.</summary>
    public const double Farthest = 100_000;
    private static readonly Column Marker = new("marker", needed: true);
    private static readonly NumberColumn X = new("x_px", -Farthest, Farthest, needed: true);
    private static readonly NumberColumn Y = new("y_px", -Farthest, Farthest, needed: true);

    /// <summary>The points; null when the file could not be used, and then it is held back.</summary>
    public static ClipPoints? Read(SeasonIntake intake, string path)
    {
        if (intake.Open(path) is not [var table]) return null;
        var heads = table.Head.Select(Words.Normal).ToList();
        if (heads.Contains(Marker.Name)) return ReadLong(intake, table);
        if (WideHead.Fault(heads) is not { } fault) return ReadWide(intake, table, WideHead.Markers(table.Head));
        intake.HoldBackAll(table, intake.Count(table.Path, table.Sha256), fault, table.HeadLine);
        return null;
    }

    private static ClipPoints? ReadLong(SeasonIntake intake, Table table)
    {
        ClipPoints? points = null;
        var known = new Dictionary<string, MarkerPoints>(StringComparer.Ordinal);
        intake.ReadRows(table, [Frame, Marker, X, Y], withGates: false, (row, tally) =>
        {
            points ??= new ClipPoints(tally, IsWide: false);
            var frame = row.NeedWhole(Frame, "frame");
            var written = row.NeedText(Marker, "marker");
            if (row.Faults.Count > 0) return;
            if (!known.TryGetValue(written, out var marker)) known.Add(written, marker = Find(points, written, row.Head.HeadOf(Marker)));
            if (!marker.Lines.TryAdd(frame, row.Line)) Twice(row, Frame, $"marker '{CellText.Show(written)}' at frame {frame}", marker.Lines[frame]);
            else if (Point(row, X, Y, out var x, out var y)) marker.Points.Add(new ClipPoint(frame, x, y, row.Line));
            if (row.Faults.Count is 0) points.GoodRows++;
        });
        return points;
    }

    private static ClipPoints? ReadWide(SeasonIntake intake, Table table, IReadOnlyList<WideMarker> columns)
    {
        ClipPoints? points = null;
        var lines = new Dictionary<int, int>();
        intake.ReadRows(table, [Frame, .. columns.SelectMany(c => new[] { c.X, c.Y })], withGates: false, (row, tally) =>
        {
            points ??= Wide(tally, columns);
            var frame = row.NeedWhole(Frame, "frame");
            if (row.Faults.Count is 0 && !lines.TryAdd(frame, row.Line)) Twice(row, Frame, $"frame {frame}", lines[frame]);
            if (row.Faults.Count > 0) return;
            var found = new List<(MarkerPoints, ClipPoint)>(columns.Count);
            foreach (var column in columns)
                if (Point(row, column.X, column.Y, out var x, out var y)) found.Add((points.Markers[column.Name], new ClipPoint(frame, x, y, row.Line)));
            if (row.Faults.Count > 0) return;
            foreach (var (marker, point) in found) marker.Points.Add(point);
            points.GoodRows++;
        });
        return points;
    }

    private static ClipPoints Wide(FileTally tally, IReadOnlyList<WideMarker> columns)
    {
        var points = new ClipPoints(tally, IsWide: true);
        foreach (var column in columns) points.Markers.Add(column.Name, new MarkerPoints(column.Name, column.X.Name));
        return points;
    }

    private static MarkerPoints Find(ClipPoints points, string written, string head)
    {
        var name = Words.Normal(written);
        if (!points.Markers.TryGetValue(name, out var marker)) points.Markers.Add(name, marker = new MarkerPoints(written, head));
        return marker;
    }

    /// <summary>Whether the row has the point; one coordinate without the other is a fault.</summary>
    private static bool Point(RowCells row, NumberColumn atX, NumberColumn atY, out double x, out double y)
    {
        var before = row.Faults.Count;
        double? readX = row.Number(atX), readY = row.Number(atY);
        (x, y) = (readX ?? 0, readY ?? 0);
        if (row.Faults.Count > before) return false;
        if (readX is null == readY is null) return readX is not null;
        var (there, missing) = readX is null ? (atY, atX) : (atX, atY);
        row.Fault(row.Head.HeadOf(missing), "", $"'{CellText.Show(row.Head.HeadOf(there))}' is filled, but '{CellText.Show(row.Head.HeadOf(missing))}' is empty", "Fill in both coordinates, or empty both where the marker was not seen.");
        return false;
    }

    private static void Twice(RowCells row, Column column, string what, int line)
        => row.Fault(row.Head.HeadOf(column), row.Text(column), $"{what} already stands in line {line}", "Delete one of the two rows, or correct the frame.");
}
