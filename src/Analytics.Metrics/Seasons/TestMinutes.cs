using Analytics.Metrics.Catalogue;

namespace Analytics.Metrics.Seasons;

/// <summary>What a test costs in squad time.</summary>
/// <param name="Test">The test in trade words.</param>
/// <param name="MinutesPerAthlete">Minutes of one station per athlete, attempts and changing places included; 0 when the metric is worked out of another test.</param>
/// <param name="Basis">Where the figure is from, in words a report can print.</param>
/// <param name="IsDerived">Whether the metric is worked out of another test and costs nothing more.</param>
public sealed record TestCost(string Test, double MinutesPerAthlete, string Basis, bool IsDerived)
{
    /// <summary>Minutes a testing day gives to it with one station.</summary>
    /// <param name="athletes">Athletes tested.</param>
    public double MinutesFor(int athletes) => athletes * MinutesPerAthlete;
}

/// <summary>Usual minutes per athlete at one station: common practice, no source. A season may set its own.</summary>
public static class TestMinutes
{
    /// <summary>What stands behind the usual figures.</summary>
    public const string UsualBasis = "common practice, no source";

    private static readonly Dictionary<string, (string Test, double Minutes)> s_usual = new(StringComparer.Ordinal)
    {
        ["body_mass"] = ("body mass on a scale", 0.5),
        ["back_squat_1rm"] = ("back squat, warm-up sets shared", 6),
        ["bench_press_1rm"] = ("bench press, warm-up sets shared", 5),
        ["power_clean_1rm"] = ("power clean, warm-up sets shared", 6),
        ["cmj_height"] = ("countermovement jump, 3 attempts", 1.5),
        ["sj_height"] = ("squat jump, 3 attempts", 1.5),
        ["drop_jump_rsi"] = ("drop jump, 3 attempts", 2),
        ["hurdle_rsi"] = ("hurdle rebounds, 2 attempts", 2),
        ["standing_long_jump"] = ("standing long jump, 3 attempts", 1.5),
        ["throw_overhead_back"] = ("overhead back throw, 3 attempts", 1.5),
        ["throw_seated_chest"] = ("seated chest throw, 3 attempts", 1.5),
        ["throw_standing_chest"] = ("standing chest throw, 3 attempts", 1.5),
        ["throw_rotational"] = ("rotational throw, 3 attempts a side", 2.5),
        ["stair_power"] = ("stair run, 2 attempts", 1.5),
        ["clean_bar_power"] = ("clean on film, 2 attempts", 3),
        ["sprint_40yd"] = ("sprint through gates, 2 attempts", 2),
        ["sprint_40m"] = ("sprint through gates, 2 attempts", 2),
        ["pro_agility"] = ("pro agility, 2 attempts", 2),
        ["three_cone"] = ("three-cone drill, 2 attempts", 2),
        ["agility_505"] = ("505, 2 attempts a side", 3),
        ["contact_time"] = ("contact drill on film, 2 attempts", 4),
    };

    private static readonly Dictionary<string, string> s_derived = new(StringComparer.Ordinal)
    {
        ["back_squat_relative"] = "back squat and body mass",
        ["cmj_peak_power"] = "countermovement jump and body mass",
        ["push_off_power"] = "countermovement jump and body mass",
        ["hurdle_contact"] = "hurdle rebounds",
        ["sprint_10yd"] = "sprint through gates", ["sprint_20yd"] = "sprint through gates",
        ["sprint_10m"] = "sprint through gates", ["sprint_20m"] = "sprint through gates",
        ["max_speed"] = "sprint through gates",
        ["acceleration_time_constant"] = "sprint through gates",
        ["momentum_10yd"] = "sprint through gates and body mass",
        ["sprint_max_power"] = "sprint through gates and body mass",
        ["cod_deficit"] = "505 and sprint", ["cod_asymmetry"] = "505", ["cod_deficit_asymmetry"] = "505 and sprint",
        ["contact_speed"] = "contact drill on film", ["contact_momentum"] = "contact drill on film and body mass",
        ["contact_shin_lean"] = "contact drill on film", ["contact_trunk_lean"] = "contact drill on film", ["contact_trunk_change"] = "contact drill on film",
    };

    /// <summary>Cost of a metric; null when nothing is known and the season sets nothing.</summary>
    /// <param name="metricId">Identifier in the catalogue.</param>
    /// <param name="own">Minutes per athlete set by the season, by metric; may be empty.</param>
    public static TestCost? Of(string metricId, IReadOnlyDictionary<string, double> own)
    {
        ArgumentNullException.ThrowIfNull(metricId);
        ArgumentNullException.ThrowIfNull(own);
        var usual = s_usual.TryGetValue(metricId, out var found) ? found : ((string Test, double Minutes)?)null;
        var added = AddedMetrics.Entries.FirstOrDefault(e => e.Metric.Id == metricId);
        if (own.TryGetValue(metricId, out var minutes)) return new(usual?.Test ?? s_derived.GetValueOrDefault(metricId) ?? added?.Test ?? metricId, minutes, "set in season.json", IsDerived: false);
        if (usual is { } u) return new(u.Test, u.Minutes, UsualBasis, IsDerived: false);
        if (added is not null) return Of(added);
        return s_derived.TryGetValue(metricId, out var from) ? Derived(from) : null;
    }

    /// <summary>Cost of a metric that began as a sketch.</summary>
    /// <param name="added">The metric with its author's figure.</param>
    public static TestCost Of(AddedMetric added)
    {
        ArgumentNullException.ThrowIfNull(added);
        return added.Minutes > 0 ? new(added.Test, added.Minutes, "estimated by its author", IsDerived: false) : Derived(added.Test);
    }

    private static TestCost Derived(string from) => new(from, 0, "worked out of another test", IsDerived: true);
}
