using System.Security.Cryptography;
using System.Text;

namespace Analytics.Runner.Batches;

/// <summary>
/// File names for pages of a batch: the value where it is plain, else what of it is plain and a part of its digest, so
/// that no two values share a file on any file system, also where upper and lower case are the same.
/// </summary>
internal static class PageNames
{
    private const int LongestPlain = 60;

    /// <summary>A name for each value; depends on the set of values only, not on their order.</summary>
    public static IReadOnlyDictionary<string, string> For(IEnumerable<string> values)
    {
        var names = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var value in values)
            names[value] = Plain(value);
        // A digest of 8 digits may itself be what another value looks like; a whole one can be no accident.
        foreach (var digits in (int[])[8, 64])
        {
            foreach (var name in Clashing(names, digits == 8))
                names[name] = $"{Plain(name)}-{Digest(name)[..digits]}".TrimStart('-');
        }

        return names;
    }

    private static List<string> Clashing(SortedDictionary<string, string> names, bool orNotPlain)
    {
        var count = names.Values.GroupBy(n => n, StringComparer.OrdinalIgnoreCase).ToDictionary(g => g.Key, g => g.Count(), StringComparer.OrdinalIgnoreCase);
        return [.. names.Where(n => count[n.Value] > 1 || (orNotPlain && (n.Key != n.Value || n.Key.Length == 0))).Select(n => n.Key)];
    }

    // Letters beyond ASCII are written in more than one way by file systems. The stem before it keeps reserved names away.
    private static string Plain(string value)
    {
        var text = new StringBuilder();
        foreach (var c in value)
        {
            if (char.IsAsciiLetterOrDigit(c) || c == '_')
                text.Append(c);
            else if (text.Length > 0 && text[^1] != '-')
                text.Append('-');
            if (text.Length == LongestPlain)
                break;
        }

        return text.ToString().TrimEnd('-');
    }

    private static string Digest(string value) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(value)));
}
