using System.Globalization;
using Analytics.Metrics.Sprinting;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Season.Cells;
using Analytics.Season.Checks;
using Analytics.Season.Columns;

namespace Analytics.Season.Trials;

/// <summary><c>sprints.csv</c>: one run a row, one column a gate.</summary>
internal sealed class SprintsTable : TrialTable
{
    public static readonly Column Timing = new("timing");

    public static readonly Column Start = new("start");

    public override string Name => "sprints";

    public override IReadOnlyList<Column> Columns { get; } = [AthleteId, Attempt, Timing, Start];

    public override bool HasGates => true;

    public override Trial? Read(RowCells row, in TrialPlace place)
    {
        var timing = row.NeedWord(Timing, Words.Timing, place.Settings.DefaultTiming, "timing");
        var start = row.NeedWord(Start, Words.Start, place.Settings.DefaultStart, "start");
        var splits = Splits(row, timing, start);
        var attempt = place.Numbers.Of(row, Attempt, place.AthleteId, "", (int)timing * 16 + (int)start);
        return row.Faults.Count > 0 ? null : new SprintTrial
        {
            AthleteId = place.AthleteId,
            Date = place.Date,
            Source = place.Source,
            Attempt = attempt,
            Timing = timing,
            Start = start,
            Splits = splits,
        };
    }

    /// <summary>One bad gate holds the whole run back: splits hang together, and a slip in one often means a shifted row.</summary>
    private static Split[] Splits(RowCells row, TimingMethod timing, StartType start)
    {
        var faults = row.Faults.Count;
        var times = new Split[row.Head.Gates.Count];
        var count = 0;
        var last = -1;
        for (var i = 0; i < row.Head.Gates.Count; i++)
        {
            var gate = row.Head.Gates[i];
            if (row.Quantity(gate) is not { } seconds) continue;
            var split = new Split(Length.FromMetres(gate.Gate!.Value), Duration.FromSeconds(seconds));
            if (count > 0 && !CheckSection(row, row.Head.Gates[last], times[count - 1], gate, split)) continue;
            if (!CheckFromStart(row, gate, split, timing, start)) continue;
            times[count++] = split;
            last = i;
        }

        if (count is 0 && row.Faults.Count == faults)
            row.Fault("", "", "the run has no time at any gate", "Fill in the times, or delete the row.");
        Array.Resize(ref times, count);
        return times;
    }

    private static bool CheckFromStart(RowCells row, QuantityColumn gate, Split split, TimingMethod timing, StartType start)
    {
        var fastest = FastestRun.ShortestTime(split.Distance.Metres, timing, start);
        if (split.Time.Seconds >= fastest) return true;
        row.Fault(row.Head.HeadOf(gate), row.Text(gate), string.Create(CultureInfo.InvariantCulture, $"{split.Distance.Metres:0.##} m from the start in {split.Time.Seconds:0.###} s is faster than anyone runs; allowed from {fastest:0.00} s for {SprintSeries.Of(timing, start)}"), "Check the time, and whether it is a time between gates.");
        return false;
    }

    private static bool CheckSection(RowCells row, QuantityColumn before, Split first, QuantityColumn gate, Split second)
    {
        string head = row.Head.HeadOf(gate), earlier = row.Head.HeadOf(before), value = row.Text(gate);
        double seconds = second.Time.Seconds - first.Time.Seconds, metres = second.Distance.Metres - first.Distance.Metres;
        if (seconds <= 0)
        {
            row.Fault(head, value, $"the time goes backwards: {CellText.Number(second.Time.Seconds)} s at {head}, after {CellText.Number(first.Time.Seconds)} s at {earlier}", "Write times counted from the start; if these are times between gates, add them up.");
            return false;
        }

        var speed = metres / seconds;
        if (speed is >= GateHead.LowestSpeed and <= GateHead.HighestSpeed) return true;
        row.Fault(head, value, string.Create(CultureInfo.InvariantCulture, $"{metres:0.##} m between {earlier} and {head} in {seconds:0.###} s is {speed:0.#} m/s; allowed {GateHead.LowestSpeed:0.#} to {GateHead.HighestSpeed:0.#} m/s"), $"Check the times at {earlier} and {head}, and whether the gates stood at yards or metres.");
        return false;
    }
}
