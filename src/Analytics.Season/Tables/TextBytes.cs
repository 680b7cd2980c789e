using System.Text;
using System.Text.Unicode;
using Analytics.Season.Files;

namespace Analytics.Season.Tables;

/// <summary>Bytes of a text file as UTF-8, whatever encoding a spreadsheet saved them in.</summary>
internal static class TextBytes
{
    /// <summary>The text as UTF-8 without byte order mark.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="remark">What was assumed, or null when nothing was.</param>
    /// <exception cref="InputFault">The file is not text.</exception>
    public static ReadOnlyMemory<byte> ToUtf8(byte[] bytes, out string? remark)
    {
        remark = null;
        var text = bytes.AsSpan();
        // UTF-32 first: its little-endian mark begins with that of UTF-16.
        if (text.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE, 0, 0])) return Encoding.Convert(Encoding.UTF32, Encoding.UTF8, bytes, 4, bytes.Length - 4);
        if (text.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE])) return Encoding.Convert(Encoding.Unicode, Encoding.UTF8, bytes, 2, bytes.Length - 2);
        if (text.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF])) return Encoding.Convert(Encoding.BigEndianUnicode, Encoding.UTF8, bytes, 2, bytes.Length - 2);
        if (text.StartsWith("PK\u0003\u0004"u8))
            throw new InputFault("the file is a zip archive or workbook, not text.", "Save it as CSV, or name it .xlsx if it is a workbook.");
        if (text.Contains((byte)0))
            throw new InputFault("the file holds binary data, not text.", "Save it from the spreadsheet as CSV (UTF-8).");
        var utf8 = text.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]) ? bytes.AsMemory(3) : bytes.AsMemory();
        if (Utf8.IsValid(utf8.Span)) return utf8;
        remark = "The text is not valid UTF-8 and was read as Windows-1252; check accented letters, or save it as CSV UTF-8.";
        return Encoding.Convert(CodePagesEncodingProvider.Instance.GetEncoding(1252)!, Encoding.UTF8, utf8.ToArray());
    }
}
