using System.Globalization;

namespace Analytics.Tests;

/// <summary>A comma-separated table under tests/oracles; cells hold no commas.</summary>
internal static class OracleTable
{
    public static IReadOnlyList<OracleRow> Read(string path)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Analytics.sln")))
            folder = folder.Parent ?? throw new DirectoryNotFoundException("The tests must run inside the repository: no Analytics.sln above them.");
        var lines = File.ReadAllLines(Path.Combine(folder.FullName, "tests", "oracles", path));
        var heads = lines[0].Split(',');
        return [.. lines.Skip(1).Where(l => l.Length > 0).Select(l => new OracleRow(heads, l.Split(',')))];
    }
}

/// <summary>One row, each cell by its column head.</summary>
internal sealed record OracleRow(string[] Heads, string[] Cells)
{
    public double this[string head] => double.Parse(Text(head), NumberStyles.Float, CultureInfo.InvariantCulture);

    public string Text(string head)
    {
        var at = Array.IndexOf(Heads, head);
        return at >= 0 ? Cells[at] : throw new KeyNotFoundException($"No column '{head}'; there are: {string.Join(", ", Heads)}.");
    }
}
