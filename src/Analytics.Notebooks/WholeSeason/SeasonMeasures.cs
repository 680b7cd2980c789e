using Analytics.Metrics.Catalogue;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>Which measures a season report speaks about, in the order from strength to contact.</summary>
internal static class SeasonMeasures
{
    /// <summary>Fewest players with a change for a measure to be in the report; a smaller squad counts all of its own.</summary>
    private const int Fewest = 5;

    private static readonly string[] Order =
    [
        "body_mass", "back_squat_1rm", "bench_press_1rm", "power_clean_1rm", "cmj_height", "standing_long_jump", "drop_jump_rsi", "hurdle_rsi",
        "throw_overhead_back", "throw_seated_chest", "throw_standing_chest",
        "sprint_10yd", "sprint_10m", "sprint_40yd", "sprint_40m", "max_speed", "momentum_10yd", "pro_agility", "agility_505", "contact_time",
    ];

    // One of each link of the chain from strength to contact.
    private static readonly string[][] Links =
    [
        ["back_squat_1rm", "bench_press_1rm"],
        ["power_clean_1rm", "bench_press_1rm"],
        ["cmj_height", "standing_long_jump", "drop_jump_rsi"],
        ["sprint_10yd", "sprint_10m", "sprint_40yd", "sprint_40m"],
        ["max_speed", "pro_agility", "agility_505"],
        ["momentum_10yd"],
    ];

    /// <summary>The measures with a change of enough players.</summary>
    public static IReadOnlyList<Metric> Of(SeasonContext season)
    {
        var fewest = Math.Clamp(season.Squad.Count, 1, Fewest);
        return [.. Order.Select(id => season.Metrics.FirstOrDefault(m => m.Id == id)).OfType<Metric>().Where(m => season.Change(m).Athletes.Count >= fewest)];
    }

    /// <summary>What is trained and tested under a roof: lifts, jumps, throws.</summary>
    public static IReadOnlyList<Metric> WeightRoom(IReadOnlyList<Metric> measures)
        => [.. measures.Where(m => m.Quality is Quality.MaximalStrength or Quality.ExplosivePower or Quality.ReactiveAbility or Quality.UpperBodyPower)];

    /// <summary>What is done on the field: sprints, turns, momentum, contact.</summary>
    public static IReadOnlyList<Metric> Field(IReadOnlyList<Metric> measures)
        => [.. measures.Where(m => m.Quality is Quality.Acceleration or Quality.MaximalSpeed or Quality.Momentum or Quality.ChangeOfDirection)];

    /// <summary>The first of each link that is there.</summary>
    public static IReadOnlyList<Metric> Headlines(IReadOnlyList<Metric> measures)
        => [.. Links.Select(link => link.Select(id => measures.FirstOrDefault(m => m.Id == id)).FirstOrDefault(m => m is not null)).OfType<Metric>().DistinctBy(m => m.Id)];
}
