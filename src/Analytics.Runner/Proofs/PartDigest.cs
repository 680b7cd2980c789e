using System.Buffers;
using System.Security.Cryptography;
using System.Text;

namespace Analytics.Runner.Proofs;

/// <summary>Digest of a piece of text.</summary>
internal static class PartDigest
{
    /// <summary>SHA-256 of the text in UTF-8, lower-case hex.</summary>
    public static string Of(ReadOnlySpan<char> text)
    {
        var bytes = ArrayPool<byte>.Shared.Rent(Encoding.UTF8.GetMaxByteCount(text.Length));
        try
        {
            return Convert.ToHexStringLower(SHA256.HashData(bytes.AsSpan(0, Encoding.UTF8.GetBytes(text, bytes))));
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(bytes);
        }
    }
}
