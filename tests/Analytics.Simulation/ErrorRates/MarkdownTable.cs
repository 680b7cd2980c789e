using System.Globalization;
using System.Text;

namespace Analytics.Simulation.ErrorRates;

/// <summary>A Markdown table, and how its cells are written.</summary>
public sealed class MarkdownTable(params string[] heads)
{
    private readonly List<string[]> _rows = [];

    public MarkdownTable Row(params string[] cells)
    {
        if (cells.Length != heads.Length) throw new ArgumentException($"{cells.Length} cells under {heads.Length} heads.", nameof(cells));
        _rows.Add(cells);
        return this;
    }

    /// <summary>Rate in percent with its Monte Carlo standard error.</summary>
    public static string Percent(Tally tally) => tally.Seasons < 2
        ? "none"
        : string.Create(CultureInfo.InvariantCulture, $"{100 * tally.Rate:0.0} ({100 * tally.MonteCarloError:0.0})");

    /// <summary>A coverage with a mark when it lies outside 93 to 97 % by more than two Monte Carlo errors.</summary>
    public static string Coverage(Tally tally)
    {
        if (tally.Seasons < 2) return "none";
        var margin = 2 * tally.MonteCarloError;
        var mark = tally.Rate < 0.93 - margin ? " low" : tally.Rate > 0.97 + margin ? " high" : "";
        return Percent(tally) + mark;
    }

    public static string Count(Tally tally) => tally.Asked.ToString("N0", CultureInfo.InvariantCulture);

    public static string Number(double value, int decimals) => value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    /// <summary>Mean and SD of misses.</summary>
    public static string Miss(double mean, double spread) => string.Create(CultureInfo.InvariantCulture, $"{mean:0.000} ({spread:0.000})");

    public override string ToString()
    {
        var text = new StringBuilder();
        Line(text, heads);
        Line(text, [.. heads.Select((_, i) => i == 0 ? "---" : "---:")]);
        foreach (var row in _rows) Line(text, row);
        return text.ToString();
    }

    private static void Line(StringBuilder text, string[] cells) => text.Append("| ").AppendJoin(" | ", cells).Append(" |\n");
}
