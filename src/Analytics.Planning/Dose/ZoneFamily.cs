using Analytics.Planning.Exercises;

namespace Analytics.Planning.Dose;

/// <summary>Weightlifting movements that share one guide by zone, since they are nearly one movement: those that train one quality (our choice, no source).</summary>
public static class ZoneFamily
{
    /// <summary>The family in words.</summary>
    /// <param name="quality">Quality the movements train.</param>
    public static string Name(TrainedQuality quality) => quality switch
    {
        TrainedQuality.ExplosivePower => "cleans, snatches and pulls",
        TrainedQuality.UpperBodyPower => "jerks and push presses",
        _ => $"weightlifting movements for {quality.Name()}",
    };
}
