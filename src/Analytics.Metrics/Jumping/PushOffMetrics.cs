using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Jumping;

/// <summary>Metrics of the push-off of a vertical jump whose push-off distance was measured.</summary>
public static class PushOffMetrics
{
    // Power per body mass needs no body mass: it cancels. PushOff asks for one all the same.
    private static readonly Mass AnyMass = Mass.FromKilograms(1);

    /// <summary>Mean push-off power per body mass; see <see cref="PushOff"/>.</summary>
    public static Metric MeanPower { get; } = new()
    {
        Id = "push_off_power",
        Label = "Push-off mean power",
        Unit = "W/kg",
        Decimals = 1,
        Better = Direction.Higher,
        Quality = Quality.ExplosivePower,
        Rule = TrialRule.Best,
        RuleReason = "It rises with jump height alone once the push-off distance is fixed, so it follows the best jump.",
        FromTrials = day => day.Of<JumpTrial>().Select(Value).OfType<TrialValue>(),
        PlausibleLow = 5,
        PlausibleHigh = 60,
        Meaning = "Mean power of the push-off per body mass; a mean, never to be set beside peak power.",
        Formula = "P/m [W/kg] = g·(h/d + 1)·√(g·h/2); h jump height [m], d push-off distance [m], g = 9.81 m/s²; squat and countermovement jumps are series of their own",
        Sources = ["samozino2008"],
    };

    private static TrialValue? Value(JumpTrial jump)
    {
        if (jump.Kind is not (JumpKind.Squat or JumpKind.Countermovement)) return null;
        if (jump.PushOffDistance is not { } distance || distance <= Length.Zero || JumpReading.From(jump) is not { } reading) return null;
        var kind = jump.Kind == JumpKind.Squat ? "squat jump" : "countermovement jump";
        return new(PushOff.From(AnyMass, reading.Height, distance).MeanPowerPerMass.WattsPerKilogram, Series: $"{kind}, {reading.Series}", Doubt: reading.Doubt);
    }
}
