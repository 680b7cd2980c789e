using Analytics.Metrics.Motion;
using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Intake;

namespace Analytics.Season.Clips;

/// <summary>Reads the time stamps of the frames of a clip.</summary>
internal static class StampsReader
{
    private static readonly QuantityColumn Time = new("time", UnitSets.Times, 0, 36_000, needed: true);

    /// <summary>The clock; null when the file could not be used, and then it is held back.</summary>
    /// <param name="intake">Counts the file.</param>
    /// <param name="path">The file.</param>
    /// <param name="files">Receives its rows.</param>
    public static FrameClock? Read(SeasonIntake intake, string path, ClipFiles files)
    {
        if (intake.Open(path) is not [var table]) return null;
        var stamps = new List<(int Frame, double Seconds, int Line)>();
        var tally = intake.ReadRows(table, [PointsReader.Frame, Time], withGates: false, (row, _) =>
        {
            var frame = row.NeedWhole(PointsReader.Frame, "frame");
            var seconds = row.NeedQuantity(Time, "time");
            if (row.Faults.Count is 0) stamps.Add((frame, seconds, row.Line));
        });
        if (Fault(stamps, tally.Rows) is { } fault)
        {
            if (stamps.Count > 0) tally.HoldBackRows(fault, stamps.Count);
            return null;
        }

        files.Add(tally, stamps.Count);
        return FrameClock.FromTimeStamps(stamps.Select(s => s.Seconds).ToArray(), stamps[0].Frame);
    }

    /// <summary>One bad stamp spoils the clock: all frames after it would be counted wrong.</summary>
    private static CellFault? Fault(List<(int Frame, double Seconds, int Line)> stamps, int rows)
    {
        if (stamps.Count < rows) return new CellFault("", "", $"{rows - stamps.Count} of {rows} rows are held back, so the time stamps were not used", "Mend those rows.");
        if (stamps.Count < 3) return new CellFault("", "", $"there are {stamps.Count} time stamps; at least 3 are needed", "Export the time stamp of every frame, or delete the file and give the rate.");
        for (var i = 1; i < stamps.Count; i++)
        {
            var (before, now) = (stamps[i - 1], stamps[i]);
            if (now.Frame != before.Frame + 1)
                return new CellFault("frame", CellText.Number(now.Frame), $"line {now.Line}: frame {now.Frame} follows frame {before.Frame}; every frame must stand there once, in order", "Export the time stamp of every frame. A frame the camera dropped has no number of its own.");
            if (now.Seconds <= before.Seconds)
                return new CellFault("time_s", CellText.Number(now.Seconds), $"line {now.Line}: the time of frame {now.Frame} is {CellText.Exact(now.Seconds)} s, not after the {CellText.Exact(before.Seconds)} s of the frame before", "Check the time stamps of the recording, or delete the file and give the rate.");
        }

        return null;
    }
}
