using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Season.Intake;
using Analytics.Season.Trials;

namespace Analytics.Season.Checks;

/// <summary>The values of a trial that could have been typed in a wrong unit. The ratios are common practice, no source.</summary>
internal static class Measures
{
    private static readonly MeasureRule Body = new(BodyTable.BodyMass, bestOfDay: false, new(1.35, 1.2), new(1.6, 1.4));
    private static readonly MeasureRule Load = new(LiftsTable.Load, bestOfDay: true, new(1.6, 1.35), new(1.9, 1.35));
    private static readonly MeasureRule Height = new(JumpsTable.Height, bestOfDay: false, new(1.6, 1.35), new(1.9, 1.35));
    private static readonly MeasureRule LongJump = new(JumpsTable.Distance, bestOfDay: false, new(1.6, 1.3), new(1.9, 1.3));
    private static readonly MeasureRule Throw = new(ThrowsTable.Distance, bestOfDay: false, new(1.9, 1.4), new(2.2, 1.4));
    private static readonly MeasureRule Rise = new(StairsTable.Rise, bestOfDay: false, new(1.5, 1.1), new(1.5, 1.1));

    /// <summary>The measure and value of a trial; null when it has none to compare.</summary>
    public static (MeasureKey Key, double Value, double Typed)? Of(Trial trial) => trial switch
    {
        BodyMeasure body => Same(Body, "", 0, body.BodyMass.Kilograms),
        LiftSet set when set.Load.Kilograms > 0 => (new MeasureKey(Load, set.Lift, 0), Strength(set), set.Load.Kilograms),
        JumpTrial { Kind: JumpKind.StandingLong, Distance: { } distance } => Same(LongJump, "", 0, distance.Metres),
        JumpTrial { Kind: not JumpKind.StandingLong } jump => Jump(jump),
        ThrowTrial thrown => Same(Throw, thrown.Throw, (int)Math.Round(thrown.Ball.Grams), thrown.Distance.Metres),
        StairTrial stairs => Same(Rise, "", 0, stairs.Rise.Metres),
        _ => null,
    };

    private static (MeasureKey, double, double)? Same(MeasureRule rule, string test, int variant, double value) => (new MeasureKey(rule, test, variant), value, value);

    private static (MeasureKey, double, double)? Jump(JumpTrial jump)
    {
        var key = new MeasureKey(Height, "", (int)jump.Kind);
        if (jump.Height is { } height) return (key, height.Metres, height.Metres);
        // A height from flight time cannot be in a wrong unit, but it tells what heights are usual.
        return jump.FlightTime is { } flight ? (key, UnitFactors.StandardGravity * flight.Seconds * flight.Seconds / 8, double.NaN) : null;
    }

    /// <summary>Load brought to one repetition by Epley's linear rule, so that sets of different length can be compared.</summary>
    public static double Strength(LiftSet set) => set.Load.Kilograms * (1 + (set.Repetitions - 1 + (set.RepetitionsInReserve ?? 0)) / 30);
}
