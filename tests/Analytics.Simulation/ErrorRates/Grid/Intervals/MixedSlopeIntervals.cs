using System.Globalization;
using Analytics.Simulation.ErrorRates.Grid.Tables;
using Analytics.Statistics;
using Analytics.Statistics.MixedModels;

namespace Analytics.Simulation.ErrorRates.Grid.Intervals;

/// <summary>Mean change of the squad per trial, from a mixed model of all trials; t interval with Satterthwaite's degrees of freedom.</summary>
/// <param name="spread">SD of the athletes' own true changes per trial, in typical errors.</param>
public abstract class MixedSlopeInterval(double spread) : IntervalUnderTest
{
    private const string Trial = "trial";

    public override string Claim => "the mean true change per trial, by Satterthwaite";

    public override IReadOnlyList<TableCell> Cells { get; } =
        [.. TableCell.WithoutSpread.Where(c => c is { Trials: 3 or 5, Errors: ErrorKind.Normal or ErrorKind.Uneven or ErrorKind.Serial })];

    public override int Dearness => 4;

    public override (Interval Interval, double Truth)? Of(SimulatedTable table)
    {
        double[] changes = [.. table.Rows.Select(_ => spread > 0 ? spread * table.Random.Normal() : 0)];
        var rows = table.Rows.SelectMany((row, i) => row.Select((value, j) => (Athlete: i.ToString(CultureInfo.InvariantCulture), Trial: (double)j, Value: value + changes[i] * j))).ToList();
        var design = ModelDesign.Of([.. rows.Select(r => r.Value)], [.. rows.Select(r => r.Athlete)]).Covariate(Trial, [.. rows.Select(r => r.Trial)]).RandomIntercept();
        return (spread > 0 ? design.RandomSlope(Trial) : design).Fit().Model is { } model ? (model.FixedEffects[1].Interval, 0) : null;
    }
}

public sealed class CommonSlope() : MixedSlopeInterval(0)
{
    public override string Name => "Mixed model, all change alike";
}

public sealed class OwnSlopes() : MixedSlopeInterval(0.5)
{
    public override string Name => "Mixed model, own change for each athlete";
}
