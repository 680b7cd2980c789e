using Analytics.Metrics.Catalogue;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>Which measures a season report speaks about, in the order from strength to contact.</summary>
internal static class SeasonMeasures
{
    /// <summary>Fewest players with a change for a measure to be in the report; a smaller squad counts all of its own (our choice).</summary>
    private const int Fewest = 5;

    // What is worked out of a measure that is in the report, or lies between two that are: more looks at the same thing are more flags by chance.
    private static readonly HashSet<string> Aside = new(StringComparer.Ordinal)
    {
        "back_squat_relative", "cmj_peak_power", "push_off_power", "hurdle_contact", "clean_bar_power", "sprint_20yd", "sprint_20m", "acceleration_time_constant", "sprint_max_power",
        "cod_deficit", "cod_asymmetry", "cod_deficit_asymmetry", "contact_speed", "contact_momentum", "contact_shin_lean", "contact_trunk_lean", "contact_trunk_change",
    };

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
        => [.. season.Metrics.Where(m => !Aside.Contains(m.Id) && IsDoneTwice(season, m))];

    /// <summary>Whether enough players have a change.</summary>
    public static bool IsDoneTwice(SeasonContext season, Metric metric) => season.Change(metric).Athletes.Count >= FewestOf(season);

    /// <summary>The tests done by enough players, be it on one day: what a test is worth can be asked before anybody has changed.</summary>
    public static IReadOnlyList<Metric> Tested(SeasonContext season)
        => [.. season.Metrics.Where(m => !Aside.Contains(m.Id) && m.Quality != Quality.Body && IsTested(season, m))];

    /// <summary>The metrics on trial with values of enough players.</summary>
    public static IReadOnlyList<Metric> TrialsTested(SeasonContext season) => [.. season.OnTrial.Metrics.Where(m => IsTested(season, m))];

    private static bool IsTested(SeasonContext season, Metric metric)
        => season.Values(metric).Athletes.Count() >= FewestOf(season);

    private static int FewestOf(SeasonContext season) => Math.Clamp(season.Squad.Count, 1, Fewest);

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
