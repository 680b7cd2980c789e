using Analytics.Simulation.ErrorRates.Grid.Tables;
using Analytics.Statistics;
using Analytics.Statistics.Change;
using Analytics.Statistics.Distributions;
using Analytics.Statistics.Reliability;

namespace Analytics.Simulation.ErrorRates.Grid.Intervals;

/// <summary>The interval the reports draw for every athlete. The typical error comes from the table, the athlete from outside it.</summary>
public sealed class ChangeInterval : IntervalUnderTest
{
    private const double TrueChange = 1.5;

    public override string Name => "Change of an athlete";

    public override string Claim => "an athlete's true change, typical error from a retest, Student's t";

    public override bool InReports => true;

    public override double? ClosedForm(TableCell cell) => cell.Errors is ErrorKind.Normal or ErrorKind.CommonShift ? 0.95 : null;

    public override (Interval Interval, double Truth)? Of(SimulatedTable table)
    {
        var error = TypicalErrors.FromTrials(table.Table);
        return (Between(table, error.Value, error.DegreesOfFreedom).Interval(), TrueChange);
    }

    internal static IndividualChange Between(SimulatedTable table, double error, double df)
    {
        var values = table.NewAthlete(0, TrueChange);
        return IndividualChange.Between(values[0], values[1], error, df);
    }
}

/// <summary>The same with the error taken as known: with few degrees of freedom it promises too much. The library does not offer it as such.</summary>
public sealed class NormalMultiplierChangeInterval : IntervalUnderTest
{
    public override string Name => "Change of an athlete, normal multiplier (not used)";

    public override string Claim => "the same, as if the typical error were known";

    public override double? ClosedForm(TableCell cell)
        => cell.Errors is ErrorKind.Normal or ErrorKind.CommonShift ? 1 - 2 * StudentLaw.Cdf(-NormalLaw.TwoSided(0.95), cell.DegreesOfFreedom) : null;

    public override (Interval Interval, double Truth)? Of(SimulatedTable table)
        => (ChangeInterval.Between(table, TypicalErrors.FromTrials(table.Table).Value, double.PositiveInfinity).Interval(), 1.5);
}

/// <summary>An error that is really known, as from a large study.</summary>
public sealed class KnownErrorChangeInterval : IntervalUnderTest
{
    public override string Name => "Change of an athlete, typical error known";

    public override string Claim => "an athlete's true change, typical error known";

    public override bool InReports => true;

    public override IReadOnlyList<TableCell> Cells => [.. TableCell.Pairs.Where(c => c.Athletes == 20)];

    public override double? ClosedForm(TableCell cell) => cell.Errors is ErrorKind.Normal or ErrorKind.CommonShift or ErrorKind.Serial ? 0.95 : null;

    public override (Interval Interval, double Truth)? Of(SimulatedTable table)
        => (ChangeInterval.Between(table, table.TypicalError, double.PositiveInfinity).Interval(), 1.5);
}
