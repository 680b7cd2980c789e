using Analytics.Simulation.ErrorRates.Grid.Tables;
using Analytics.Simulation.ErrorRates.Grid.Verdicts;
using Analytics.Simulation.Randomness;
using Analytics.Statistics.Change;

namespace Analytics.Simulation.ErrorRates.Grid.Rates;

/// <summary>The rule of thumb "beyond 1.5 or 2 typical errors", as the library's own rule.</summary>
public sealed class ErrorMultipleFlag : RateUnderTest
{
    /// <summary>In typical errors; small enough to stay out of the way.</summary>
    private const double Worthwhile = 0.2;

    public override string Name => "Change beyond a multiple of the typical error (not used)";

    public override string Claim => "the rule states this rate of clear verdicts on the unchanged";

    public override IReadOnlyList<RateCase> Cases { get; } =
    [
        .. from multiple in new[] { 1.5, 2 }
           from df in new double[] { 9, 19, double.PositiveInfinity }
           select Case(multiple, df),
    ];

    private static RateCase Case(double multiple, double df)
    {
        var rule = new ErrorMultipleRule { Level = 0.95, Multiple = multiple, DegreesOfFreedom = df };
        var rate = rule.LargestFalseFlagRate;
        return new(FormattableString.Invariant($"{multiple} typical errors, {RateLabels.Degrees(df)}"), rate, random => IsClear(rule, df, random), rate);
    }

    private static bool IsClear(ErrorMultipleRule rule, double df, RandomNumbers random)
    {
        var draw = ChangeDraw.Draw(new(df, Worthwhile, 1, ErrorKind.Normal), random);
        return rule.Judge(IndividualChange.Between(draw.Before, draw.Unchanged, draw.TypicalError, df), Worthwhile).IsClear();
    }
}
