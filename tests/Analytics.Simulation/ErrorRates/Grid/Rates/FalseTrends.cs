using Analytics.Simulation.Randomness;
using Analytics.Statistics.Trends;

namespace Analytics.Simulation.ErrorRates.Grid.Rates;

/// <summary>Trends found at a nominal 5 % in first-order autoregressive series that have none.</summary>
public abstract class FalseTrends : RateUnderTest
{
    public override string Claim => "a series without trend is flagged in 5 %; \u03C6 is how much of a value carries over to the next";

    public override IReadOnlyList<RateCase> Cases =>
    [
        .. from phi in new[] { 0, 0.2, 0.4, 0.6 }
           from n in new[] { 12, 20, 40 }
           select new RateCase(FormattableString.Invariant($"\u03C6 {phi}, {n} values"), 0.05, random => P(Series(phi, n, random)) < 0.05, ClosedForm(phi)),
    ];

    protected virtual double? ClosedForm(double phi) => null;

    protected abstract double P(double[] series);

    private static double[] Series(double phi, int n, RandomNumbers random)
    {
        var values = new double[n];
        values[0] = random.Normal();
        for (var i = 1; i < n; i++) values[i] = phi * values[i - 1] + Math.Sqrt(1 - phi * phi) * random.Normal();
        return values;
    }
}

public sealed class MannKendallTrends : FalseTrends
{
    public override string Name => "Trend by Mann\u2013Kendall";

    protected override double P(double[] series) => MannKendall.Of(series).P;
}

public sealed class CorrectedTrends : FalseTrends
{
    public override string Name => "Trend by Mann\u2013Kendall, corrected for carry-over";

    protected override double P(double[] series) => MannKendall.Of(series).CorrectedP ?? 1;
}

public sealed class LeastSquaresTrends : FalseTrends
{
    public override string Name => "Trend by least squares";

    protected override double? ClosedForm(double phi) => phi == 0 ? 0.05 : null;

    protected override double P(double[] series) => LeastSquaresTrend.Of([.. Enumerable.Range(1, series.Length).Select(i => (double)i)], series).Line.P ?? 1;
}
