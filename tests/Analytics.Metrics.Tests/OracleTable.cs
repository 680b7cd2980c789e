using System.Globalization;

namespace Analytics.Metrics.Tests;

/// <summary>A comma-separated table under tests/oracles.</summary>
internal static class OracleTable
{
    /// <summary>The rows, each by column head.</summary>
    /// <param name="path">Path under tests/oracles, for example <c>jumping/power.csv</c>.</param>
    public static IReadOnlyList<OracleRow> Read(string path)
    {
        var lines = File.ReadAllLines(Repository.Path("tests", "oracles", path));
        var heads = lines[0].Split(',');
        return [.. lines.Skip(1).Where(l => l.Length > 0).Select(l => new OracleRow(heads, l.Split(',')))];
    }
}

/// <summary>One row of an oracle table; cells hold no commas.</summary>
internal sealed record OracleRow(string[] Heads, string[] Cells)
{
    public double this[string head] => double.Parse(Text(head), NumberStyles.Float, CultureInfo.InvariantCulture);

    public string Text(string head)
    {
        var at = Array.IndexOf(Heads, head);
        return at >= 0 ? Cells[at].Trim('"') : throw new KeyNotFoundException($"No column '{head}'; there are: {string.Join(", ", Heads)}.");
    }
}
