using Analytics.Simulation.ErrorRates.Grid.Tables;
using Analytics.Simulation.ErrorRates.Grid.Verdicts;
using Analytics.Statistics.Change;
using Analytics.Statistics.Distributions;

namespace Analytics.Simulation.ErrorRates.Grid.Rates;

/// <summary>"Probability of a gain beyond the worthwhile change is more than c", read off flat-prior shares; typical error known, SWC half of it.</summary>
public sealed class FlatPriorFlag : RateUnderTest
{
    private const double Worthwhile = 0.5;

    public override string Name => "Flat-prior share above c (not used for verdicts)";

    public override string Claim => "counted are flags of a gain; at a true change of just the worthwhile amount the rate is 1 \u2212 c";

    public override IReadOnlyList<RateCase> Cases { get; } =
    [
        .. from change in new[] { 0, Worthwhile }
           from c in new[] { 0.5, 0.75, 0.9, 0.95, 0.975 }
           select Case(c, change),
    ];

    private static RateCase Case(double c, double change) => new(
        FormattableString.Invariant($"c {c}, {(change == 0 ? "unchanged" : "changed by the worthwhile amount")}"),
        change == 0 ? null : 1 - c,
        random =>
        {
            var draw = ChangeDraw.Draw(new(double.PositiveInfinity, Worthwhile, 1, ErrorKind.Normal), random);
            return IndividualChange.Between(draw.Before, draw.Unchanged + change, 1, double.PositiveInfinity).Shares(Worthwhile).Above > c;
        },
        1 - NormalLaw.Cdf((Worthwhile - change) / Math.Sqrt(2) + NormalLaw.Quantile(c)));
}
