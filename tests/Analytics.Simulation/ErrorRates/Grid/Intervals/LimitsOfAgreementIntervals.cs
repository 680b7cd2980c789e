using Analytics.Simulation.ErrorRates.Grid.Tables;
using Analytics.Statistics;
using Analytics.Statistics.Agreement;
using Analytics.Statistics.Distributions;

namespace Analytics.Simulation.ErrorRates.Grid.Intervals;

/// <summary>Interval of the upper limit of agreement of two tests: mean difference + 1.96 SD of differences.</summary>
public abstract class LimitInterval : IntervalUnderTest
{
    public override string Claim => "the upper limit, mean + 1.96 SD of differences";

    // Serial errors have differences of another spread in the retest than later: there is no one limit to hold.
    public override IReadOnlyList<TableCell> Cells => [.. TableCell.Pairs.Where(c => c.Errors != ErrorKind.Serial)];

    public override (Interval Interval, double Truth)? Of(SimulatedTable table)
        => (Of(LimitsOfAgreement.Of(table.Table.Differences(0, 1))), table.Shifts[1] - table.Shifts[0] + NormalLaw.TwoSided(0.95) * Math.Sqrt(2) * table.TypicalError);

    protected abstract Interval Of(LimitsOfAgreement limits);
}

public sealed class ExactLimit : LimitInterval
{
    public override string Name => "Limits of agreement, exact";

    public override double? ClosedForm(TableCell cell) => cell.Errors is ErrorKind.Normal or ErrorKind.CommonShift ? 0.95 : null;

    protected override Interval Of(LimitsOfAgreement limits) => limits.ExactUpper;
}

public sealed class ApproximateLimit : LimitInterval
{
    public override string Name => "Limits of agreement, standard error";

    public override int Dearness => 2;

    protected override Interval Of(LimitsOfAgreement limits) => limits.Upper.Interval!.Value;
}

public sealed class RuleOfThumbLimit : LimitInterval
{
    public override string Name => "Limits of agreement, rule of thumb \u221A(3 s\u00B2/n)";

    public override int Dearness => 2;

    protected override Interval Of(LimitsOfAgreement limits) => limits.RuleOfThumbUpper;
}
