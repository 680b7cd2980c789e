using Analytics.Simulation.ErrorRates.Grid.Tables;
using Analytics.Statistics;
using Analytics.Statistics.Change;

namespace Analytics.Simulation.ErrorRates.Grid.Intervals;

public sealed class MeanChangeInterval : IntervalUnderTest
{
    public override string Name => "Change in the mean";

    public override string Claim => "the mean true change of the squad, by Student's t";

    public override bool InReports => true;

    public override IReadOnlyList<TableCell> Cells => TableCell.Pairs;

    public override double? ClosedForm(TableCell cell) => cell.Errors is ErrorKind.Normal or ErrorKind.CommonShift or ErrorKind.Serial ? 0.95 : null;

    public override (Interval Interval, double Truth)? Of(SimulatedTable table)
        => (MeanChange.Of(table.Table.Differences(0, 1)).Mean.Interval!.Value, table.Shifts[1] - table.Shifts[0]);
}
