using Analytics.Simulation.Randomness;
using Analytics.Statistics.Change;
using Analytics.Statistics.Distributions;
using Analytics.Statistics.Summaries;

namespace Analytics.Simulation.ErrorRates.Grid.Rates;

/// <summary>A new test against the athlete's own earlier ones, all from one normal law.</summary>
public sealed class OwnBaselineFlag : RateUnderTest
{
    private static readonly int[] s_tests = [3, 5, 10, 20, 50];

    public override string Name => "Outside an athlete's own baseline, other rules (not used)";

    public override string Claim => "counted are flags of unchanged athletes";

    public override IReadOnlyList<RateCase> Cases { get; } =
    [
        .. from m in s_tests select Case(m, "mean \u00B1 2 SD", 0.05, 2, FlagRates.OwnBaseline(2, m)),
        .. from m in s_tests select Case(m, "mean \u00B1 3 SD", 0.0027, 3, FlagRates.OwnBaseline(3, m)),
        .. from m in s_tests select Case(m, "1.96 SD \u221A(1 + 1/m)", 0.05, NormalLaw.TwoSided(0.95) * Math.Sqrt(1 + 1.0 / m), FlagRates.OwnBaselinePrediction(NormalLaw.TwoSided(0.95), m)),
    ];

    private static RateCase Case(int tests, string rule, double stated, double spreads, double closed)
        => new(FormattableString.Invariant($"{rule}, {tests} tests before"), stated, random => Flagged(tests, spreads, random), closed);

    private static bool Flagged(int tests, double spreads, RandomNumbers random)
    {
        double[] before = [.. Enumerable.Range(0, tests).Select(_ => random.Normal())];
        return Math.Abs(random.Normal() - Moments.Mean(before)) > spreads * Moments.StandardDeviation(before);
    }
}
