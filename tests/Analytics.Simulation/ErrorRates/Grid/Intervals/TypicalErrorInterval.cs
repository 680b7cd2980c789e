using Analytics.Simulation.ErrorRates.Grid.Tables;
using Analytics.Statistics;
using Analytics.Statistics.Reliability;

namespace Analytics.Simulation.ErrorRates.Grid.Intervals;

public sealed class TypicalErrorInterval : IntervalUnderTest
{
    public override string Name => "Typical error";

    public override string Claim => "the typical error, by chi-square";

    public override bool InReports => true;

    public override double? ClosedForm(TableCell cell) => cell.Errors is ErrorKind.Normal or ErrorKind.CommonShift ? 0.95 : null;

    public override (Interval Interval, double Truth)? Of(SimulatedTable table) => (TypicalErrors.FromTrials(table.Table).Interval(), table.TypicalError);
}
