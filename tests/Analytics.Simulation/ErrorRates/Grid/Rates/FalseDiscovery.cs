using Analytics.Simulation.Randomness;
using Analytics.Statistics.Distributions;
using Analytics.Statistics.Multiplicity;

namespace Analytics.Simulation.ErrorRates.Grid.Rates;

/// <summary>Share of false ones among what Benjamini and Hochberg reject, independent tests, true effects three standard errors large.</summary>
public sealed class FalseDiscovery : RateUnderTest
{
    private const int Tests = 20;

    public override string Name => "False discovery rate (Benjamini\u2013Hochberg)";

    public override string Claim => "among rejected tests 5 % at most are false; with independent tests exactly 5 % times the share of true nulls";

    public override IReadOnlyList<RateCase> Cases { get; } =
    [
        .. from nulls in new[] { 20, 15, 10, 5 }
           select new RateCase(FormattableString.Invariant($"{nulls} of {Tests} without effect"), 0.05, random => Share(nulls, random), 0.05 * nulls / Tests),
    ];

    private static Share Share(int nulls, RandomNumbers random)
    {
        double[] p = [.. Enumerable.Range(0, Tests).Select(i => 2 * NormalLaw.Cdf(-Math.Abs(random.Normal() + (i < nulls ? 0 : 3))))];
        var adjusted = AdjustedPValues.Of(p, Adjustment.BenjaminiHochberg);
        var rejected = adjusted.Rejected();
        return new(rejected == 0 ? 0 : adjusted.Adjusted.Take(nulls).Count(a => a <= 0.05) / (double)rejected, 1);
    }
}
