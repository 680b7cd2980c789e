using Analytics.Metrics.Trials;
using Analytics.Season.Columns;
using Analytics.Season.Intake;

namespace Analytics.Season.Clips;

/// <summary>Files read for a repetition (time stamps for all that name the clip). Their rows count as kept only when one is delivered.</summary>
internal sealed class ClipFiles
{
    private readonly List<(FileTally Tally, int Rows)> files = [];
    private int users;
    private bool isSettled;

    /// <summary>Adds the rows of a file that were in order.</summary>
    public void Add(FileTally tally, int rows) => files.Add((tally, rows));

    /// <summary>Counts one more repetition that needs them.</summary>
    public void Share() => users++;

    /// <summary>Counts all rows as delivered, once.</summary>
    public void CountKept()
    {
        if (isSettled) return;
        isSettled = true;
        foreach (var (tally, rows) in files) tally.CountKept(rows);
    }

    /// <summary>Holds all rows back, when the last repetition that needs them was.</summary>
    public void HoldBack(Trial trial)
    {
        if (--users > 0) return;
        var source = trial.Source!;
        foreach (var (tally, rows) in files)
            tally.HoldBackRows(new CellFault("", "", $"the row that names this clip, {source.File} line {source.Line}, was held back, so the clip was too", "Mend that row."), rows, trial.AthleteId);
    }
}
