using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Season.Cells;
using Analytics.Season.Columns;

namespace Analytics.Season.Trials;

/// <summary><c>stairs.csv</c>: stair runs for power.</summary>
internal sealed class StairsTable : TrialTable
{
    // Limits outside which a value is a slip; common practice, no source.
    public static readonly QuantityColumn Rise = new("rise", UnitSets.Rises, 0.3, 6, needed: true);

    public static readonly QuantityColumn Time = new("time", UnitSets.Times, 0.1, 10, needed: true);

    private const double HighestClimb = 4;

    public override string Name => "stairs";

    public override IReadOnlyList<Column> Columns { get; } = [AthleteId, Attempt, Rise, Time];

    public override Trial? Read(RowCells row, in TrialPlace place)
    {
        double rise = row.NeedQuantity(Rise, "rise of the stairs"), time = row.NeedQuantity(Time, "time");
        if (rise / time > HighestClimb)
            row.Fault(row.Head.HeadOf(Time), row.Text(Time), $"a climb of {CellText.Number(rise)} m in {CellText.Number(time)} s is {CellText.Number(rise / time)} m/s; allowed up to {CellText.Number(HighestClimb)} m/s", "Check the rise and its unit, and the time.");
        var attempt = place.Numbers.Of(row, Attempt, place.AthleteId);
        return row.Faults.Count > 0 ? null : new StairTrial
        {
            AthleteId = place.AthleteId,
            Date = place.Date,
            Source = place.Source,
            Attempt = attempt,
            Rise = Length.FromMetres(rise),
            Time = Duration.FromSeconds(time),
        };
    }
}
