using System.Security.Cryptography;
using System.Text;

namespace Analytics.Runner.Pages;

/// <summary>
/// The page's Content-Security-Policy: nothing is fetched, and of all scripts only those whose exact text is
/// listed run. A script that reaches the page through a cell's output is text, no more.
/// </summary>
internal static class ContentPolicy
{
    public static string For(IEnumerable<string> scripts)
    {
        var hashes = string.Join(' ', scripts.Select(s => $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(s)))}'"));
        // Style attributes place marks and rows; a style can neither run nor, with this policy, fetch anything.
        return "default-src 'none'; "
            + $"script-src {(hashes.Length > 0 ? hashes : "'none'")}; "
            + "style-src 'unsafe-inline'; img-src data: blob:; base-uri 'none'; form-action 'none'";
    }
}
