using System.Globalization;
using System.Runtime.CompilerServices;

namespace Analytics.Simulation.Tests;

/// <summary>A study of docs as it is committed, and the rows of its tables.</summary>
internal sealed class CommittedStudy(string file)
{
    public string Text { get; } = File.ReadAllText(InRepository("docs/" + file));

    /// <summary>Finds a file of the repository from the place of this source file.</summary>
    public static string InRepository(string path) => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Here())!, "../..", path));

    /// <summary>Cells of the tables under a heading, without heads and rules of the tables.</summary>
    public List<string[]> Rows(string heading)
    {
        var from = Text.IndexOf(heading, StringComparison.Ordinal);
        Assert.True(from >= 0, heading);
        var to = Text.IndexOf("\n## ", from, StringComparison.Ordinal);
        List<string[]> lines = [.. Text[from..(to < 0 ? Text.Length : to)].Split('\n').Where(l => l.StartsWith("| ", StringComparison.Ordinal)).Select(l => l.Trim('|', ' ').Split(" | "))];
        return [.. lines.Where((_, i) => !IsRule(i) && !IsRule(i + 1))];

        bool IsRule(int i) => i < lines.Count && lines[i][0] == "---";
    }

    /// <summary>The number a cell begins with.</summary>
    public static double Number(string cell) => double.Parse(cell.Split(' ')[0], CultureInfo.InvariantCulture);

    private static string Here([CallerFilePath] string path = "") => path;
}
