using System.Security.Cryptography;

namespace Analytics.Runner.Batches;

/// <summary>SHA-256 of a page or an executed notebook without the part that tells when it was made.</summary>
internal static class SteadyDigest
{
    /// <summary>Of a page.</summary>
    public static string OfPage(ReadOnlySpan<byte> page) => Without(page, page.LastIndexOf("<!--varies-->"u8), "<!--/varies-->"u8);

    /// <summary>Of an executed notebook.</summary>
    public static string OfNotebook(ReadOnlySpan<byte> notebook)
    {
        var run = notebook.LastIndexOf("\"analytics_run\": {"u8);
        var varies = run < 0 ? -1 : notebook[run..].IndexOf("\"varies\": {"u8);
        return Without(notebook, varies < 0 ? -1 : run + varies, "}"u8);
    }

    private static string Without(ReadOnlySpan<byte> bytes, int start, ReadOnlySpan<byte> end)
    {
        var length = start < 0 ? -1 : bytes[start..].IndexOf(end);
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(length < 0 ? bytes : bytes[..start]);
        if (length >= 0)
            hash.AppendData(bytes[(start + length)..]);
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }
}
