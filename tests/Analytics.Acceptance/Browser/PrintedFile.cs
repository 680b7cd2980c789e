using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Analytics.Acceptance.Browser;

/// <summary>What a PDF file says about its pages, read from its own objects.</summary>
internal sealed partial record PrintedFile(IReadOnlyList<(int Width, int Height)> Pages, bool HasFonts)
{
    public static PrintedFile Read(byte[] pdf)
    {
        var text = Encoding.Latin1.GetString(pdf);
        var pages = MediaBox().Matches(text).Select(m => (Round(m.Groups[1].Value), Round(m.Groups[2].Value)));
        return new PrintedFile([.. pages], text.Contains("/FontFile", StringComparison.Ordinal));
    }

    // Points; sheet sizes are given to the nearest one.
    private static int Round(string number) => (int)Math.Round(double.Parse(number, CultureInfo.InvariantCulture));

    [GeneratedRegex(@"/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)\s*\]")]
    private static partial Regex MediaBox();
}
