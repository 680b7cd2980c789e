using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.TestingDay;

/// <summary>Plain words for the sentences of the report.</summary>
internal static partial class Words
{
    private static readonly string[] Small = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];

    /// <summary>How a coach says the measure in the middle of a sentence.</summary>
    public static string Short(Metric metric) => metric.Id switch
    {
        "back_squat_1rm" => "squat",
        "bench_press_1rm" => "bench press",
        "power_clean_1rm" => "power clean",
        "cmj_height" => "jump height",
        "sj_height" => "squat jump",
        "standing_long_jump" => "long jump",
        "sprint_10yd" => "10-yard time",
        "sprint_20yd" => "20-yard time",
        "sprint_10m" => "10-metre time",
        "sprint_20m" => "20-metre time",
        "drop_jump_rsi" => "drop jump RSI",
        "hurdle_rsi" => "hurdle RSI",
        "momentum_10yd" => "momentum at 10 yards",
        _ => metric.Label.Length > 1 && char.IsLower(metric.Label[1]) ? char.ToLowerInvariant(metric.Label[0]) + metric.Label[1..] : metric.Label,
    };

    /// <summary>Head of a table column; the whole label stands in the methods.</summary>
    public static string Head(Metric metric) => metric.Id switch
    {
        "body_mass" => "Body mass",
        "back_squat_1rm" => "Squat 1RM",
        "back_squat_relative" => "Squat per mass",
        "bench_press_1rm" => "Bench 1RM",
        "power_clean_1rm" => "Clean 1RM",
        "cmj_height" => "Jump height",
        "cmj_peak_power" => "Jump peak power",
        "drop_jump_rsi" => "Drop jump RSI",
        "hurdle_rsi" => "Hurdle RSI",
        "standing_long_jump" => "Long jump",
        "throw_overhead_back" => "Overhead throw",
        "acceleration_time_constant" => "Time constant",
        "momentum_10yd" => "Momentum, 10 yd",
        "pro_agility" => "5-10-5",
        _ => metric.Label.EndsWith(" sprint", StringComparison.Ordinal) ? metric.Label[..^7] : metric.Label,
    };

    public static string Name(Quality quality) => quality switch
    {
        Quality.MaximalStrength => "maximal strength",
        Quality.ExplosivePower => "explosive power",
        Quality.ReactiveAbility => "reactive ability",
        Quality.Acceleration => "early acceleration",
        Quality.MaximalSpeed => "top speed",
        Quality.ChangeOfDirection => "change of direction",
        Quality.UpperBodyPower => "upper-body power",
        Quality.Momentum => "momentum",
        _ => "body size",
    };

    public static string Count(int count) => count >= 0 && count < Small.Length ? Small[count] : count.ToString(CultureInfo.InvariantCulture);

    /// <summary>"nine players", "one player", "no player".</summary>
    public static string Players(int count) => $"{Count(count)} player{(count is 0 or 1 ? "" : "s")}";

    /// <summary>"58 of 60 players", "1 of 1 player".</summary>
    public static string PlayersOf(int some, int all) => string.Create(CultureInfo.InvariantCulture, $"{some} of {all} player{(all == 1 ? "" : "s")}");

    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>A sentence of the library with real minus signs before its numbers, and percent signs that stay with them.</summary>
    public static string Signs(string text) => SpacedPercent().Replace(NegativeNumber().Replace(text, Figures.Minus), "\u202F");

    /// <summary>A probability that is never called certain.</summary>
    public static string Sure(double probability) => probability > 0.99 ? "over 99\u2009%" : Figures.Percent(probability);

    /// <summary>"a", "a and b", "a, b and c".</summary>
    public static string List(IReadOnlyList<string> items) => items.Count switch
    {
        0 => "",
        1 => items[0],
        _ => string.Join(", ", items.Take(items.Count - 1)) + " and " + items[^1],
    };

    /// <summary>How many of the needs named are expected to be wrong, never rounded to none: "about 3 of the 12 may be wrong".</summary>
    public static string Wrong(double expected, int named)
        => named == 1 && expected < 0.01 ? "the chance that it is wrong is under 1\u2009%" : named == 1 ? string.Create(CultureInfo.InvariantCulture, $"the chance that it is wrong is about {100 * expected:0}\u2009%")
            : expected < 1 ? $"on average fewer than one of the {named} is wrong"
            : string.Create(CultureInfo.InvariantCulture, $"about {expected:0} of the {named} may be wrong");

    public static string Date(DateOnly date) => date.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);

    public static string ShortDate(DateOnly date) => date.ToString("d MMMM", CultureInfo.InvariantCulture);

    /// <summary>The scale a day was measured on, for a remark beside a title; empty for one scale.</summary>
    public static string Scale(string? series) => series ?? string.Empty;

    /// <summary>Keys of the sources of a metric; one on trial without any is somebody's own idea.</summary>
    public static Tables.Cell Sources(Metric metric) => metric is { IsTrial: true, Sources.Count: 0 } ? "own idea" : string.Join(", ", metric.Sources);

    public static bool LowerIsBetter(Metric metric) => metric.Better == Direction.Lower;

    public static string ErrorSource(MetricReliability reliability, string typicalError) => reliability.Source switch
    {
        Metrics.Profile.ErrorSource.None => "No error is known for this test.",
        _ => $"Typical error {typicalError}, {reliability.Basis}.",
    };

    [System.Text.RegularExpressions.GeneratedRegex(@"(?<=^|[\s(])-(?=\d)")]
    private static partial System.Text.RegularExpressions.Regex NegativeNumber();

    [System.Text.RegularExpressions.GeneratedRegex(@"(?<=\d) (?=%)")]
    private static partial System.Text.RegularExpressions.Regex SpacedPercent();
}
