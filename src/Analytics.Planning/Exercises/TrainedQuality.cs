using Analytics.Metrics.Catalogue;

namespace Analytics.Planning.Exercises;

/// <summary>What an exercise trains, in the order in which a session does it: fresh legs first, heavy work after, the trunk last.</summary>
public enum TrainedQuality
{
    /// <summary>Early acceleration: sprints, sleds.</summary>
    Acceleration,

    /// <summary>Reactive ability: short ground contacts.</summary>
    ReactiveAbility,

    /// <summary>Explosive power: weightlifting movements, loaded jumps.</summary>
    ExplosivePower,

    /// <summary>Upper-body power: throws, jerks, fast presses.</summary>
    UpperBodyPower,

    /// <summary>Maximal strength.</summary>
    MaximalStrength,

    /// <summary>Control of the trunk and neck.</summary>
    TrunkControl,
}

/// <summary>Words and order of the qualities.</summary>
public static class TrainedQualities
{
    /// <summary>All of them, in session order.</summary>
    public static IReadOnlyList<TrainedQuality> All { get; } = Enum.GetValues<TrainedQuality>();

    /// <summary>In words, lower case.</summary>
    /// <param name="quality">The quality.</param>
    public static string Name(this TrainedQuality quality) => quality switch
    {
        TrainedQuality.Acceleration => "acceleration",
        TrainedQuality.ReactiveAbility => "reactive ability",
        TrainedQuality.ExplosivePower => "explosive power",
        TrainedQuality.UpperBodyPower => "upper-body power",
        TrainedQuality.MaximalStrength => "maximal strength",
        TrainedQuality.TrunkControl => "trunk control",
        _ => throw new ArgumentOutOfRangeException(nameof(quality), quality, "Unknown quality."),
    };

    /// <summary>As written in a file: <c>maximal_strength</c>.</summary>
    /// <param name="quality">The quality.</param>
    public static string Id(this TrainedQuality quality) => quality.Name().Replace(' ', '_').Replace('-', '_');

    /// <summary>Part of a session: 0 jumps and sprints, 1 power, 2 strength, 3 the rest [baechle2008; order from memory].</summary>
    /// <param name="quality">The quality.</param>
    public static int PartOfSession(this TrainedQuality quality) => quality switch
    {
        TrainedQuality.Acceleration or TrainedQuality.ReactiveAbility => 0,
        TrainedQuality.ExplosivePower or TrainedQuality.UpperBodyPower => 1,
        TrainedQuality.MaximalStrength => 2,
        _ => 3,
    };

    /// <summary>The trained quality that a tested one asks for; null for body size and momentum, which are not trained as one quality.</summary>
    /// <remarks>Top speed and change of direction are trained here as acceleration: sprints and sleds (our choice, no source).</remarks>
    /// <param name="tested">Quality of a metric.</param>
    public static TrainedQuality? ServedBy(Quality tested) => tested switch
    {
        Quality.MaximalStrength => TrainedQuality.MaximalStrength,
        Quality.ExplosivePower => TrainedQuality.ExplosivePower,
        Quality.ReactiveAbility => TrainedQuality.ReactiveAbility,
        Quality.Acceleration or Quality.MaximalSpeed or Quality.ChangeOfDirection => TrainedQuality.Acceleration,
        Quality.UpperBodyPower => TrainedQuality.UpperBodyPower,
        _ => null,
    };
}
