using System.Globalization;
using System.Text.RegularExpressions;
using Analytics.Metrics.Motion;
using Analytics.Season.Cells;
using Analytics.Season.Columns;

namespace Analytics.Season.Trials;

/// <summary>Ground contacts of one repetition in one cell: <c>31-49 58-77f 84</c> is touchdown and toe-off frame of three steps, the second of the far foot, the toe-off of the last not read.</summary>
internal static partial class StepWords
{
    public static readonly Column Column = new("steps");

    /// <summary>The contacts; empty for an empty cell or with a fault.</summary>
    public static IReadOnlyList<FootContact> Read(RowCells row)
    {
        var text = row.Text(Column);
        List<FootContact> contacts = [];
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (Step().Match(word) is not { Success: true } step)
            {
                row.Fault(row.Head.HeadOf(Column), text, $"'{CellText.Show(word)}' is no step", "Write touchdown and toe-off frame of each step as 31-49, with f behind it for the foot away from the camera, and a space between steps.");
                return [];
            }
            contacts.Add(new(step.Groups[3].Success, Frame(step.Groups[1]), step.Groups[2].Success ? Frame(step.Groups[2]) : null));
        }
        return contacts;
    }

    private static int Frame(Group digits) => int.Parse(digits.ValueSpan, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(\d{1,7})(?:-(\d{1,7}))?(f)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Step();
}
