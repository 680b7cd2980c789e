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
    /// <exception cref="InvalidDataException">They are not gzip's, or unpack to more than <paramref name="largest"/> bytes.</exception>
    public static string Unzip(byte[] zipped, long largest = long.MaxValue)
    {
        using var zip = new GZipStream(new MemoryStream(zipped), CompressionMode.Decompress);
        using var bytes = new MemoryStream();
        var buffer = new byte[1 << 16];
        for (int read; (read = zip.Read(buffer)) > 0;)
        {
            bytes.Write(buffer, 0, read);
            if (bytes.Length > largest)
                throw new InvalidDataException("unpacks to too much");
        }

        return Encoding.UTF8.GetString(bytes.GetBuffer(), 0, (int)bytes.Length);
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

    /// <summary>The bytes of what <see cref="Encode"/> wrote.</summary>
    /// <exception cref="FormatException">It is something else.</exception>
    public static byte[] Decode(string text)
    {
        var gap = text.IndexOf(' ', StringComparison.Ordinal);
        if (gap < 0 || !int.TryParse(text.AsSpan(0, gap), NumberStyles.None, CultureInfo.InvariantCulture, out var length) || length > text.Length)
            throw new FormatException("it does not begin with its length");
        var bytes = new byte[length];
        int held = 0, bits = 0, at = 0;
        for (var i = gap + 1; i + 1 < text.Length; i += 2)
        {
            held |= ((Value(text[i]) * Base) + Value(text[i + 1])) << bits;
            for (bits += BitsPerPair; bits >= 8; bits -= 8, held >>= 8)
            {
                if (at < length)
                    bytes[at++] = (byte)held;
            }
        }

        if (bits > 0 && at < length)
            bytes[at++] = (byte)held;
        return at == length ? bytes : throw new FormatException("it ends too early");
    }

    private static int Value(char digit) => digit switch
    {
        '~' => '<' - '#',
        >= '#' and <= '}' => digit - '#',
        _ => throw new FormatException("it holds a character that is no digit"),
    };

    private static void AppendPair(StringBuilder text, int value)
        => text.Append(Digit(value / Base)).Append(Digit(value % Base));

    private static char Digit(int value) => value + '#' == '<' ? '~' : (char)(value + '#');
}
