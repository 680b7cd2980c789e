using System.Globalization;
using System.IO.Compression;
using System.Text;

namespace Analytics.Runner.Pages;

/// <summary>
/// A text made small enough to travel in a page: gzip, then 13 bits in every two printable characters. Base64
/// would spend a tenth more on the same bytes, which is most of what a page may weigh beside its chart library.
/// </summary>
/// <remarks>
/// Digits are the characters from <c>#</c> to <c>}</c>, with <c>~</c> in the place of <c>&lt;</c> so that no
/// tag can appear. Two digits a and b stand for a·91 + b, the next 13 bits, lowest bit first.
/// </remarks>
internal static class PackedText
{
    private const int Base = 91;
    private const int BitsPerPair = 13;

    /// <summary>The text of gzip's bytes.</summary>
    public static string Unzip(byte[] zipped)
    {
        using var text = new StreamReader(new GZipStream(new MemoryStream(zipped), CompressionMode.Decompress), Encoding.UTF8);
        return text.ReadToEnd();
    }

    /// <summary>Bytes as digits.</summary>
    public static string Encode(ReadOnlySpan<byte> bytes)
    {
        var text = new StringBuilder((bytes.Length * 8 / BitsPerPair * 2) + 16);
        text.Append(CultureInfo.InvariantCulture, $"{bytes.Length} ");
        int held = 0, bits = 0;
        foreach (var b in bytes)
        {
            held |= b << bits;
            bits += 8;
            if (bits < BitsPerPair)
                continue;
            AppendPair(text, held & ((1 << BitsPerPair) - 1));
            held >>= BitsPerPair;
            bits -= BitsPerPair;
        }

        if (bits > 0)
            AppendPair(text, held);
        return text.ToString();
    }

    private static void AppendPair(StringBuilder text, int value)
        => text.Append(Digit(value / Base)).Append(Digit(value % Base));

    private static char Digit(int value) => value + '#' == '<' ? '~' : (char)(value + '#');
}
