using System.Text.RegularExpressions;
using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Files;

namespace Analytics.Season.Clips;

/// <summary>A marker of a wide file.</summary>
/// <param name="Name">Its name in lower case with underscores.</param>
/// <param name="X">Column of x.</param>
/// <param name="Y">Column of y.</param>
internal sealed record WideMarker(string Name, NumberColumn X, NumberColumn Y);

/// <summary>Reads the head of a wide file of points: <c>hip_x_px</c>, <c>hip_y_px</c>.</summary>
internal static partial class WideHead
{
    /// <summary>What makes the head unusable; null when it can be used.</summary>
    /// <param name="heads">Heads in lower case with underscores.</param>
    public static InputFault? Fault(IReadOnlyList<string> heads)
    {
        if (heads.FirstOrDefault(h => OtherUnit().IsMatch(h)) is { } unit)
            return new InputFault($"the column '{CellText.Show(unit)}' is not in pixels.", "Write points in pixels of the picture, such as hip_x_px and hip_y_px; metres come from the calibration length.", unit);
        if (heads.FirstOrDefault(h => NoUnit().IsMatch(h)) is { } bare)
            return new InputFault($"the column '{CellText.Show(bare)}' does not say its unit.", $"Points are in pixels; name it {CellText.Show(bare)}_px.", bare);
        var found = heads.Select(h => Pixels().Match(h)).Where(m => m.Success).GroupBy(m => m.Groups["m"].Value).ToList();
        if (found.Count is 0)
            return new InputFault($"the head is neither frame, marker, x_px, y_px nor frame, hip_x_px, hip_y_px and so on; it has: {string.Join(", ", heads.Where(h => h.Length > 0).Take(12).Select(CellText.Show))}.", "Name the columns in one of these two ways, or check that the first line is the head.");
        if (found.FirstOrDefault(m => m.Select(c => c.Groups["a"].Value).Distinct().Count() is 1) is not { } half) return null;
        var other = half.First().Groups["a"].Value is "x" ? "y" : "x";
        return new InputFault($"the marker '{CellText.Show(half.Key)}' has no column {CellText.Show(half.Key)}_{other}_px.", "A marker needs both coordinates; add the column, or delete the other.", half.First().Value);
    }

    /// <summary>The markers of a usable head, in order.</summary>
    public static IReadOnlyList<WideMarker> Markers(IReadOnlyList<string> heads)
        => [.. heads.Select(h => Pixels().Match(Words.Normal(h))).Where(m => m.Success).Select(m => m.Groups["m"].Value).Distinct().Select(m => new WideMarker(m, Column($"{m}_x_px"), Column($"{m}_y_px")))];

    private static NumberColumn Column(string name) => new(name, -PointsReader.Farthest, PointsReader.Farthest);

    [GeneratedRegex(@"^(?<m>.+)_(?<a>[xy])_px$")]
    private static partial Regex Pixels();

    [GeneratedRegex(@"^.+_[xy]$")]
    private static partial Regex NoUnit();

    [GeneratedRegex(@"^.+_[xy]_(m|mm|cm|in|ft|yd)$")]
    private static partial Regex OtherUnit();
}
