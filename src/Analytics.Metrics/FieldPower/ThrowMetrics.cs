using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.FieldPower;

/// <summary>One metric for each kind of medicine-ball throw; the mass of the ball is part of the series.</summary>
/// <remarks>Published typical errors are of throws minutes apart (0.10 m in [duncan2005]), too small to judge a change over weeks, so none is carried.</remarks>
public static class ThrowMetrics
{
    /// <summary>Overhead throw backward.</summary>
    public static Metric OverheadBack { get; } = Throw("overhead_back", "Overhead back throw", Quality.ExplosivePower,
        "How far a ball flies backward over the head; legs, hips and trunk in one drive.") with
    {
        Sources = ["duncan2005"],
    };

    /// <summary>Chest throw, seated.</summary>
    public static Metric SeatedChest { get; } = Throw("seated_chest", "Seated chest throw", Quality.UpperBodyPower,
        "How far a ball flies from the chest with the legs taken out; upper-body push power.") with
    {
        Sources = ["beckham2019", "vandentillaar2013"],
    };

    /// <summary>Chest throw, standing.</summary>
    public static Metric StandingChest { get; } = Throw("standing_chest", "Standing chest throw", Quality.UpperBodyPower,
        "How far a ball flies from the chest with the legs helping; the push of contact, whole body.");

    /// <summary>Rotational throw, each side its own series.</summary>
    public static Metric Rotational { get; } = Throw("rotational", "Rotational throw", Quality.UpperBodyPower,
        "How far a ball flies from a turn of hips and trunk; each side stands alone.");

    /// <summary>All throw metrics, in report order.</summary>
    public static IReadOnlyList<Metric> All { get; } = [OverheadBack, SeatedChest, StandingChest, Rotational];

    private static Metric Throw(string kind, string label, Quality quality, string meaning) => new()
    {
        Id = $"throw_{kind}",
        Label = label,
        Unit = "m",
        Decimals = 2,
        Better = Direction.Higher,
        Quality = quality,
        Rule = TrialRule.Best,
        RuleReason = "A distance test judged by its best mark; practice throws come first, as distances rise over the first five or six.",
        FromTrials = day => day.Of<ThrowTrial>().Where(t => t.Throw == kind).Select(t => new TrialValue(t.Distance.Metres, Series: Series(t))),
        PlausibleLow = 1,
        PlausibleHigh = 25,
        Meaning = meaning,
        Formula = "d [m], line to first landing; each ball mass is its own series",
        Sources = [],
    };

    internal static string Series(ThrowTrial t)
    {
        var ball = string.Create(CultureInfo.InvariantCulture, $"{t.Ball.Kilograms:0.##} kg");
        return t.Side switch { Side.Left => $"{ball}, left", Side.Right => $"{ball}, right", _ => ball };
    }
}
