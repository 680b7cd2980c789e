using Analytics.Simulation.Randomness;
using Analytics.Statistics.Change;

namespace Analytics.Simulation.ErrorRates.Grid.Rates;

/// <summary>The credible interval after a stated prior N(0, τ²), true changes drawn from that prior and from others.</summary>
public sealed class PosteriorRates : RateUnderTest
{
    /// <summary>SD of true changes the prior states, in typical errors; the worthwhile change is 0.5.</summary>
    private const double Stated = 1, Worthwhile = 0.5;

    public override string Name => "Posterior with a stated prior, SD 1 TE";

    public override string Claim => "95 % interval holds the true change; among gains called 70 to 90 % probable that share is true";

    public override IReadOnlyList<RateCase> Cases { get; } =
    [
        .. from truth in new[] { 1, 0.5, 2 }
           select new RateCase(FormattableString.Invariant($"interval, true SD {truth} TE"), 0.95, random => Covered(truth, random), truth == Stated ? 0.95 : null),
        .. from truth in new[] { 1, 0.5, 2 }
           select new RateCase(FormattableString.Invariant($"stated minus true share of gains called 70 to 90 %, true SD {truth} TE"), 0, random => Calibration(truth, random), truth == Stated ? 0 : null),
    ];

    private static bool Covered(double sd, RandomNumbers random)
    {
        var (change, posterior) = Draw(sd, random);
        return posterior.Interval().Contains(change);
    }

    private static Share Calibration(double sd, RandomNumbers random)
    {
        var (change, posterior) = Draw(sd, random);
        var stated = posterior.Above(Worthwhile);
        return stated is >= 0.7 and <= 0.9 ? new(stated - (change > Worthwhile ? 1 : 0), 1) : default;
    }

    private static (double Change, ChangePosterior Posterior) Draw(double sd, RandomNumbers random)
    {
        var change = random.Normal(0, sd);
        return (change, ChangePosterior.Of(change + Math.Sqrt(2) * random.Normal(), Math.Sqrt(2), 0, Stated));
    }
}
