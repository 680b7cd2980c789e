using Analytics.Simulation.ErrorRates.Grid.Tables;
using Analytics.Statistics;
using Analytics.Statistics.Reliability;

namespace Analytics.Simulation.ErrorRates.Grid.Intervals;

/// <summary>Of log-normal values, as the library asks for.</summary>
public sealed class VariationInterval : IntervalUnderTest
{
    public override string Name => "Coefficient of variation";

    public override string Claim => "the error in percent, through logarithms";

    public override bool InReports => true;

    public override IReadOnlyList<TableCell> Cells => TableCell.LogNormal;

    // The logarithms of these values have normal errors of one size, so the interval is exact.
    public override double? ClosedForm(TableCell cell) => 0.95;

    public override (Interval Interval, double Truth)? Of(SimulatedTable table)
        => (CoefficientOfVariation.FromTrials(table.Table).Interval(), 100 * (Math.Exp(ErrorLaw.Share) - 1));
}
