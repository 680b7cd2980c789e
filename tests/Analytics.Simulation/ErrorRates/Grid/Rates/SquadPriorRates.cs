using Analytics.Simulation.Randomness;
using Analytics.Statistics.Change;

namespace Analytics.Simulation.ErrorRates.Grid.Rates;

/// <summary>The posterior with a prior estimated from the squad's own changes, typical error from a retest with 19 degrees of freedom.</summary>
public sealed class SquadPriorRates : RateUnderTest
{
    private const double MeanChange = 0.5, Worthwhile = 0.5;
    private const int Degrees = 19;

    public override string Name => "Posterior with the squad's own prior";

    public override string Claim => "95 % interval holds an athlete's true change; gains called 70 to 90 % probable are true as often as stated";

    public override IReadOnlyList<RateCase> Cases { get; } =
    [
        .. from n in new[] { 5, 10, 20, 60 }
           from sd in new[] { 0.5, 1, 2 }
           select new RateCase(FormattableString.Invariant($"interval, {n} athletes, true SD {sd} TE"), 0.95, random => Covered(n, sd, random)),
        .. from n in new[] { 10, 20, 60 }
           from sd in new[] { 0.5, 1, 2 }
           select new RateCase(FormattableString.Invariant($"stated minus true share of gains called 70 to 90 %, {n} athletes, true SD {sd} TE"), 0, random => Calibration(n, sd, random)),
    ];

    private static Share Covered(int n, double sd, RandomNumbers random)
        => new(Draw(n, sd, random).Count(a => a.Posterior.StandardDeviation > 0 ? a.Posterior.Interval().Contains(a.Change) : a.Posterior.Mean == a.Change), n);

    private static Share Calibration(int n, double sd, RandomNumbers random)
    {
        double miss = 0, called = 0;
        foreach (var (change, posterior) in Draw(n, sd, random))
        {
            if (posterior.StandardDeviation <= 0) continue;
            var stated = posterior.Above(Worthwhile);
            if (stated is < 0.7 or > 0.9) continue;
            miss += stated - (change > Worthwhile ? 1 : 0);
            called++;
        }

        return new(miss, called);
    }

    private static List<(double Change, ChangePosterior Posterior)> Draw(int n, double sd, RandomNumbers random)
    {
        double squares = 0;
        for (var i = 0; i < Degrees; i++) squares += Math.Pow(random.Normal(), 2);
        var error = Math.Sqrt(2 * squares / Degrees);
        double[] truth = [.. Enumerable.Range(0, n).Select(_ => random.Normal(MeanChange, sd))];
        IndividualChange[] changes = [.. truth.Select(t => new IndividualChange(t + Math.Sqrt(2) * random.Normal(), error, Degrees))];
        var prior = ChangePrior.OfSquad(changes);
        return [.. truth.Zip(changes, (t, c) => (t, ChangePosterior.Of(c, prior)))];
    }
}
