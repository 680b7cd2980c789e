using Analytics.Simulation.ErrorRates.Grid.Tables;
using Analytics.Simulation.ErrorRates.Grid.Verdicts;
using Analytics.Simulation.Randomness;
using Analytics.Statistics.Change;
using Analytics.Statistics.Distributions;

namespace Analytics.Simulation.ErrorRates.Grid.Rates;

/// <summary>"Beyond the minimal detectable change" with 1.96 √2 TE, as often taught.</summary>
public sealed class NormalMultiplierFlag : RateUnderTest
{
    public override string Name => "Change beyond 1.96 \u221A2 TE (not used)";

    public override string Claim => "an unchanged athlete is flagged in 5 %, as if the typical error were known";

    public override IReadOnlyList<RateCase> Cases { get; } =
    [
        .. from df in new double[] { 5, 9, 19, 49, 98, double.PositiveInfinity }
           select new RateCase(RateLabels.Degrees(df), 0.05, random => Flagged(df, random),
               double.IsPositiveInfinity(df) ? 0.05 : FlagRates.NormalMultiplier(df)),
    ];

    private static bool Flagged(double df, RandomNumbers random)
    {
        var draw = ChangeDraw.Draw(new(df, 0, 1, ErrorKind.Normal), random);
        return Math.Abs(draw.Unchanged - draw.Before) > NormalLaw.TwoSided(0.95) * Math.Sqrt(2) * draw.TypicalError;
    }
}

/// <summary>The luck of one retest: the rate of the flag above, given the typical error that was found.</summary>
public sealed class UnluckyRetest : RateUnderTest
{
    public override string Name => "One unlucky retest";

    public override string Claim => "share of retests after which 1.96 \u221A2 TE flags more than 10 % of the unchanged";

    public override IReadOnlyList<RateCase> Cases { get; } =
    [
        .. from df in new double[] { 5, 9, 19, 49, 98 }
           select new RateCase(RateLabels.Degrees(df), null,
               random => 2 * NormalLaw.Cdf(-NormalLaw.TwoSided(0.95) * ChangeDraw.Draw(new(df, 0, 1, ErrorKind.Normal), random).TypicalError) > 0.10,
               ChiSquareLaw.Cdf(df * Math.Pow(NormalLaw.Quantile(0.95) / NormalLaw.TwoSided(0.95), 2), df)),
    ];
}
