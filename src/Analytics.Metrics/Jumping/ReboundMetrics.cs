using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Jumping;

/// <summary>Metrics of jumps that rebound from the ground: drop and hurdle jumps.</summary>
public static class ReboundMetrics
{
    private const string MeanOfRatio = "A ratio of two short times: the best of several picks the luckiest reading, the mean does not.";

    /// <summary>Reactive strength index of a drop jump.</summary>
    public static Metric DropReactiveStrength { get; } = Index(JumpKind.Drop) with
    {
        Id = "drop_jump_rsi",
        Label = "Drop jump reactive strength index",
        Meaning = "Jump height won for each second on the ground after a drop; how well the legs work as a spring.",
    };

    /// <summary>Reactive strength index of a hurdle rebound.</summary>
    public static Metric HurdleReactiveStrength { get; } = Index(JumpKind.Hurdle) with
    {
        Id = "hurdle_rsi",
        Label = "Hurdle rebound reactive strength index",
        Meaning = "Jump height won for each second on the ground between hurdles; tucked legs flatter it.",
    };

    /// <summary>Ground contact time between hurdles.</summary>
    public static Metric HurdleContact { get; } = new()
    {
        Id = "hurdle_contact",
        Label = "Hurdle rebound contact time",
        Unit = "s",
        Decimals = 3,
        Better = Direction.Lower,
        Quality = Quality.ReactiveAbility,
        Rule = TrialRule.Mean,
        RuleReason = "A series of rebounds is judged as a whole; the shortest single contact may be a cut corner.",
        FromTrials = day => Rebounds(day, JumpKind.Hurdle).Select(j => new TrialValue(j.ContactTime!.Value.Seconds, Series: Series(j))),
        PlausibleLow = 0.08,
        PlausibleHigh = 0.6,
        Meaning = "Time on the ground between hurdles of one height; short means stiff and quick off the ground.",
        Formula = "t [s], read from the device; each method and hurdle height is its own series",
        Sources = ["flanagan2008"],
    };

    private static Metric Index(JumpKind kind) => new()
    {
        Id = "",
        Label = "",
        Unit = "m/s",
        Decimals = 2,
        Better = Direction.Higher,
        Quality = Quality.ReactiveAbility,
        Rule = TrialRule.Mean,
        RuleReason = MeanOfRatio,
        FromTrials = day => Rebounds(day, kind).Select(Value).OfType<TrialValue>(),
        PlausibleLow = 0.2,
        PlausibleHigh = 4.5,
        Meaning = "",
        Formula = "RSI [m/s] = h [m] / t [s]; h jump height (or g·t²/8 of the flight time), t contact time; not the flight : contact ratio",
        Sources = ["flanagan2008"],
    };

    private static IEnumerable<JumpTrial> Rebounds(AthleteDay day, JumpKind kind)
        => day.Of<JumpTrial>().Where(j => j.Kind == kind && j.ContactTime > Duration.Zero);

    private static TrialValue? Value(JumpTrial jump)
    {
        if (JumpReading.From(jump) is not { } reading) return null;
        var contact = jump.ContactTime!.Value;
        var slow = contact < ReactiveStrength.FastContactLimit ? null
            : string.Create(CultureInfo.InvariantCulture, $"contact {contact.Seconds:0.000} s: too long for fast stretch-shortening work");
        return new(ReactiveStrength.Index(reading.Height, contact).MetresPerSecond, Series: Series(jump, reading.Series),
            Doubt: slow is null ? reading.Doubt : reading.Doubt is null ? slow : $"{reading.Doubt}; {slow}");
    }

    // Box and hurdle height change the task, so each height is its own scale.
    internal static string Series(JumpTrial jump, string? scale = null)
    {
        var obstacle = jump.Kind == JumpKind.Drop ? "box" : "hurdle";
        var height = jump.ObstacleHeight is { } h ? string.Create(CultureInfo.InvariantCulture, $"{h.Centimetres:0} cm") : "height not noted";
        return $"{scale ?? JumpReading.Name(jump.Method)}, {obstacle} {height}";
    }
}
