using System.Runtime.CompilerServices;
using System.Security.Cryptography;
using System.Text;

namespace Analytics.Runner.Pages;

/// <summary>
/// The page's Content-Security-Policy: nothing is fetched, and of all scripts only those whose exact text is
/// listed run. A script that reaches the page through a cell's output is text, no more.
/// </summary>
internal static class ContentPolicy
{
    // The chart library is megabytes, and every page of a batch carries the same.
    private static readonly ConditionalWeakTable<string, string> Known = [];

    public static string For(IEnumerable<string> scripts)
    {
        var hashes = string.Join(' ', scripts.Select(s => $"'sha256-{Known.GetValue(s, Hash)}'"));
        // Style attributes place marks and rows; a style can neither run nor, with this policy, fetch anything.
        return "default-src 'none'; "
            + $"script-src {(hashes.Length > 0 ? hashes : "'none'")}; "
            + "style-src 'unsafe-inline'; img-src data: blob:; base-uri 'none'; form-action 'none'";
    }

    private static string Hash(string script) => Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(script)));
}
