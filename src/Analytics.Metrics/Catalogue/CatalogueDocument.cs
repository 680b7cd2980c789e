using System.Globalization;
using System.Text;

namespace Analytics.Metrics.Catalogue;

/// <summary>The catalogue as a page to read: docs/metrics.md is this text.</summary>
public static class CatalogueDocument
{
    /// <summary>The page for the whole catalogue, Markdown, line feeds, invariant numbers.</summary>
    public static string Write() => Write(MetricCatalogue.All);

    /// <summary>The page for some metrics.</summary>
    /// <param name="metrics">In the order they shall stand.</param>
    public static string Write(IEnumerable<Metric> metrics)
    {
        var all = metrics.ToList();
        var text = new StringBuilder();
        Line(text, "# Metrics\n");
        Line(text, "Written from the catalogue in `src/Analytics.Metrics`; change the code, then rewrite this page with");
        Line(text, "`METRICS_PAGE=write dotnet test tests/Analytics.Metrics.Tests --filter CatalogueDocument`.\n");
        Line(text, "A value is never compared across series (method, ball, box, timing). \"No error known\" means that no study and no");
        Line(text, "retest stands behind the number. Source keys are in [references.md](references.md).\n");
        Line(text, "| metric | id | unit | better | value of the day | quality |");
        Line(text, "|---|---|---|---|---|---|");
        foreach (var m in all)
            Line(text, $"| {Cell(m.Label)} | `{m.Id}` | {Cell(m.Unit)} | {Words(m.Better)} | {Words(m.Rule)} | {Words(m.Quality)} |");
        foreach (var m in all) Section(text, m);
        return text.ToString();
    }

    /// <summary>A quality in words.</summary>
    /// <param name="quality">The quality.</param>
    public static string Words(Quality quality) => quality switch
    {
        Quality.Body => "body size",
        Quality.MaximalStrength => "maximal strength",
        Quality.ExplosivePower => "explosive power",
        Quality.ReactiveAbility => "reactive ability",
        Quality.Acceleration => "early acceleration",
        Quality.MaximalSpeed => "maximal speed",
        Quality.Momentum => "momentum",
        Quality.ChangeOfDirection => "change of direction",
        Quality.UpperBodyPower => "upper-body power",
        _ => throw new ArgumentOutOfRangeException(nameof(quality), quality, "A quality without words; add it here."),
    };

    private static void Section(StringBuilder text, Metric m)
    {
        Line(text, $"\n## {m.Label}\n");
        Line(text, $"{m.Meaning}\n");
        Line(text, $"- Formula: {m.Formula}.");
        Line(text, $"- Value of the day: {Words(m.Rule)}.{(m.RuleReason.Length > 0 ? " " + m.RuleReason : "")}");
        Line(text, $"- Plausible: {Number(m.PlausibleLow)} to {Number(m.PlausibleHigh)}{(m.Unit == "1" ? "" : " " + m.Unit)}. Decimals shown: {m.Decimals}.");
        Line(text, $"- Typical error when the season has no retest: {Words(m.PublishedError, m.Unit)}.");
        Line(text, $"- Sources: {(m.Sources.Count > 0 ? string.Join(", ", m.Sources) : "common practice, no source")}.");
    }

    private static string Words(PublishedError? error, string unit) => error switch
    {
        null => "no error known",
        { Percent: { } percent } => $"{Number(percent)} % ({error.SourceKey})",
        { Absolute: { } absolute } => $"{Number(absolute)} {unit} ({error.SourceKey})",
        _ => throw new ArgumentException($"The published error of {error.SourceKey} has neither a percentage nor an absolute figure.", nameof(error)),
    };

    private static string Words(Direction better) => better switch
    {
        Direction.Higher => "higher",
        Direction.Lower => "lower",
        _ => "neither",
    };

    private static string Words(TrialRule rule) => rule == TrialRule.Best ? "best attempt" : "mean of the attempts";

    private static string Number(double x) => x.ToString("0.####", CultureInfo.InvariantCulture);

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');
}
