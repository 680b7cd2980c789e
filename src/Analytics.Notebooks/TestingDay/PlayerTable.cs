using Analytics.Metrics.Catalogue;

namespace Analytics.Notebooks.TestingDay;

/// <summary>Which measures stand in which table of results by player.</summary>
/// <param name="Caption">Caption of the table.</param>
/// <param name="First">Identifiers of the measures that stand first, in this order.</param>
internal sealed record PlayerTable(string Caption, params IReadOnlyList<string> First)
{
    // What is worked out of a measure beside it, or lies between two of them: a table that holds everything is read by nobody.
    private static readonly HashSet<string> s_aside = new(StringComparer.Ordinal)
    {
        "push_off_power", "hurdle_contact", "clean_bar_power", "sprint_20yd", "sprint_20m", "sprint_max_power", "cod_deficit", "cod_asymmetry", "cod_deficit_asymmetry",
    };

    /// <summary>Lifts.</summary>
    public static PlayerTable Strength { get; } = new("Strength", "back_squat_1rm", "back_squat_relative", "bench_press_1rm", "power_clean_1rm");

    /// <summary>Jumps, throws and stairs.</summary>
    public static PlayerTable Jumping { get; } = new("Jumping and power",
        "cmj_height", "cmj_peak_power", "sj_height", "drop_jump_rsi", "hurdle_rsi", "standing_long_jump", "throw_overhead_back", "throw_seated_chest", "throw_standing_chest", "stair_power");

    /// <summary>Sprints, momentum and change of direction.</summary>
    public static PlayerTable Sprinting { get; } = new("Sprint and momentum",
        "body_mass", "sprint_10yd", "sprint_10m", "sprint_40yd", "sprint_40m", "max_speed", "acceleration_time_constant", "momentum_10yd", "pro_agility", "agility_505");

    /// <summary>Filmed contact.</summary>
    public static PlayerTable Contact { get; } = new("Contact on film", "contact_time", "contact_shin_lean", "contact_trunk_lean", "contact_speed", "contact_momentum", "contact_trunk_change");

    /// <summary>Metrics on trial, whatever they measure.</summary>
    public static PlayerTable OnTrial { get; } = new("Trial metrics, not reviewed");

    private static IReadOnlyList<PlayerTable> Listed { get; } = [Strength, Jumping, Sprinting, Contact];

    /// <summary>The table a measure stands in; null for those left aside. One that is in no list stands behind those of its quality.</summary>
    public static PlayerTable? Of(Metric metric)
        => metric.IsTrial ? OnTrial
            : Listed.FirstOrDefault(t => t.First.Contains(metric.Id))
            ?? (s_aside.Contains(metric.Id) ? null
                : metric.Id.StartsWith("contact_", StringComparison.Ordinal) ? Contact
                : metric.Quality switch
                {
                    Quality.MaximalStrength => Strength,
                    Quality.ExplosivePower or Quality.ReactiveAbility or Quality.UpperBodyPower => Jumping,
                    _ => Sprinting,
                });

    /// <summary>Its measures among those of a report, in the order of the columns.</summary>
    public IReadOnlyList<Metric> Columns(IReadOnlyList<Metric> metrics)
        => [.. First.Select(id => metrics.FirstOrDefault(m => m.Id == id)).OfType<Metric>(), .. metrics.Where(m => !First.Contains(m.Id) && Of(m) == this)];
}
