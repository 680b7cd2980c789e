using System.Globalization;
using System.Text.RegularExpressions;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>
/// Digits as the document shows them. Another processor adds in another order, so a whole digit more or less is no news, nor is a step
/// of a fit; every other character is.
/// </summary>
internal static partial class AccuracyDigits
{
    private const int Most = 15;

    /// <summary>At least so many digits agree.</summary>
    public static string AtLeast(double digits) => string.Create(CultureInfo.InvariantCulture, $"≥ {Math.Min(Most, (int)Math.Floor(digits))}");

    public static string About(int steps) => string.Create(CultureInfo.InvariantCulture, $"≈ {steps}");

    /// <summary>Where two pages first say different things; null when they say the same.</summary>
    public static string? Difference(string committed, string made)
    {
        var (left, right) = (committed.ReplaceLineEndings("\n").Split('\n'), made.Split('\n'));
        for (var i = 0; i < Math.Max(left.Length, right.Length); i++)
        {
            var (a, b) = (left.ElementAtOrDefault(i) ?? "(end)", right.ElementAtOrDefault(i) ?? "(end)");
            if (!Same(a, b)) return string.Create(CultureInfo.InvariantCulture, $"line {i + 1} is\n  {a}\nand should be\n  {b}");
        }
        return null;
    }

    private static bool Same(string committed, string made)
    {
        if (Soft().Replace(committed, "#") != Soft().Replace(made, "#")) return false;
        return Soft().Matches(committed).Zip(Soft().Matches(made)).All(p => Near(p.First, p.Second));
    }

    private static bool Near(Match committed, Match made)
    {
        var (a, b) = (Number(committed), Number(made));
        return committed.Value[0] == made.Value[0] && Math.Abs(a - b) <= (made.Value[0] == '≥' ? 1 : Math.Max(2, b / 4));
    }

    private static int Number(Match match) => int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"[≥≈] (\d+)")]
    private static partial Regex Soft();
}
