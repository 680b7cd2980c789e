using Analytics.Simulation.ErrorRates.Grid.Tables;
using Analytics.Statistics;
using Analytics.Statistics.Resampling;

namespace Analytics.Simulation.ErrorRates.Grid.Intervals;

/// <summary>Bootstrap interval of the correlation of two trials, 1000 resamples.</summary>
/// <param name="method">How it is read from the resamples.</param>
public abstract class CorrelationBootstrap(BootstrapMethod method) : IntervalUnderTest
{
    public override string Claim => "the correlation of two trials, 1000 resamples";

    public override IReadOnlyList<TableCell> Cells { get; } =
        [.. TableCell.Everything.Where(c => c is { Trials: 2, Reliability: 0.5 or 0.9, Errors: ErrorKind.Normal or ErrorKind.Skewed, Athletes: >= 10 and <= 20 })];

    public override int Dearness => 2;

    public override (Interval Interval, double Truth)? Of(SimulatedTable table)
    {
        var found = Bootstrap.Correlation([.. table.Rows.Select(r => r[0])], [.. table.Rows.Select(r => r[1])], new() { Resamples = 1000, Seed = table.Random.Next() }).Interval(method).Limits;
        return found is { } interval ? (interval, table.Cell.Reliability) : null;
    }
}

public sealed class PercentileCorrelation() : CorrelationBootstrap(BootstrapMethod.Percentile)
{
    public override string Name => "Bootstrap of a correlation, percentile";
}

public sealed class AcceleratedCorrelation() : CorrelationBootstrap(BootstrapMethod.BiasCorrectedAccelerated)
{
    public override string Name => "Bootstrap of a correlation, BCa";
}

/// <summary>Bootstrap interval of a mean change, 1000 resamples.</summary>
/// <param name="method">How it is read from the resamples.</param>
public abstract class MeanBootstrap(BootstrapMethod method) : IntervalUnderTest
{
    public override string Claim => "the mean true change, 1000 resamples";

    public override IReadOnlyList<TableCell> Cells { get; } = [.. TableCell.Pairs.Where(c => c.Errors is ErrorKind.Normal or ErrorKind.Uneven)];

    public override int Dearness => 2;

    public override (Interval Interval, double Truth)? Of(SimulatedTable table)
        => Bootstrap.Mean(table.Table.Differences(0, 1), new() { Resamples = 1000, Seed = table.Random.Next() }).Interval(method).Limits is { } interval ? (interval, 0) : null;
}

public sealed class PercentileMean() : MeanBootstrap(BootstrapMethod.Percentile)
{
    public override string Name => "Bootstrap of a mean change, percentile";
}

public sealed class AcceleratedMean() : MeanBootstrap(BootstrapMethod.BiasCorrectedAccelerated)
{
    public override string Name => "Bootstrap of a mean change, BCa";
}
