using System.Text;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.OnTrial;

namespace Analytics.Notebooks.Tables;

/// <summary>A table in plain text: columns padded with spaces.</summary>
internal static class TextGrid
{
    private const int WidestColumn = 48;

    public static string Of(IReadOnlyList<string> heads, IReadOnlyList<bool> flushRight, IEnumerable<IReadOnlyList<string>> rows)
    {
        var lines = rows.Prepend(heads).Select(r => r.Select(c => TrialMark.Cut(OutsideText.Visible(c), WidestColumn)).ToArray()).ToList();
        var widths = heads.Select((_, i) => lines.Max(l => l[i].Length)).ToArray();
        var text = new StringBuilder();
        for (var i = 0; i < lines.Count; i++)
        {
            var cells = lines[i].Select((c, j) => flushRight[j] ? c.PadLeft(widths[j]) : c.PadRight(widths[j]));
            text.Append(string.Join("  ", cells).TrimEnd()).Append('\n');
            if (i == 0) text.Append(new string('-', widths.Sum() + (2 * (widths.Length - 1)))).Append('\n');
        }
        return text.ToString().TrimEnd('\n');
    }
}
