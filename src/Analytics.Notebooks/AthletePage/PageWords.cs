using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.AthletePage;

/// <summary>Words of the page.</summary>
internal static class PageWords
{
    /// <summary>A day of the page's year without the year.</summary>
    public static string Day(DateOnly day, DateOnly today) => day.Year == today.Year ? Words.ShortDate(day) : Words.Date(day);

    public static string Lift(string lift) => Words.Capital(lift.Replace('_', ' '));

    /// <summary>"5 × 5 at 315 lb".</summary>
    public static string Set(PlannedSet set, LoadUnit bar)
        => set.Load <= 0 ? Figures.Missing : string.Create(CultureInfo.InvariantCulture, $"{set.Scheme.Sets}\u00A0\u00D7\u00A0{set.Scheme.Repetitions} at {bar.Text(set.Load)}");

    /// <summary>Why a quality matters at contact, in one sentence (common practice, no source).</summary>
    public static string Why(Quality quality) => quality switch
    {
        Quality.MaximalStrength => "Strength is what power, speed and a stiff trunk at contact are built on.",
        Quality.ExplosivePower => "Power is strength used in the short time a drive or a jump leaves you.",
        Quality.ReactiveAbility => "Short, springy ground contacts let you keep speed when you change step.",
        Quality.Acceleration => "Whoever is faster over the first yards chooses where contact happens.",
        Quality.MaximalSpeed => "Top speed makes every speed below it cheaper.",
        Quality.ChangeOfDirection => "Braking and turning well puts you in front of the other player.",
        Quality.UpperBodyPower => "A fast, strong punch of the arms wins hands and space.",
        _ => "",
    };

    /// <summary>Name of a test in a sentence.</summary>
    public static string Short(Metric metric) => metric.Id == "pro_agility" ? "5-10-5 time" : Words.Short(metric);

    /// <summary>Name of a test in a row.</summary>
    public static string Row(Metric metric) => metric.Id switch
    {
        "bench_press_1rm" => "Bench press 1RM",
        "power_clean_1rm" => "Power clean 1RM",
        "momentum_10yd" => "Momentum, 10 yd",
        _ => metric.Id.StartsWith("sprint_", StringComparison.Ordinal) ? metric.Label : Words.Head(metric),
    };
}
