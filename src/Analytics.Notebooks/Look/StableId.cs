using System.Globalization;
using System.Text;

namespace Analytics.Notebooks.Look;

/// <summary>Ids that depend on content alone, so the same inputs give the same page.</summary>
internal static class StableId
{
    /// <summary>A prefix and eight hexadecimal digits (FNV-1a, 32 bits) of the content.</summary>
    public static string Of(string prefix, string content)
    {
        var hash = 2166136261u;
        foreach (var b in Encoding.UTF8.GetBytes(content)) hash = unchecked((hash ^ b) * 16777619u);
        return prefix + "-" + hash.ToString("x8", CultureInfo.InvariantCulture);
    }
}
