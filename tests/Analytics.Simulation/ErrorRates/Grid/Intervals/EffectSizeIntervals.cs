using Analytics.Simulation.ErrorRates.Grid.Tables;
using Analytics.Statistics;
using Analytics.Statistics.EffectSize;

namespace Analytics.Simulation.ErrorRates.Grid.Intervals;

/// <summary>Standardised difference of two groups of the same size, half a standard deviation apart.</summary>
public abstract class GroupEffectInterval : IntervalUnderTest
{
    private const double True = 0.5;

    public override string Claim => "the difference of two groups in standard deviations, by the noncentral t law";

    // The other kinds change the spread itself, and with it what is to be held.
    public override IReadOnlyList<TableCell> Cells => [.. TableCell.Pairs.Where(c => c.Errors is ErrorKind.Normal or ErrorKind.Skewed or ErrorKind.Uneven)];

    public override (Interval Interval, double Truth)? Of(SimulatedTable table)
    {
        var spread = Math.Sqrt(table.BetweenVariance + 1);
        double[] first = [.. table.Rows.Select(_ => table.NewAthlete(True * spread)[0])];
        return (Of(GroupDifference.Between(first, [.. table.Rows.Select(r => r[0])])), True);
    }

    protected abstract Interval Of(GroupDifference difference);
}

public sealed class CohenInterval : GroupEffectInterval
{
    public override string Name => "Effect size d of two groups";

    public override double? ClosedForm(TableCell cell) => cell.Errors == ErrorKind.Normal ? 0.95 : null;

    protected override Interval Of(GroupDifference difference) => difference.DInterval;
}

public sealed class HedgesInterval : GroupEffectInterval
{
    public override string Name => "Effect size g of two groups";

    protected override Interval Of(GroupDifference difference) => difference.GInterval;
}

/// <summary>Mean change in standard deviations of the changes; everybody gains one typical error.</summary>
public sealed class PairedEffectInterval : IntervalUnderTest
{
    public override string Name => "Effect size of a change";

    public override string Claim => "the mean change in standard deviations of changes, by the noncentral t law";

    public override IReadOnlyList<TableCell> Cells => [.. TableCell.Pairs.Where(c => c.Errors is ErrorKind.Normal or ErrorKind.Skewed or ErrorKind.Uneven)];

    public override double? ClosedForm(TableCell cell) => cell.Errors == ErrorKind.Normal ? 0.95 : null;

    public override (Interval Interval, double Truth)? Of(SimulatedTable table)
        => (PairedDifference.Between([.. table.Rows.Select(r => r[1] + 1)], [.. table.Rows.Select(r => r[0])]).ZInterval, 1 / Math.Sqrt(2));
}
