using Analytics.Simulation.Randomness;
using Analytics.Statistics.Change;
using Analytics.Statistics.Distributions;
using Analytics.Statistics.Summaries;

namespace Analytics.Simulation.ErrorRates.Grid.Rates;

/// <summary>SD of individual responses: variance ± 1.96 standard errors, from athletes and as many controls.</summary>
public sealed class ResponseRates : RateUnderTest
{
    public override string Name => "SD of individual responses";

    public override string Claim => "the interval holds the true SD in 95 %; the estimate is negative as often as theory says";

    public override IReadOnlyList<RateCase> Cases { get; } =
    [
        .. from n in new[] { 10, 15, 40 }
           from sd in new[] { 0, 1, 2 }
           select new RateCase(FormattableString.Invariant($"interval, {n} athletes, {n} controls, true SD {sd} TE"), 0.95, random => Estimate(n, sd, random).VarianceInterval.Contains(sd * sd)),
        .. from n in new[] { 10, 15, 40 }
           from sd in new[] { 0, 1 }
           select new RateCase(FormattableString.Invariant($"negative, {n} athletes, {n} controls, true SD {sd} TE"), null, random => Estimate(n, sd, random).Variance < 0,
               FisherLaw.Cdf(2 / (2.0 + sd * sd), n - 1, n - 1)),
    ];

    private static IndividualResponses Estimate(int n, double sd, RandomNumbers random)
    {
        double Spread(double responses) => Moments.StandardDeviation([.. Enumerable.Range(0, n).Select(_ => responses * random.Normal() + random.Normal() - random.Normal())]);
        return IndividualResponses.Between(Spread(sd), n, Spread(0), n);
    }
}
