using System.IO.Compression;
using System.Text;

namespace Analytics.Runner.Tests.Pages;

/// <summary>A text packed by gzip.</summary>
internal static class Zipped
{
    public static byte[] Bytes(string text)
    {
        using var bytes = new MemoryStream();
        using (var gzip = new GZipStream(bytes, CompressionLevel.SmallestSize))
            gzip.Write(Encoding.UTF8.GetBytes(text));
        return bytes.ToArray();
    }
}
