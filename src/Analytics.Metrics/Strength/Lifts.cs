namespace Analytics.Metrics.Strength;

/// <summary>Identifiers of the lifts this library treats by name, as written in a season's <c>lift</c> column.</summary>
public static class Lifts
{
    /// <summary>Back squat.</summary>
    public const string BackSquat = "back_squat";

    /// <summary>Bench press.</summary>
    public const string BenchPress = "bench_press";

    /// <summary>Power clean.</summary>
    public const string PowerClean = "power_clean";

    /// <summary>Plate-loaded leg press.</summary>
    public const string LegPress = "leg_press";
}
